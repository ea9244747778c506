import type { Piece } from '../outfit/outfit.ts';
import { flattenOutline, pointOf } from '../shape/flatten.ts';
import { edgeLengths } from '../shape/measure.ts';
import type { Outline, Point } from '../shape/outline.ts';
import { hasEdge } from './panels.ts';
import { placed } from './sides.ts';

/** The edge by which a band, a cuff, a collar or a frill is sewn on. */
export function sewnEdge(outline: Outline): string {
  const names = outline.edges.map(({ name }) => name);
  const found = ['neck', 'seam', 'inner', 'waist', 'upper', 'lower'].find((word) => names.includes(word));
  if (found !== undefined) return found;
  const lengths = edgeLengths(outline);
  return [...names].sort((a, b) => (lengths.get(b) ?? 0) - (lengths.get(a) ?? 0))[0] ?? '';
}

function stretchedBy(outline: Outline, anchor: number, factor: number): Outline {
  const go = ({ x, y }: Point): Point => pointOf(anchor + (x - anchor) * factor, y);
  return {
    start: go(outline.start),
    edges: outline.edges.map(({ name, segments }) => ({
      name,
      segments: segments.map((one) =>
        one.kind === 'line'
          ? { kind: 'line', to: go(one.to) }
          : { kind: 'curve', first: go(one.first), second: go(one.second), to: go(one.to) },
      ),
    })),
  };
}

/** A piece without sides is spread evenly across, until the edge by which it is sewn on has the length that is wanted. */
export function spread(piece: Piece, by: number, edges: readonly string[]): Outline {
  const { outline } = piece;
  const xs = flattenOutline(outline).map(({ x }) => x);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const on = outline.edges.findIndex(({ name }) => edges.includes(name));
  const end = outline.edges[on]?.segments.at(-1)?.to.x;
  const anchor = hasEdge(piece, 'fold')
    ? 0
    : end === undefined
      ? (left + right) / 2
      : end > (left + right) / 2
        ? left
        : right;
  const edge = sewnEdge(outline);
  const sewn = placed(outline).find((one) => one.edge.name === edge);
  const alone: Outline = { start: sewn?.from ?? outline.start, edges: sewn ? [sewn.edge] : [] };
  const long = (factor: number): number => edgeLengths(stretchedBy(alone, anchor, factor)).get(edge) ?? 0;
  const before = long(1);
  const wanted = before + by;
  if (right === left || wanted <= 0) return outline;
  // An edge grows evenly enough with the spread that a few chords find its length to the nanometre.
  let [factor, next] = [1, 1 + by / (right - left)];
  for (let i = 0; i < 20 && Math.abs(long(next) - wanted) > 1; i++) {
    const [one, two] = [long(factor), long(next)];
    if (one === two) break;
    [factor, next] = [next, next + ((wanted - two) * (next - factor)) / (two - one)];
  }
  return stretchedBy(outline, anchor, next);
}
