/** With a small first letter, as inside a sentence. */
export const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
