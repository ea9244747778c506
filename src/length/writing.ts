import { type Length, NM_PER_INCH, NM_PER_MM, nm } from './length.ts';

/** How fine the maker's rule is marked: parts of an inch, or millimetres. */
export type Marking =
  | { readonly unit: 'in'; readonly per: 8 | 16 | 32 }
  | { readonly unit: 'mm'; readonly step: 1 | 0.5 };

/** A length as it is shown, in one string and in the parts that a readout sets in different sizes. */
export interface WrittenLength {
  /** All of it: `4 3/8 in`, `3/8 in`, `111.5 mm`. */
  readonly text: string;
  /** A minus sign for a length below zero, else empty. */
  readonly sign: '' | '-';
  /** The whole part, without sign; empty where there is only a fraction. In millimetres, with its decimal. */
  readonly whole: string;
  /** Top of the fraction in lowest terms, or empty. */
  readonly numerator: string;
  /** Bottom of the fraction in lowest terms, or empty. */
  readonly denominator: string;
  /** `in` or `mm`. */
  readonly unit: 'in' | 'mm';
  /** Written less true: above zero where the written figure is longer than the length. */
  readonly off: Length;
}

const stepOf = (marking: Marking): number =>
  marking.unit === 'in' ? NM_PER_INCH / marking.per : NM_PER_MM * marking.step;

/** The nearest mark on the rule; a length half way between two marks goes to the one further from zero. */
function toMarks(length: Length, marking: Marking): number {
  const marks = Math.round(Math.abs(length) / stepOf(marking));
  return length < 0 && marks > 0 ? -marks : marks;
}

/** The length rounded to the nearest mark of the rule: what `writeLength` writes. */
export const roundTo = (length: Length, marking: Marking): Length =>
  nm(toMarks(length, marking) * stepOf(marking));

function lowest(top: number, bottom: number): [number, number] {
  let [t, b] = [top, bottom];
  while (t % 2 === 0 && b % 2 === 0) [t, b] = [t / 2, b / 2]; // rules are only ever halved
  return [t, b];
}

/**
 * Writes a length to the nearest mark of the maker's rule, and says how far the mark is off.
 * Reading the text again gives exactly the rounded length.
 */
export function writeLength(length: Length, marking: Marking): WrittenLength {
  const marks = toMarks(length, marking);
  const count = Math.abs(marks);
  const sign = marks < 0 ? '-' : '';
  const off = nm(marks * stepOf(marking) - length);
  if (marking.unit === 'mm') {
    const whole = String(count * marking.step);
    return { text: `${sign}${whole} mm`, sign, whole, numerator: '', denominator: '', unit: 'mm', off };
  }
  const wholes = Math.floor(count / marking.per);
  const left = count % marking.per;
  if (left === 0) {
    const whole = String(wholes);
    return { text: `${sign}${whole} in`, sign, whole, numerator: '', denominator: '', unit: 'in', off };
  }
  const [top, bottom] = lowest(left, marking.per);
  const whole = wholes === 0 ? '' : String(wholes);
  const text = `${sign}${whole === '' ? '' : `${whole} `}${top}/${bottom} in`;
  return { text, sign, whole, numerator: String(top), denominator: String(bottom), unit: 'in', off };
}

const parts: Readonly<Record<string, readonly [one: string, many: string]>> = {
  '4': ['quarter', 'quarters'],
  '8': ['eighth', 'eighths'],
  '16': ['sixteenth', 'sixteenths'],
  '32': ['thirty-second', 'thirty-seconds'],
};

function sayFraction(top: string, bottom: string): string {
  if (bottom === '2') return 'a half';
  const [one, many] = parts[bottom] ?? ['', ''];
  return top === '1' ? `1 ${one}` : `${top} ${many}`;
}

/** A length for reading aloud, to the same mark as it is written: `4 and 3 eighths inches`, `half an inch`. */
export function sayLength(length: Length, marking: Marking): string {
  const { sign, whole, numerator, denominator, unit } = writeLength(length, marking);
  const minus = sign === '' ? '' : 'minus ';
  if (unit === 'mm') return `${minus}${whole} ${whole === '1' ? 'millimetre' : 'millimetres'}`;
  if (numerator === '') return `${minus}${whole} ${whole === '1' ? 'inch' : 'inches'}`;
  if (whole === '') {
    return `${minus}${denominator === '2' ? 'half an inch' : `${sayFraction(numerator, denominator)} of an inch`}`;
  }
  return `${minus}${whole} and ${sayFraction(numerator, denominator)} inches`;
}
