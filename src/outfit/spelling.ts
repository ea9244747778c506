import { type Length, NM_PER_INCH, NM_PER_MM, toInches, toMm } from '../length/length.ts';
import type { Outline, Point, Segment } from '../shape/outline.ts';
import type { Outfit, Piece } from './outfit.ts';

/** How lengths are spelled in one file. */
export type Spelling = (length: Length) => string;

/** Finest part of an inch that a rule has, and so the finest that is spelled as a fraction. */
const PARTS = 64;

/** A decimal number without the noise of floating point: at most six places, which hold every nanometre of a millimetre. */
const plain = (value: number): string => String(Number(value.toFixed(6)));

/** True where a length is a whole number of sixty-fourths of an inch. */
const inParts = (length: Length): boolean => (length * PARTS) % NM_PER_INCH === 0;

/** True where a length in millimetres has two decimals at most: short enough to have been written by somebody. */
const inHundredths = (length: Length): boolean => (length * 100) % NM_PER_MM === 0;

function inInches(length: Length): string {
  const all = Math.abs(Math.round((length * PARTS) / NM_PER_INCH));
  const whole = Math.floor(all / PARTS);
  let [top, bottom] = [all % PARTS, PARTS];
  while (top > 0 && top % 2 === 0) [top, bottom] = [top / 2, bottom / 2];
  const figure = [whole > 0 || top === 0 ? String(whole) : '', top > 0 ? `${top}/${bottom}` : '']
    .filter((part) => part !== '')
    .join(' ');
  return `${length < 0 ? '-' : ''}${figure} in`;
}

/**
 * A length as people write it, exactly: in the unit asked for where that comes out even (a fraction down to 1/64 in, a
 * hundredth of a millimetre), else in the other, else in millimetres with as many decimals as it takes.
 */
export function exactLength(length: Length, unit: Outfit['units']): string {
  const even = { in: inParts(length), mm: inHundredths(length) };
  const inFraction = unit === 'in' ? even.in : even.in && !even.mm;
  if (inFraction) return inInches(length);
  const long = toMm(length);
  // As wide and as long as cloth is bought, people say metres.
  return long >= 1000 && long % 10 === 0 ? `${plain(long / 1000)} m` : `${plain(long)} mm`;
}

function* pointsOf(piece: Piece): Iterable<Point> {
  yield piece.outline.start;
  for (const edge of piece.outline.edges) {
    for (const segment of edge.segments) {
      if (segment.kind === 'curve') {
        yield segment.first;
        yield segment.second;
      }
      yield segment.to;
    }
  }
  for (const mark of piece.marks) yield mark.at;
}

/** In which unit the places of a piece are best spelled: the outfit's where all come out even in it, else the other, else mm. */
export function drawingUnit(piece: Piece, unit: Outfit['units']): 'in' | 'mm' {
  const all = [...pointsOf(piece)].flatMap(({ x, y }) => [x, y]);
  const even = { in: all.every(inParts), mm: all.every(inHundredths) };
  const other = unit === 'in' ? 'mm' : 'in';
  return even[unit] ? unit : even[other] ? other : 'mm';
}

const number = (length: Length, unit: 'in' | 'mm'): number =>
  unit === 'in' ? toInches(length) : Number(plain(toMm(length)));

/** A place as a file spells it, `[x, y]`. */
export const spellPoint = ({ x, y }: Point, unit: 'in' | 'mm'): readonly [number, number] => [
  number(x, unit),
  number(y, unit),
];

const spellSegment = (segment: Segment, unit: 'in' | 'mm') => ({
  to: spellPoint(segment.to, unit),
  ...(segment.kind === 'curve' && {
    curve: [...spellPoint(segment.first, unit), ...spellPoint(segment.second, unit)],
  }),
});

/** An outline as a file spells it. */
export const spellOutline = ({ start, edges }: Outline, unit: 'in' | 'mm') => ({
  unit,
  start: spellPoint(start, unit),
  edges: edges.map(({ name, segments }) => {
    const [last, ...before] = segments.toReversed();
    return {
      name,
      ...(before.length > 0 && { via: before.toReversed().map((one) => spellSegment(one, unit)) }),
      ...(last && spellSegment(last, unit)),
    };
  }),
});

/** Plain data as a file has it. */
export type Written = Readonly<Record<string, unknown>>;

/** What is left of a thing once everything is taken out that a reader fills in by itself. */
export function without(thing: Written, usual: Written): Written {
  return Object.fromEntries(
    Object.entries(thing).filter(([key, value]) => {
      if (value === undefined) return false;
      return !(key in usual && JSON.stringify(value) === JSON.stringify(usual[key]));
    }),
  );
}

const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null;

/** JSON as a person lays it out: lists of figures and of names on one line where they are short. */
export function writeJson(value: unknown, indent = ''): string {
  if (isPlain(value)) return JSON.stringify(value);
  const inner = `${indent}  `;
  const wrap = (open: string, parts: readonly string[], close: string): string =>
    parts.length === 0
      ? `${open}${close}`
      : `${open}\n${inner}${parts.join(`,\n${inner}`)}\n${indent}${close}`;
  if (Array.isArray(value)) {
    const parts = value.map((one) => writeJson(one, inner));
    const line = `[${parts.join(', ')}]`;
    return value.every(isPlain) && inner.length + line.length <= 100 ? line : wrap('[', parts, ']');
  }
  const fields = Object.entries(value as object).filter(([, one]) => one !== undefined);
  return wrap(
    '{',
    fields.map(([key, one]) => `${JSON.stringify(key)}: ${writeJson(one, inner)}`),
    '}',
  );
}
