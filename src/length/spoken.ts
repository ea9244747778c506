import type { Length } from './length.ts';
import { type ReadingUnit, readLength } from './reading.ts';
import type { Result } from './result.ts';

const ONES =
  'zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen';
const TENS = 'twenty thirty forty fifty sixty seventy eighty ninety';

const wholes: ReadonlyMap<string, number> = new Map([
  ...ONES.split(' ').map((word, i) => [word, i] as const),
  ...TENS.split(' ').map((word, i) => [word, 20 + 10 * i] as const),
  // Heard so by many a machine, and no words that a length has otherwise.
  ...Object.entries({ to: 2, too: 2, for: 4, ate: 8 }),
]);

const parts: ReadonlyMap<string, number> = new Map(
  Object.entries({
    half: 2,
    halves: 2,
    third: 3,
    quarter: 4,
    fourth: 4,
    fifth: 5,
    sixth: 6,
    eighth: 8,
    tenth: 10,
    twelfth: 12,
    sixteenth: 16,
    'thirty-second': 32,
    'sixty-fourth': 64,
    '8th': 8,
    '16th': 16,
    '32nd': 32,
    '64th': 64,
  }).flatMap(([word, bottom]) =>
    word === 'halves'
      ? [[word, bottom]]
      : [
          [word, bottom],
          [`${word}s`, bottom],
        ],
  ),
);

const units: ReadonlyMap<string, string> = new Map(
  Object.entries({
    in: 'in inch inches',
    ft: 'ft foot feet',
    yd: 'yd yds yard yards',
    mm: 'mm mil mils mill mills millimetre millimetres millimeter millimeters',
    cm: 'cm centimetre centimetres centimeter centimeters',
    m: 'm metre metres meter meters',
  }).flatMap(([unit, words]) => words.split(' ').map((word) => [word, unit] as const)),
);

/** Said along with a length without saying anything of it. */
const IDLE = /\b(?:about|roughly|around|say|maybe|er|erm|um|please)\b/g;

interface Measured {
  whole: string;
  top: number;
  bottom: number;
  unit: string;
}

const nothing = (): Measured => ({ whole: '', top: 0, bottom: 1, unit: '' });
const isSaid = ({ whole, top }: Measured): boolean => whole !== '' || top > 0;

function write({ whole, top, bottom, unit }: Measured): string {
  const number = [whole, top > 0 ? `${top}/${bottom}` : ''].filter(Boolean).join(' ');
  return unit === '' ? number : `${number} ${unit}`;
}

/** The number that begins at a word, and how many words it takes; none where there is no number. */
function numberAt(words: readonly string[], at: number): readonly [value: number, words: number] | undefined {
  const first = words[at] ?? '';
  if (/^\d+$/.test(first)) return [Number(first), 1];
  const value = wholes.get(first);
  if (value === undefined) return undefined;
  const next = wholes.get(words[at + 1] ?? '');
  return value >= 20 && next !== undefined && next > 0 && next < 10 ? [value + next, 2] : [value, 1];
}

/**
 * What a maker says of a length, as she would write it: `five eighths` is `5/8`, `an inch and a half` is `1 1/2 in`,
 * `twelve millimetres` is `12 mm`. None where the words are no length that can be told for sure.
 */
export function asWritten(said: string): string | undefined {
  const words = said
    .toLowerCase()
    .replace(/[’']s\b/g, '')
    .replace(/\b(thirty|sixty)[ -](second|fourth)/g, '$1_$2')
    .replace(/-/g, ' ')
    .replace(/_/g, '-')
    .replace(/[.,!?](?=\s|$)/g, ' ')
    .replace(/(\d)([a-z]+)/g, (found, digit: string, word: string) =>
      units.has(word) ? `${digit} ${word}` : found,
    )
    .replace(IDLE, ' ')
    .split(/\s+/)
    .filter((word) => word !== '' && word !== 'of' && word !== 'and');
  const found: Measured[] = [];
  let now = nothing();
  for (let i = 0; i < words.length; ) {
    const word = words[i] ?? '';
    const next = words[i + 1] ?? '';
    const unit = units.get(word);
    const article = word === 'a' || word === 'an';
    const number = article ? ([1, 1] as const) : numberAt(words, i);
    const [value, taken] = number ?? [0, 0];
    const [, over, under] = /^(\d+)\/(\d+)(?:ths?|nds?)?$/.exec(word) ?? [];
    const bottom = under === undefined ? parts.get(words[i + taken] ?? '') : Number(under);
    if (unit !== undefined) {
      if (!isSaid(now)) return undefined;
      found.push({ ...now, unit });
      now = nothing();
      i += 1;
    } else if (article && isSaid(now) && units.has(next)) {
      i += 1; // half an inch
    } else if (bottom !== undefined) {
      const top = over === undefined ? (number ? value : 1) : Number(over);
      // Twenty-five eighths may be twenty and five eighths.
      if (top < 1 || top >= bottom || now.top > 0) return undefined;
      i += taken + 1;
      // Two inches and three eighths (of an inch): the fraction is of what was named before.
      const last = now.whole === '' ? found.at(-1) : undefined;
      const named = i + (words[i] === 'an' || words[i] === 'a' ? 1 : 0);
      const own = units.get(words[named] ?? '');
      if (last?.top === 0 && (own === undefined || own === last.unit)) {
        [last.top, last.bottom] = [top, bottom];
        if (own !== undefined) i = named + 1;
      } else [now.top, now.bottom] = [top, bottom];
    } else if (isSaid(now)) {
      return undefined;
    } else if (number && words[i + taken] === 'point') {
      let digits = '';
      for (i += taken + 1; i < words.length; i += 1) {
        const digit = numberAt(words, i);
        if (digit?.[1] !== 1 || digit[0] > 9) break;
        digits += String(digit[0]);
      }
      if (digits === '') return undefined;
      now.whole = `${value}.${digits}`;
    } else if (number) {
      now.whole = String(value);
      i += taken;
    } else if (/^\d*[.]\d+$/.test(word)) {
      now.whole = word;
      i += 1;
    } else {
      return undefined;
    }
  }
  if (isSaid(now)) found.push(now);
  return found.length === 0 ? undefined : found.map(write).join(' ');
}

/** Reads a length that was written or spoken: `4 3/8`, `five eighths`, `half an inch`, `twelve millimetres`. */
export function readSaid(text: string, unitless: ReadingUnit): Result<Length, string> {
  const written = readLength(text, unitless);
  if (written.ok) return written;
  const said = asWritten(text);
  const read = said === undefined ? written : readLength(said, unitless);
  return read.ok ? read : written;
}
