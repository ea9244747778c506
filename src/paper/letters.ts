import { type Length, nm } from '../length/length.ts';

const NARROW = new Set("iljtfrI.,:;'|!()[]/ -");
const WIDE = new Set('mwMW%@—…');

/** Width of a letter as a part of its height: a plain sans serif, taken a little wide so that what fits here fits. */
function widthOf(letter: string): number {
  if (NARROW.has(letter)) return 0.36;
  if (WIDE.has(letter)) return 0.95;
  if (/[A-Z]/.test(letter)) return 0.72;
  return (letter.codePointAt(0) ?? 0) > 0x2e7f ? 1.05 : 0.57;
}

/** About how wide words are; rather too wide than too narrow. */
export function wordsWide(words: string, high: Length): Length {
  let sum = 0;
  for (const letter of words) sum += widthOf(letter);
  return nm(sum * high);
}

/** Words broken into lines no wider than asked; a single word that is wider stands alone, broken where it must be. */
export function wrapped(words: string, wide: Length, high: Length): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of words.split(/\s+/).filter(Boolean)) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (wordsWide(longer, high) <= wide) {
      line = longer;
      continue;
    }
    if (line !== '') lines.push(line);
    line = '';
    for (const letter of word) {
      if (line !== '' && wordsWide(line + letter, high) > wide) {
        lines.push(line);
        line = '';
      }
      line += letter;
    }
  }
  if (line !== '') lines.push(line);
  return lines;
}
