import { type Length, NM_PER_INCH, NM_PER_MM, nm } from './length.ts';
import { bad, good, type Result } from './result.ts';

/** Unit taken where none is written. */
export type ReadingUnit = 'in' | 'mm';

type System = 'imperial' | 'metric';
type Unit = { readonly name: string; readonly nm: bigint; readonly system: System };

const unit = (name: string, size: number, system: System): Unit => ({ name, nm: BigInt(size), system });
const inch = unit('in', NM_PER_INCH, 'imperial');
const foot = unit('ft', 12 * NM_PER_INCH, 'imperial');
const yard = unit('yd', 36 * NM_PER_INCH, 'imperial');
const millimetre = unit('mm', NM_PER_MM, 'metric');
const centimetre = unit('cm', 10 * NM_PER_MM, 'metric');
const metre = unit('m', 1000 * NM_PER_MM, 'metric');

const units: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...['"', 'in', 'inch', 'inches'].map((w) => [w, inch] as const),
  ...["'", 'ft', 'foot', 'feet'].map((w) => [w, foot] as const),
  ...['yd', 'yds', 'yard', 'yards'].map((w) => [w, yard] as const),
  ...['mm', 'millimetre', 'millimetres', 'millimeter', 'millimeters'].map((w) => [w, millimetre] as const),
  ...['cm', 'centimetre', 'centimetres', 'centimeter', 'centimeters'].map((w) => [w, centimetre] as const),
  ...['m', 'metre', 'metres', 'meter', 'meters'].map((w) => [w, metre] as const),
]);

/** Longest length taken for cloth; anything longer is a slip of the finger. */
const LONGEST = 1_000_000n * BigInt(NM_PER_MM);

const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[¼½¾⅐-⅞]/g, (c) => ` ${c.normalize('NFKC')} `) // ⅜ becomes 3⁄8
    .replace(/[⁄∕]/g, '/')
    .replace(/[−–‐‑]/g, '-')
    .replace(/[′’‘]/g, "'")
    .replace(/[″”“]|''/g, '"')
    .replace(/\s+/g, ' ')
    .trim();

interface Fraction {
  readonly top: bigint;
  readonly bottom: bigint;
}

/** whole or decimal, or a fraction, or a whole and a fraction with a blank, a hyphen or `and` between. */
const part =
  /^(?:(\d+)\/(\d+)|(\d+)(?: ?- ?| and | )(\d+)\/(\d+)|(\d+(?:[.,]\d+)?|[.,]\d+))(?![\d/.,]) ?([a-z]+\.?|["'])?[ ,]*(?:and )?/;

function readNumber(found: RegExpExecArray, written: string): Result<Fraction, string> {
  const [, top, bottom, whole, over, under, decimal] = found;
  const low = bottom ?? under;
  if (low !== undefined && BigInt(low) === 0n) {
    return bad(`“${written}” has nothing under the line of its fraction; write a fraction such as 3/8.`);
  }
  if (top !== undefined && bottom !== undefined) return good({ top: BigInt(top), bottom: BigInt(bottom) });
  if (whole !== undefined && over !== undefined && under !== undefined) {
    const [w, t, b] = [BigInt(whole), BigInt(over), BigInt(under)];
    if (t >= b) {
      const right = t % b === 0n ? `${w + t / b}` : `${w + t / b} ${t % b}/${b}`;
      return bad(
        `In “${written}” the fraction ${t}/${b} is a whole or more; if you mean ${right}, write that.`,
      );
    }
    return good({ top: w * b + t, bottom: b });
  }
  const digits = decimal ?? '';
  if (/^[1-9]\d{0,2},\d{3}$/.test(digits)) {
    const joined = digits.replace(',', '');
    return bad(
      `“${digits}” may be ${joined} or ${digits.replace(',', '.')}; write it one of these two ways.`,
    );
  }
  const [front = '', back = ''] = digits.split(/[.,]/);
  return good({ top: BigInt(front + back), bottom: 10n ** BigInt(back.length) });
}

const nearest = (top: bigint, bottom: bigint): bigint => (2n * top + bottom) / (2n * bottom);

/**
 * Reads a length as people write it: `4 3/8`, `4-3/8 in`, `4⅜″`, `11,1 cm`, `0.5in`, `2 ft 3 in`, `1 yd`.
 *
 * @param text what was written; a minus sign in front is taken
 * @param unitless unit where none is written (a bare number after feet is inches)
 * @param like a length that would do here, for the message; one of the unit where left out
 * @returns the length to the nearest nanometre, or one or two sentences: what is wrong and what would be right
 */
export function readLength(text: string, unitless: ReadingUnit, like?: string): Result<Length, string> {
  const written = text.trim();
  const fallback = unitless === 'in' ? inch : millimetre;
  const example = like ?? (unitless === 'in' ? '4 3/8 in' : '111 mm');
  if (written === '') return bad(`Nothing is written; write a length such as ${example}.`);
  if (written.length > 60) return bad(`That is too long for a length; write a length such as ${example}.`);

  let rest = plain(written);
  const minus = rest.startsWith('-');
  if (minus) rest = rest.slice(1).trimStart();
  let sum = 0n;
  let last: Unit | undefined;
  let bare = false;

  do {
    const found = part.exec(rest);
    if (!found || bare) return bad(`“${written}” is not a length; write one such as ${example}.`);
    const number = readNumber(found, written);
    if (!number.ok) return number;
    const word = found[7]?.replace('.', '');
    const afterFoot = last === foot ? inch : undefined;
    const measured = word === undefined ? (afterFoot ?? fallback) : units.get(word);
    if (!measured) return bad(`“${word}” is not a unit known here; write in, ft, yd, mm, cm or m.`);
    if (last && word === undefined && !afterFoot) {
      return bad(`The last number in “${written}” has no unit; write in, ft, yd, mm, cm or m after it.`);
    }
    if (last && (last.system !== measured.system || last.nm <= measured.nm)) {
      return bad(
        `“${written}” puts ${last.name} before ${measured.name}; write the larger unit first and keep to one system, such as 2 ft 3 in.`,
      );
    }
    sum += nearest(number.value.top * measured.nm, number.value.bottom);
    if (sum > LONGEST)
      return bad(`“${written}” is more than a kilometre; write a length such as ${example}.`);
    last = measured;
    bare = word === undefined;
    rest = rest.slice(found[0].length);
  } while (rest !== '');

  return good(nm(minus ? -Number(sum) : Number(sum)));
}
