import { edgeMarks } from '../../cloth/edge-marks.ts';
import type { LatticeFamily } from '../../cloth/lattice.ts';
import { nm } from '../../length/length.ts';
import { line, place } from '../../paper/drawing.ts';
import type { StripMarks } from '../../paper/marking-strip.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import type { Polygon } from '../../shape/flatten.ts';
import { boundingBox, distance } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';

const WAYS: ReadonlyMap<string, string> = new Map([
  ['0', 'falls to the right'],
  ['1', 'rises to the right'],
  ['0,1', 'both ways'],
]);

/**
 * Where the lines of a lattice meet the edges of a panel that is the same on both sides: a strip for the top, one side
 * and the bottom, and short marks outside every edge for the drawing. Edges that no line meets have no strip.
 *
 * @param outline left and right upper corner, right and left lower corner
 */
export function latticeEdges(
  outline: Polygon,
  families: readonly [LatticeFamily, LatticeFamily],
): { readonly strips: readonly StripMarks[]; readonly ticks: readonly Drawn[] } {
  const [a, b, c, d] = outline;
  const ticks: Drawn[] = [];
  const strips: StripMarks[] = [];
  if (!a || !b || !c || !d) return { strips, ticks };
  const { left, right, top, bottom } = boundingBox(outline);
  const short = Math.max(right - left, bottom - top) / 70;
  // `out` is the hand on which the outside lies, looking along the edge.
  const edge = (from: Point, to: Point, out: 1 | -1, name?: string, datum = ''): void => {
    const span = distance(from, to);
    const [x, y] = [(to.x - from.x) / span, (to.y - from.y) / span];
    const marks = edgeMarks(from, to, families);
    for (const { at } of marks) {
      const on = place(nm(from.x + at * x), nm(from.y + at * y));
      ticks.push(line('mark', on, place(nm(on.x + out * short * y), nm(on.y - out * short * x))));
    }
    if (name === undefined || marks.length === 0) return;
    strips.push({
      name,
      from: datum,
      span,
      marks: marks.map(({ at, families: which }) => ({ at, name: WAYS.get(which.join()) ?? 'line' })),
    });
  };
  edge(a, b, 1, 'Lattice, along the top', 'the left upper corner');
  edge(a, d, -1, 'Lattice, down the left side; turn over for the right', 'the upper corner');
  edge(d, c, -1, 'Lattice, along the bottom', 'the left lower corner');
  edge(b, c, 1);
  return { strips, ticks };
}
