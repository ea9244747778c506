import type { Field, LinesField } from '../../fields/fields.ts';
import type { Marking } from '../../length/writing.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';

/** What stands on everything that is asked. */
interface Label {
  readonly label: string;
  readonly means?: string;
  /** Has a usual answer: folded away. */
  readonly usual?: true;
  readonly optional?: true;
}

/** One of a few things, each with a line that says what it is. */
export interface KindAsk extends Label {
  readonly kind: 'kind';
  readonly options: readonly { readonly value: string; readonly label: string; readonly tells: string }[];
  readonly start: string;
}
/** A line of words, or a few lines; `id` where they are kept as a file spells names. */
export interface WordsAsk extends Label {
  readonly kind: 'words';
  readonly start: string;
  readonly lines?: true;
  readonly as?: 'id';
}
/** One edge of one piece, kept as its name; the piece is kept as what the work is `on`. */
export interface EdgeAsk extends Label {
  readonly kind: 'edge';
}
/** A run of edges, or only one of any piece; with `on`, the piece of the first is what the work is on. */
export interface RunAsk extends Label {
  readonly kind: 'run';
  readonly one?: true;
  readonly on?: true;
  /** Any edges, which need not meet. */
  readonly apart?: true;
}
/** One thing that the outfit or the garment has. */
export interface WhichAsk extends Label {
  readonly kind: 'which';
  readonly of: 'cloths' | 'markers' | 'pieces';
}
/** Any number of pieces, joins, or joins and works. */
export interface SomeAsk extends Label {
  readonly kind: 'some';
  readonly of: 'pieces' | 'joins' | 'joins and works';
}
/** Several lengths: `12 × 1/4, 3/8`. */
export interface LengthsAsk extends Label {
  readonly kind: 'lengths';
  readonly start: LinesField['start'];
}
/** Things of one kind, in an order; `plain` where each is words alone, asked under the name `words`. */
export interface RowsAsk extends Label {
  readonly kind: 'rows';
  /** What one of them is called: `step`. */
  readonly each: string;
  readonly row: Asks;
  readonly plain?: true;
  /** How many stand there first. */
  readonly first: number;
}
/** A field whose answer is kept as a number, or as true for `yes`; `only yes` where nothing at all is kept for `no`. */
export type FieldAsk = Exclude<Field, LinesField> & { readonly as?: 'number' | 'yes' | 'only yes' };

/** Anything that the form of a part asks. Its name is the path of what it says within the part: `button.diameter`. */
export type Ask =
  | FieldAsk
  | KindAsk
  | WordsAsk
  | EdgeAsk
  | RunAsk
  | WhichAsk
  | SomeAsk
  | LengthsAsk
  | RowsAsk;
/** What a form asks, by path, in order. */
export type Asks = Readonly<Record<string, Ask>>;

/** What answers are chosen from and read by. */
export interface Here {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly marking: Marking;
}

const yesNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const;

/** A question answered by yes or no. */
export const yes = (label: string, start: 'yes' | 'no', means?: string): FieldAsk => ({
  kind: 'choice',
  as: 'yes',
  label,
  options: yesNo,
  start,
  usual: true,
  ...(means === undefined ? {} : { means }),
});

/** A length; without a start it may stay empty. */
export const long = (
  label: string,
  start?: readonly [inch: string, mm: string],
  more: { readonly means?: string; readonly usual?: true } = {},
): FieldAsk =>
  start === undefined
    ? { kind: 'length', label, start: { in: '', mm: '' }, optional: true, ...more }
    : { kind: 'length', label, start: { in: start[0], mm: start[1] }, ...more };

/** Is it asked at once? */
export const atOnce = (ask: Ask): boolean =>
  ask.usual !== true && !('optional' in ask && ask.optional === true);

/** Things that can be chosen, by id, as the maker knows them. */
export function choicesOf(
  { outfit, garment }: Here,
  of: WhichAsk['of'] | SomeAsk['of'],
): readonly { readonly value: string; readonly label: string }[] {
  const things = {
    cloths: outfit.cloths,
    markers: outfit.markers,
    pieces: garment.pieces,
    joins: garment.joins,
    'joins and works': [...garment.joins, ...garment.works],
  }[of];
  return things.map(({ id, name }) => ({ value: id, label: name }));
}
