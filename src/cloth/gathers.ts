import { inBothRules } from '../length/both-rules.ts';
import { add, inches, type Length, longer, mm, nm, shorter, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, published } from './source.ts';

/**
 * A ruffle strip is this many times as long as its place, unless said otherwise.
 * @unit times
 */
export const FULLNESS: Sourced<number> = { value: 2.5, source: practice };
/**
 * A ruffle less full than this looks skimped, and one more full is hard to draw up.
 * @unit times
 */
export const USUAL_FULLNESS: Sourced<readonly [least: number, most: number]> = {
  value: [1.25, 3],
  source: published(
    'Clothing for Women, Baldt; The New Dressmaker, Butterick',
    '1916, 1921',
    'bias ruffle from 1 1/4; chiffon ruche to 3 times (p. 137); seen as excerpts',
  ),
};
/** What is gathered, as published figures tell cloths apart. */
export type Gathered = 'straight ruffle' | 'bias ruffle' | 'sheer ruche' | 'ruche with body' | 'full gathers';

const baldt = (part: string) =>
  published('Clothing for Women, Baldt', '1916', `constructive processes ${part}; seen as an excerpt`);
const butterick = published('The New Dressmaker, Butterick', '1921', 'ch. 28, p. 137; seen as an excerpt');

/**
 * How many times its place a strip is long, by what is gathered; a bias ruffle needs less than a straight one.
 * @unit times
 */
export const FULLNESS_FOR: Readonly<Record<Gathered, Sourced<readonly [least: number, most: number]>>> = {
  'straight ruffle': { value: [4 / 3, 3 / 2], source: baldt('4') },
  'bias ruffle': { value: [5 / 4, 4 / 3], source: baldt('5') },
  'sheer ruche': { value: [3, 3], source: butterick },
  'ruche with body': { value: [2, 2], source: butterick },
  'full gathers': {
    value: [2, 3],
    source: published(
      'Dress Making, Trade Practical, National Instructional Media Institute',
      'about 2024',
      'p. 210; seen as an excerpt',
    ),
  },
};

/** Fullness to begin with: the middle of the published range. Gather a sample before cutting the whole. */
export function fullnessFor(gathered: Gathered): Sourced<number> {
  const { value, source } = FULLNESS_FOR[gathered];
  return { value: (value[0] + value[1]) / 2, source };
}

/** Two gathering rows lie this far from each other, both inside the allowance. */
export const ROWS_APART: Sourced<Length> = {
  value: inches(1, 4),
  source: published('Sewing Technique: Straight Ruffle (handout)', 'after 2010', 'seen as an excerpt'),
};
/** The gathering row nearer the seam lies this far from it, in the allowance. */
export const ROW_FROM_SEAM: Sourced<Length> = { value: inches(1, 8), source: memory };
/** Thread hangs out this far at each end of a gathering row, to hold while drawing up. */
export const THREAD_END: Sourced<Length> = { value: mm(100), source: memory };
/**
 * A strip less or more full than this is taken for a slip.
 * @unit times
 */
export const POSSIBLE_FULLNESS: Sourced<readonly [least: number, most: number]> = {
  value: [1, 10],
  source: memory,
};

/** Can a strip be this many times as long as its place? */
export const isFullness = (fullness: number): boolean =>
  fullness >= POSSIBLE_FULLNESS.value[0] && fullness <= POSSIBLE_FULLNESS.value[1];

/** More strips than this are a slip of the finger. */
const MOST_STRIPS = 1000;

/**
 * Both edges are marked in so many equal parts, unless said otherwise.
 * @unit parts
 */
export const MARKED_PARTS: Sourced<4 | 8> = {
  value: 4,
  source: published('Sewing and Handicraft for Girls', 'undated', 'Gathering B; seen as an excerpt'),
};
/**
 * A gathering row further out than this part of the allowance lies near the cut edge, where cloth frays.
 * @unit part
 */
export const NEAR_THE_EDGE: Sourced<number> = { value: 3 / 4, source: memory };

/** A gathered strip and the edge that it is set to. */
export interface GathersInput {
  /** Length of the seam that the gathers are set to. */
  readonly place: Length;
  /** How many times its place the strip is long; 2.5 if not given. */
  readonly fullness?: number;
  /** Usable width of the cloth between the selvages: strips are cut across. */
  readonly clothWidth: Length;
  /** Seam allowance at each end of each strip. */
  readonly join: Length;
  /** Allowance of the gathered edge, in which the gathering rows run. */
  readonly allowance: Length;
  /** True for a closed ring, such as a cuff or a hem; its last strip joins the first. */
  readonly ring?: boolean;
  /** Marks that divide both edges: in quarters or in eighths. Quarters if not given. */
  readonly parts?: 4 | 8;
}

/** What {@link gathers} gives back. */
export interface GathersMade {
  /** Length of the joined strip along its seam line, without end allowances. */
  readonly strip: Length;
  readonly fullness: number;
  /** How many strips to cut across the cloth, all alike, and how long each is with its allowances. */
  readonly strips: number;
  readonly cutLength: Length;
  readonly joins: number;
  /** Where the joins come along the strip, from its start. */
  readonly joinsAt: readonly Length[];
  /** Marks on the edge and on the strip, ends included; each pair is pinned together. */
  readonly marks: readonly { readonly place: Length; readonly strip: Length }[];
  /** Distance of each gathering row from the seam line, into the allowance. */
  readonly rows: readonly [near: Length, far: Length];
  /** Gathering threads: a fresh one for each row of each half. */
  readonly threads: { readonly count: number; readonly each: Length };
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Length, cutting and marking of a gathered strip.
 *
 * Strips: as many as the length divided by the cloth width less both allowances, rounded up (NIMI Dress Making, trade
 * practical, p. 203, c. 2024, seen as an excerpt). Marks in quarters or eighths: Sewing and Handicraft for Girls,
 * Gathering B, seen as an excerpt. A thread for each half: Watson, Textiles and Clothing, 1907.
 *
 * Refused: a place or cloth without length; fullness under 1, which is no gathering, or over 10; cloth no wider than its two
 * allowances; an allowance too narrow for two rows; more than 1000 strips.
 */
export function gathers(input: GathersInput): Result<GathersMade, Refusal> {
  const {
    place,
    clothWidth,
    join,
    allowance,
    ring = false,
    parts = MARKED_PARTS.value,
    fullness = FULLNESS.value,
  } = input;
  if (place <= 0) return bad(refusal('place', 'The seam has no length.', 'Give a length above zero.'));
  if (!isFullness(fullness)) {
    return bad(
      refusal(
        'fullness',
        'A strip this long cannot be gathered to its place.',
        'Give a fullness from 1 to 10; 2.5 is usual.',
      ),
    );
  }
  if (join < 0)
    return bad(refusal('join', 'The allowance of the joins is below zero.', 'Give zero or more.'));
  const usable = subtract(clothWidth, times(join, 2));
  if (usable <= 0)
    return bad(
      refusal(
        'clothWidth',
        'The cloth is no wider than the allowances of a strip.',
        'Give a wider cloth or a narrower allowance.',
      ),
    );
  const far = add(ROW_FROM_SEAM.value, ROWS_APART.value);
  if (shorter(allowance, far)) {
    return bad(
      refusal(
        'allowance',
        'The allowance has no room for two gathering rows.',
        `Give an allowance of at least ${inBothRules(far, 'up')}.`,
      ),
    );
  }
  const strip = times(place, fullness);
  const strips = Math.max(1, Math.ceil(strip / usable));
  if (strips > MOST_STRIPS) {
    const cure = 'Give a shorter seam or a wider cloth.';
    return bad(refusal('place', 'This is more than 1000 strips.', cure));
  }
  const divide = (whole: Length, k: number, of: number): Length => nm((whole * k) / of);
  const joins = ring ? strips : strips - 1;
  const [least, most] = USUAL_FULLNESS.value;
  const advice: Advice[] = [];
  if (fullness < least)
    advice.push(advise('Under 1 1/4 times its place a ruffle looks flat.', USUAL_FULLNESS.source));
  if (fullness > most)
    advice.push(
      advise(
        'Over 3 times its place a ruffle is hard to draw up unless the cloth is sheer.',
        USUAL_FULLNESS.source,
      ),
    );
  const assumed: string[] = [];
  if (input.fullness === undefined) assumed.push('Fullness 2 1/2.');
  if (input.parts === undefined) assumed.push('Marks in quarters.');
  if (longer(far, times(allowance, NEAR_THE_EDGE.value)))
    assumed.push('The outer gathering row lies near the cut edge, and the cloth does not fray that far.');
  return good({
    strip,
    fullness,
    strips,
    cutLength: add(divide(strip, 1, strips), join, join),
    joins,
    joinsAt: Array.from({ length: joins }, (_, i) => divide(strip, ring ? i : i + 1, strips)),
    marks: Array.from({ length: parts + 1 }, (_, k) => ({
      place: divide(place, k, parts),
      strip: divide(strip, k, parts),
    })),
    rows: [ROW_FROM_SEAM.value, far],
    threads: { count: 4, each: add(divide(strip, 1, 2), times(THREAD_END.value, 2)) },
    advice,
    assumed,
  });
}
