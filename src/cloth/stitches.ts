import { inches, type Length, mm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Needle, needleFor, type SewnCloth } from './needles.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, published, type Source } from './source.ts';

/** Numbers of the stitch types, as ISO 4915 gives them (names from memory). */
export type StitchType = 101 | 301 | 304 | 401 | 406 | 503 | 504 | 512 | 516 | 602 | 605 | 606;

/** One stitch type. */
export interface Stitch {
  readonly name: string;
  /** Does a seam sewn with it give when the cloth is stretched? From memory. */
  readonly gives: boolean;
  /** Thread used for each length of seam, all threads together. */
  readonly thread: number;
}

/** Thread for a seam depends on its stitch type. */
export const THREAD_RATIOS: Source = published(
  'Estimation of Thread Consumption of Garment, quoting The Technology of Clothing Manufacture, Carr and Latham',
  'undated',
  'table of ratios; seen as an excerpt of a page that reproduces it',
);

/**
 * Thread that each stitch type takes, all threads together.
 * @unit times the seam
 * @each stitch {}
 */
export const THREAD_FOR: Sourced<Readonly<Record<StitchType, number>>> = {
  value: {
    101: 4,
    301: 2.5,
    304: 7,
    401: 5.5,
    406: 18,
    503: 12,
    504: 14,
    512: 18,
    516: 20,
    602: 25,
    605: 28,
    606: 32,
  },
  source: THREAD_RATIOS,
};

const sews = (type: StitchType, name: string, gives: boolean): Stitch => ({
  name,
  gives,
  thread: THREAD_FOR.value[type],
});
/** Stitch types with the thread each uses; see {@link THREAD_FOR}. */
export const STITCHES: Readonly<Record<StitchType, Stitch>> = {
  101: sews(101, 'Single-thread chainstitch', true),
  301: sews(301, 'Lockstitch', false),
  304: sews(304, 'Zigzag lockstitch', true),
  401: sews(401, 'Two-thread chainstitch', true),
  406: sews(406, 'Two-needle coverstitch', true),
  503: sews(503, 'Two-thread overedge', true),
  504: sews(504, 'Three-thread overedge', true),
  512: sews(512, 'Four-thread overedge', true),
  516: sews(516, 'Chainstitch with overedge', true),
  602: sews(602, 'Two-needle covering stitch', true),
  605: sews(605, 'Three-needle covering stitch', true),
  606: sews(606, 'Flat seaming stitch', true),
};

/** What the row of stitches is for. */
export type StitchPurpose = 'seam' | 'baste' | 'reinforce' | 'neaten';

/**
 * Length of a stitch, by what it is for; 12 to the inch are 2.1 mm long.
 * @each to {}
 */
export const STITCH_LENGTH: Readonly<Record<StitchPurpose, Sourced<Length>>> = {
  seam: {
    value: inches(1, 12),
    source: published(
      'TM 10-8400-201-23, US Army',
      'undated',
      'Table 5-1, 301 or 401: shirt 10 to 14, trousers 12 to 16 an inch; seen as an excerpt',
    ),
  },
  baste: {
    value: inches(1, 6),
    source: published('Making Bound Buttonholes', 'undated', 'step II; seen as an excerpt'),
  },
  reinforce: {
    value: inches(1, 16),
    source: published('Making Bound Buttonholes', 'undated', 'step II; seen as an excerpt'),
  },
  neaten: {
    value: inches(1, 8),
    source: published(
      'TM 10-8400-201-23, US Army',
      'undated',
      'Table 5-1, overedge 502/504: 6 to 10 an inch; seen as an excerpt',
    ),
  },
};
/** Width of the narrow zigzag that gives and still presses open like a plain seam. */
export const NARROW_ZIGZAG: Sourced<Length> = { value: mm(0.5), source: memory };
/** Width of the zigzag that holds a raw edge. */
export const EDGE_ZIGZAG: Sourced<Length> = { value: mm(3), source: memory };

/** The cloths that one seam takes, and what the row is for. */
export interface StitchInput {
  readonly cloths: readonly SewnCloth[];
  readonly purpose: StitchPurpose;
  /** Is there an overlocker? If not, edges are neatened with a zigzag. False if not given. */
  readonly overlocker?: boolean;
}

/** What {@link stitchFor} gives back. */
export interface StitchMade {
  readonly type: StitchType;
  readonly stitch: Stitch;
  readonly length: Length;
  /** Width of a zigzag; none for other stitches, whose width the machine sets. */
  readonly width: Length | undefined;
  readonly needle: Needle;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Stitch, length, width and needle for a seam. A narrow zigzag where either cloth stretches (common practice, no
 * source); plain lockstitch where none does; basting is plain always, for it comes out again.
 * Refused: no cloth.
 */
export function stitchFor({ cloths, purpose, overlocker }: StitchInput): Result<StitchMade, Refusal> {
  if (cloths.length === 0)
    return bad(refusal('cloths', 'There is no cloth to sew.', 'Give one cloth or more.'));
  const needle = needleFor(cloths);
  if (!needle.ok) return needle;
  const stretches = cloths.some((cloth) => cloth.stretches);
  const edge: StitchType = overlocker ? 504 : 304;
  const type: StitchType = purpose === 'neaten' ? edge : stretches && purpose !== 'baste' ? 304 : 301;
  const advice: Advice[] = [
    advise(
      'Sew a sample on scraps of the same cloths first; the maker of the machine knows better.',
      practice,
    ),
  ];
  if (stretches && purpose !== 'baste') {
    advice.push(advise('Stretch the sample along the seam: no thread may snap.', practice));
    advice.push(advise('A stretch stitch of the machine serves instead of the zigzag.', practice));
  }
  if (stretches && purpose === 'baste')
    advice.push(advise('Plain basting does not give: take it out before the seam is stretched.', practice));
  const wide = purpose === 'neaten' ? EDGE_ZIGZAG.value : NARROW_ZIGZAG.value;
  const assumed = [...needle.value.assumed];
  if (overlocker === undefined && purpose === 'neaten') assumed.push('There is no overlocker.');
  if (type === 304) assumed.push(`Zigzag ${purpose === 'neaten' ? '3' : '0.5'} mm wide, from memory.`);
  return good({
    type,
    stitch: STITCHES[type],
    length: STITCH_LENGTH[purpose].value,
    width: type === 304 ? wide : undefined,
    needle: needle.value,
    advice,
    assumed,
  });
}
