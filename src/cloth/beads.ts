import { add, type Length, mm, nm, subtract, times, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Sourced } from './advice.ts';
import type { LatticeMade } from './lattice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, published } from './source.ts';

/**
 * A cluster at a crossing has so many beads: first sewn singly, then a thread through all of them.
 * @unit beads
 */
export const CLUSTER: Sourced<number> = { value: 4, source: practice };
/** A needleful, the length of thread to sew with at one time. */
export const NEEDLEFUL: Sourced<readonly [least: Length, most: Length]> = {
  value: [mm(400), mm(500)],
  source: published('Encyclopedia of Needlework, Dillmont', 'undated', 'The thread'),
};
/** Each needleful loses this much to fastening on and off. */
export const FASTENING: Sourced<Length> = { value: mm(80), source: memory };
/**
 * Beads to buy beyond those counted, unless said otherwise.
 * @unit in the hundred
 */
export const SPARE_BEADS: Sourced<number> = { value: 10, source: memory };

/** How beads lie on one segment. */
export interface SegmentBeads {
  readonly count: number;
  /** Before the first bead, between beads and after the last: the remainder spread evenly. */
  readonly gap: Length;
}

/** A bead and the way it is sewn. */
export interface BeadWay {
  /** Length of a bead along the line. */
  readonly bead: Length;
  /** True where beads are sewn two at a time, back through the cloth between them: only even numbers then. */
  readonly pairs: boolean;
  /** Kept free at each end of a segment, for the cluster at the crossing. */
  readonly clear: Length;
}

function spread(segment: number, { bead, pairs, clear }: BeadWay): SegmentBeads {
  const room = segment - 2 * clear;
  const most = room < bead ? 0 : Math.floor(room / bead);
  const count = pairs ? most - (most % 2) : most;
  return { count, gap: count === 0 ? zero : nm(Math.floor((room - count * bead) / (count + 1))) };
}

/**
 * How many beads lie on a segment, and the gap that spreads them evenly (rounded down to the nanometre).
 * Two at a time, with a stitch back through the cloth between: common practice for bugle beads on a curved surface.
 *
 * Refused: a bead without length; a bead longer than the segment has room for, or no room for two where they are sewn in pairs.
 */
export function segmentBeads(segment: Length, way: BeadWay): Result<SegmentBeads, Refusal> {
  const wrong = checkWay(way);
  if (wrong) return bad(wrong);
  const beads = spread(segment, way);
  if (beads.count > 0) return good(beads);
  return segment - 2 * way.clear < way.bead
    ? bad(
        refusal(
          'bead',
          'The bead is longer than the segment has room for.',
          'Give a shorter bead or a wider lattice.',
        ),
      )
    : bad(
        refusal(
          'pairs',
          'There is room for one bead, and they are sewn two at a time.',
          'Give a shorter bead, or sew singly.',
        ),
      );
}

function checkWay({ bead, clear }: BeadWay): Refusal | undefined {
  if (bead <= 0)
    return refusal('bead', 'The bead has no length.', 'Measure ten beads in a row and give a tenth.');
  if (clear < 0) return refusal('clear', 'The room kept free is below zero.', 'Give zero or more.');
  return undefined;
}

/** Beads over a whole lattice. */
export interface BeadsInput extends BeadWay {
  readonly lattice: LatticeMade;
  /** Beads at each crossing; 0 for none. 4 if not given. */
  readonly cluster?: number;
  /** Length of a cluster's bead, if another than along the lines. */
  readonly clusterBead?: Length;
  /** Beads to buy beyond those counted, in percent. 10 if not given (from memory). */
  readonly spare?: number;
  /** Length of a needleful; 45 cm if not given. */
  readonly needleful?: Length;
  /** Weight of one bead in milligrams, if the weight is wanted. */
  readonly milligrams?: number;
}

/** Beads on one line, as they are counted at the bench. */
export interface LineBeads {
  /** Number of the line in the lattice, from 0. */
  readonly line: number;
  readonly count: number;
  /** For each of its segments, in order. */
  readonly segments: readonly SegmentBeads[];
}

/** What {@link latticeBeads} gives back. */
export interface BeadsMade {
  readonly lines: readonly LineBeads[];
  /** Beads along all lines. */
  readonly alongLines: number;
  readonly clusters: number;
  /** Beads in all clusters. */
  readonly inClusters: number;
  readonly total: number;
  /** With the spare ones, rounded up. */
  readonly toBuy: number;
  /** Segments at the edge or between crossings that are too short for any bead. */
  readonly bare: number;
  /** Thread along its path, without what fastening takes. */
  readonly thread: Length;
  readonly needlefuls: number;
  /** Beads counted, in grams; given if the weight of one is. */
  readonly grams: number | undefined;
  readonly assumed: readonly string[];
}

/**
 * Beads for a lattice: per segment, line and whole; clusters at the crossings; thread and needlefuls.
 *
 * The thread's path. Singly: along the line once, and back through each bead once to hold it. Two at a time: along
 * the line, under the two and through the second again, so two bead lengths more for each pair. A cluster: each bead
 * as if sewn singly (twice its length), then once through all, which is round their ring.
 *
 * Refused: what `segmentBeads` refuses about the bead, where no segment at all has room; a cluster, spare or weight
 * below zero; a needleful no longer than fastening takes.
 */
export function latticeBeads(input: BeadsInput): Result<BeadsMade, Refusal> {
  const { lattice, spare = SPARE_BEADS.value, cluster = CLUSTER.value, clusterBead = input.bead } = input;
  const needleful = input.needleful ?? times(add(...NEEDLEFUL.value), 1 / 2);
  const wrong = checkWay(input);
  if (wrong) return bad(wrong);
  if (!Number.isInteger(cluster) || cluster < 0 || cluster > 100) {
    return bad(
      refusal(
        'cluster',
        'This is not a number of beads for a cluster.',
        'Give a whole number from 0 to 100; 4 is usual.',
      ),
    );
  }
  if (!(spare >= 0 && spare <= 1000))
    return bad(refusal('spare', 'The spare is not a percentage.', 'Give 0 or more; 10 is usual.'));
  if (clusterBead <= 0)
    return bad(
      refusal('clusterBead', 'The bead of the clusters has no length.', 'Give a length above zero.'),
    );
  const useful = subtract(needleful, FASTENING.value);
  if (useful <= 0)
    return bad(
      refusal('needleful', 'The thread is used up by fastening it.', 'Give a needleful of 40 to 50 cm.'),
    );
  if (input.milligrams !== undefined && !(input.milligrams > 0)) {
    return bad(
      refusal('milligrams', 'A bead without weight cannot be weighed.', 'Give a weight above zero, or none.'),
    );
  }

  let alongLines = 0;
  let bare = 0;
  let path = 0;
  const lines = lattice.lines.map((line, index): LineBeads => {
    const segments = line.segments.map((segment) => spread(segment, input));
    let count = 0;
    for (const beads of segments) {
      count += beads.count;
      if (beads.count === 0) bare++;
    }
    alongLines += count;
    if (count > 0) path += line.length + count * input.bead;
    return { line: index, count, segments };
  });
  if (alongLines === 0) {
    return bad(
      refusal(
        'bead',
        'No segment of the lattice has room for the beads.',
        'Give a shorter bead or a wider lattice.',
      ),
    );
  }
  const clusters = cluster === 0 ? 0 : lattice.crossings;
  const inClusters = clusters * cluster;
  path += inClusters * 3 * clusterBead;
  const total = alongLines + inClusters;
  const assumed = [
    'Each line is sewn with its thread from end to end, with no thread carried from line to line.',
    'Fastening on and off takes 8 cm of each needleful.',
  ];
  if (input.cluster === undefined) assumed.push('Four beads to a cluster.');
  if (input.spare === undefined) assumed.push('One bead in ten to spare.');
  if (input.needleful === undefined) assumed.push('A needleful of 45 cm.');
  if (input.milligrams !== undefined && inClusters > 0) assumed.push('Beads of the clusters weigh the same.');
  return good({
    lines,
    alongLines,
    clusters,
    inClusters,
    total,
    toBuy: Math.ceil((total * (100 + spare)) / 100),
    bare,
    thread: nm(path),
    needlefuls: Math.ceil(path / useful),
    grams: input.milligrams === undefined ? undefined : (total * input.milligrams) / 1000,
    assumed,
  });
}
