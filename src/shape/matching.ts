import { add, type Length, mm, nm, size, subtract, times, zero } from '../length/length.ts';
import { edgeLengths } from './measure.ts';
import type { Outline } from './outline.ts';

/** An edge of a piece, as one link of a seam. */
export interface SeamLink {
  readonly outline: Outline;
  readonly edge: string;
}

/** How two runs of edges that are sewn together compare. */
export interface SeamMatch {
  /** Length of either run. */
  readonly first: Length;
  readonly second: Length;
  /** The first less the second. */
  readonly difference: Length;
  /** Whether the lengths differ by no more than the tolerance. */
  readonly matches: boolean;
  /**
   * Every place where an edge ends on one run or the other, measured from the start of both as the seam is sewn;
   * `apart` is how far the end on the second run lies beyond the one on the first. An end with no partner within the
   * tolerance has none.
   */
  readonly ends: readonly {
    readonly first: Length | undefined;
    readonly second: Length | undefined;
    readonly apart: Length;
  }[];
  /** Edges named that their outline does not have; they count as without length. */
  readonly missing: readonly string[];
}

/** Two seams match when they differ by no more than half a millimetre. */
export const MATCHING: Length = mm(0.5);

function runOf(links: readonly SeamLink[], missing: string[]): Length[] {
  const known = new Map<Outline, ReadonlyMap<string, Length>>();
  const ends: Length[] = [];
  let gone = zero;
  for (const { outline, edge } of links) {
    const lengths = known.get(outline) ?? edgeLengths(outline);
    known.set(outline, lengths);
    const length = lengths.get(edge);
    if (length === undefined) missing.push(edge);
    gone = add(gone, length ?? zero);
    ends.push(gone);
  }
  return ends;
}

/**
 * Compares two runs of edges that are to be sewn together, each in the order in which the seam meets them, and tells
 * where their inner ends meet and where they miss.
 * @param tolerance largest difference that still matches, for the whole and for each end
 */
export function matchSeams(
  first: readonly SeamLink[],
  second: readonly SeamLink[],
  tolerance: Length = MATCHING,
): SeamMatch {
  const missing: string[] = [];
  const [a, b] = [runOf(first, missing), runOf(second, missing)];
  const [whole, other] = [a.at(-1) ?? zero, b.at(-1) ?? zero];
  const ends: SeamMatch['ends'][number][] = [];
  let [i, j] = [0, 0];
  while (i < a.length - 1 || j < b.length - 1) {
    const p = i < a.length - 1 ? a[i] : undefined;
    const q = j < b.length - 1 ? b[j] : undefined;
    if (p !== undefined && q !== undefined && size(subtract(q, p)) <= tolerance) {
      ends.push({ first: p, second: q, apart: subtract(q, p) });
      i++;
      j++;
    } else if (q === undefined || (p !== undefined && p < q)) {
      ends.push({ first: p, second: undefined, apart: zero });
      i++;
    } else {
      ends.push({ first: undefined, second: q, apart: zero });
      j++;
    }
  }
  const difference = subtract(whole, other);
  return {
    first: whole,
    second: other,
    difference,
    matches: size(difference) <= tolerance && missing.length === 0,
    ends,
    missing,
  };
}

/** Marks at equal parts of both runs, ends left out: pin each pair together and the difference is spread evenly. */
export const pairedMarks = (
  match: SeamMatch,
  parts: number,
): { readonly first: Length; readonly second: Length }[] =>
  Array.from({ length: Math.max(0, Math.floor(parts) - 1) }, (_, k) => ({
    first: nm(times(match.first, (k + 1) / Math.floor(parts))),
    second: nm(times(match.second, (k + 1) / Math.floor(parts))),
  }));
