import { type Length, subtract, times, zero } from '../length/length.ts';
import type { Sourced } from './advice.ts';
import { memory } from './source.ts';
import type { StitchType } from './stitches.ts';

/** How the threads of a stitch share what it takes. */
export interface ThreadParts {
  /** Threads that come from above, through needles. */
  readonly needles: number;
  /** Threads from below or across: of bobbin, loopers and spreaders together. */
  readonly under: number;
  /** What holds them: a lockstitch has a bobbin, the others loopers. */
  readonly from: 'none' | 'bobbin' | 'looper';
  /** Part of all the thread that goes through the needles; not known for every stitch. */
  readonly needleShare?: number;
}

/**
 * Needle threads and threads under the cloth of each stitch type, and the part that the needles take.
 *
 * The trade's tables give them beside the ratios of thread; these are from memory. A published measurement of type 401 gives
 * 19.5 of 81.5, which is 0.24.
 * @each stitch {}
 */
export const THREAD_PARTS: Sourced<Readonly<Record<StitchType, ThreadParts>>> = {
  value: {
    101: { needles: 1, under: 0, from: 'none', needleShare: 1 },
    301: { needles: 1, under: 1, from: 'bobbin', needleShare: 0.5 },
    304: { needles: 1, under: 1, from: 'bobbin', needleShare: 0.5 },
    401: { needles: 1, under: 1, from: 'looper', needleShare: 0.25 },
    406: { needles: 2, under: 1, from: 'looper', needleShare: 0.3 },
    503: { needles: 1, under: 1, from: 'looper', needleShare: 0.55 },
    504: { needles: 1, under: 2, from: 'looper', needleShare: 0.2 },
    512: { needles: 2, under: 2, from: 'looper', needleShare: 0.25 },
    516: { needles: 2, under: 3, from: 'looper', needleShare: 0.2 },
    602: { needles: 2, under: 2, from: 'looper', needleShare: 0.2 },
    605: { needles: 3, under: 2, from: 'looper', needleShare: 0.3 },
    606: { needles: 4, under: 5, from: 'looper' },
  },
  source: memory,
};

/** Thread parted into what the needles take and what the others take; together they are all of it. */
export interface SharedThread {
  readonly needles: Length;
  readonly under: Length;
}

/** Parts a length of thread between the needles and the others, or nothing where the share is not known. */
export function shareThread(type: StitchType, thread: Length): SharedThread | undefined {
  const { needleShare } = THREAD_PARTS.value[type];
  if (needleShare === undefined) return undefined;
  const needles = needleShare === 1 ? thread : times(thread, needleShare);
  return { needles, under: needleShare === 1 ? zero : subtract(thread, needles) };
}
