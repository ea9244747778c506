import { type Length, NM_PER_INCH, NM_PER_MM, nm } from '../../length/length.ts';
import { type Marking, writeLength } from '../../length/writing.ts';

/** A figure in the maker's rule, and in the other one. */
export interface Written {
  readonly figure: string;
  /** The same length in the other rule; empty where there is none. */
  readonly other: string;
}

const FINE: Marking = { unit: 'in', per: 32 };
/** All decimals where there are four or fewer, else two. */
function decimals(value: number): string {
  const four = Number(value.toFixed(4));
  return String(Math.abs(four - value) < 1e-9 ? four : Number(value.toFixed(2)));
}
const inMm = (lengths: readonly Length[]): string =>
  `${lengths.map((l) => decimals(l / NM_PER_MM)).join(' to ')} mm`;

/** To the nearest thirty-second; as a decimal where that is off by more than a fiftieth. */
function inInches(lengths: readonly Length[]): string {
  let about = '';
  const one = (length: Length): string => {
    const { text, off } = writeLength(length, FINE);
    if (off !== 0) about = 'about ';
    return Math.abs(off) * 50 <= Math.abs(length)
      ? text.replace(/ in$/, '')
      : String(Number((length / NM_PER_INCH).toPrecision(2)));
  };
  const all = lengths.map(one).join(' to ');
  return `${about}${all} in`;
}

/** A number as the trade says it: `2 1/2`, `1/3`, `0.27`; a whole one in groups of three. */
export function writeNumber(value: number): string {
  const whole = Math.floor(value);
  for (const bottom of [2, 3, 4]) {
    const top = (value - whole) * bottom;
    if (Math.abs(top - Math.round(top)) > 1e-9 || Math.round(top) === 0) continue;
    const fraction = `${Math.round(top)}/${bottom}`;
    return whole === 0 ? fraction : `${whole} ${fraction}`;
  }
  if (Number.isInteger(value)) return String(value).replace(/\B(?=(\d{3})+$)/g, '\u00a0');
  return String(Number(value.toPrecision(4)));
}

/** A part of a whole: a simple fraction, else in the hundred. */
function writePart(value: number): string {
  const fraction = writeNumber(value);
  return fraction.includes('/') ? fraction : `${decimals(value * 100)} %`;
}

/**
 * A value as the page shows it.
 * @param is a number, the least and the most, or words; lengths in nanometres
 * @param unit `length`, `part`, or the words after the number
 * @param rule the maker's
 */
export function writeValue(
  is: readonly number[] | readonly string[],
  unit: string,
  rule: 'in' | 'mm',
): Written {
  const numbers = [...new Set(is.filter((one) => typeof one === 'number'))];
  if (numbers.length === 0) return { figure: is.join(', '), other: '' };
  if (unit === 'length') {
    const lengths = numbers.map(nm);
    const [figure, other] =
      rule === 'in' ? [inInches(lengths), inMm(lengths)] : [inMm(lengths), inInches(lengths)];
    return { figure, other };
  }
  const words = unit === '' || unit === 'part' ? '' : ` ${unit}`;
  return { figure: numbers.map(unit === 'part' ? writePart : writeNumber).join(' to ') + words, other: '' };
}
