import { type Length, nm } from '../length/length.ts';
import { directionOf } from '../shape/clip.ts';
import type { Point } from '../shape/outline.ts';
import type { LatticeFamily } from './lattice.ts';

/** Where a line of a lattice, carried on, meets an edge. */
export interface EdgeMark {
  /** From the beginning of the edge. */
  readonly at: Length;
  /** Which families meet it there; both where their lines meet the edge in one place. */
  readonly families: readonly (0 | 1)[];
}

const SAME = 1000; // a micrometre

/**
 * Where the lines of two families, carried on to the finished edge, meet a straight edge; in order from its
 * beginning, each reckoned from there. A line along the edge has no mark. Follows from the measures.
 */
export function edgeMarks(
  from: Point,
  to: Point,
  families: readonly [LatticeFamily, LatticeFamily],
): EdgeMark[] {
  const long = Math.hypot(to.x - from.x, to.y - from.y);
  const hits: { at: number; family: 0 | 1 }[] = [];
  for (const family of [0, 1] as const) {
    const { angle, spacing, through } = families[family];
    const n = directionOf(angle + 90);
    const offset = (p: Point): number => ((p.x - through.x) * n.x + (p.y - through.y) * n.y) / spacing;
    const [a, b] = [offset(from), offset(to)];
    const slack = SAME / spacing;
    if (Math.abs(b - a) * spacing <= SAME) continue;
    const high = Math.floor(Math.max(a, b) + slack);
    for (let k = Math.ceil(Math.min(a, b) - slack); k <= high; k++) {
      hits.push({ at: Math.min(long, Math.max(0, ((k - a) / (b - a)) * long)), family });
    }
  }
  hits.sort((p, q) => p.at - q.at || p.family - q.family);
  const marks: { at: Length; families: (0 | 1)[] }[] = [];
  for (const { at, family } of hits) {
    const last = marks.at(-1);
    if (last && at - last.at <= SAME && !last.families.includes(family)) last.families.push(family);
    else marks.push({ at: nm(at), families: [family] });
  }
  return marks;
}
