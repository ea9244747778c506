/**
 * Stands in the build for parts that the PDF library could load to print web pages and pictures. We draw lines and
 * words only, and what is not needed is not stored on the maker's device.
 */
export default undefined;
