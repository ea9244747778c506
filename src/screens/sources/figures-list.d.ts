/** The list that .ci/constants.mjs reads from the source files of the arithmetic. */
declare module '*?figures' {
  const found: import('./figures.ts').Figures;
  export default found;
}
