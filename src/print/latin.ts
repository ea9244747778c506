/**
 * The fonts that every reader of PDF files has can write the letters of code page 1252: Latin-1 and a few signs.
 * Source: ISO 32000-1:2008, annex D.2, WinAnsiEncoding (from memory).
 */
const SIGNS = '€‚ƒ„…†‡ˆ‰Š‹ŒŽ‘’“”•–—˜™š›œžŸ';

/** Signs that have an equal in plain letters. */
const PLAIN = new Map<string, string>([
  ['′', "'"],
  ['″', '"'],
  ['−', '-'],
  ['‐', '-'],
  ['‑', '-'],
  ['⁄', '/'],
  ['∕', '/'],
  ['≤', '<='],
  ['≥', '>='],
  ['→', '->'],
  ['←', '<-'],
  ['ı', 'i'],
  ['ł', 'l'],
  ['Ł', 'L'],
  ['đ', 'd'],
  ['Đ', 'D'],
  ['ħ', 'h'],
  ['Ħ', 'H'],
  ['ŋ', 'ng'],
  ['ĸ', 'k'],
]);

const writable = (letter: string): boolean =>
  /[\x20-\x7e\u00a0-\u00ff]/.test(letter) || SIGNS.includes(letter);

/** What stands for a letter that cannot be written. */
export const UNKNOWN = '?';

function one(letter: string): string {
  if (writable(letter)) return letter;
  const plain = PLAIN.get(letter);
  if (plain !== undefined) return plain;
  if (/\s/.test(letter)) return ' ';
  // Letters with accents lose them; wide letters and fractions come apart into plain ones.
  const apart = [...letter.normalize('NFKD')].filter((part) => !/\p{M}/u.test(part));
  const written = apart.map((part) => (writable(part) ? part : (PLAIN.get(part) ?? ''))).join('');
  if (written !== '') return written;
  return /[\p{M}\p{C}]/u.test(letter) ? '' : UNKNOWN;
}

/**
 * Words in letters that a plain PDF font has. Accents that it lacks are left away, typographic signs become their plain
 * equals, and what then is still missing becomes {@link UNKNOWN}.
 */
export const inLatin = (words: string): string => [...words.normalize('NFC')].map(one).join('');

/** Are there letters among these words that only a question mark can stand for? */
export const losesLetters = (words: string): boolean =>
  [...words.normalize('NFC')].some((letter) => letter !== UNKNOWN && one(letter) === UNKNOWN);
