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

/** Where the thread ratios come from. */
export const THREAD_RATIOS: Source = published(
  'Estimation of Thread Consumption of Garment, quoting The Technology of Clothing Manufacture, Carr and Latham',
  'undated',
  'table of ratios; seen as an excerpt of a page that reproduces it',
);

/** Stitch types with the thread each uses; see {@link THREAD_RATIOS}. */
export const STITCHES: Readonly<Record<StitchType, Stitch>> = {
  101: { name: 'Single-thread chainstitch', gives: true, thread: 4 },
  301: { name: 'Lockstitch', gives: false, thread: 2.5 },
  304: { name: 'Zigzag lockstitch', gives: true, thread: 7 },
  401: { name: 'Two-thread chainstitch', gives: true, thread: 5.5 },
  406: { name: 'Two-needle coverstitch', gives: true, thread: 18 },
  503: { name: 'Two-thread overedge', gives: true, thread: 12 },
  504: { name: 'Three-thread overedge', gives: true, thread: 14 },
  512: { name: 'Four-thread overedge', gives: true, thread: 18 },
  516: { name: 'Chainstitch with overedge', gives: true, thread: 20 },
  602: { name: 'Two-needle covering stitch', gives: true, thread: 25 },
  605: { name: 'Three-needle covering stitch', gives: true, thread: 28 },
  606: { name: 'Flat seaming stitch', gives: true, thread: 32 },
};

/** What the row of stitches is for. */
export type StitchPurpose = 'seam' | 'baste' | 'reinforce' | 'neaten';

/** Length of a stitch for each purpose; a plain seam takes 12 to the inch. */
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
/** A zigzag this wide gives and still presses open like a plain seam. */
export const NARROW_ZIGZAG: Sourced<Length> = { value: mm(0.5), source: memory };
/** A zigzag that holds a raw edge. */
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
