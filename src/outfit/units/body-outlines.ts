import type { Length } from '../../length/length.ts';
import { pointOf } from '../../shape/flatten.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../../shape/outline.ts';
import { turnedRound } from './facing-outline.ts';
import type { Drawn } from './half-body.ts';
import { point, straight } from './rectangle.ts';

/** How the centre of a front or back is: on the fold, open with a lap beyond the centre, or a seam. */
export type Centre = { readonly name: 'fold' | 'opening' | 'centre'; readonly lap: Length };

const edge = (name: string, ...segments: readonly Segment[]): OutlineEdge => ({ name, segments });

/** From the centre of the neck to the neck end of the shoulder, past the lap where there is one. */
const neckEdges = (drawn: Drawn, { lap }: Centre): { start: Point; edges: readonly OutlineEdge[] } =>
  lap > 0
    ? {
        start: pointOf(drawn.neckIn.x - lap, drawn.neckIn.y),
        edges: [straight('lap', drawn.neckIn), edge('neck', drawn.neck)],
      }
    : { start: drawn.neckIn, edges: [edge('neck', drawn.neck)] };

const closing = (drawn: Drawn, centre: Centre, start: Point): readonly OutlineEdge[] => [
  straight('hem', point(start.x, drawn.hemIn.y)),
  straight(centre.name, start),
];

/** Half a front or back in one piece. */
export function wholeOutline(drawn: Drawn, centre: Centre): Outline {
  const { start, edges } = neckEdges(drawn, centre);
  return {
    start,
    edges: [
      ...edges,
      straight('shoulder', drawn.tip),
      edge('armhole', ...drawn.armhole),
      edge('side', ...drawn.side),
      ...closing(drawn, centre, start),
    ],
  };
}

/** Where a panel seam runs. */
export interface PanelSeam {
  readonly from: 'shoulder' | 'armhole';
  /** How far along the shoulder it begins, as a share of it from the neck end. */
  readonly along: number;
  /** Its distance from the centre, from the chest down. */
  readonly out: Length;
  /** What it takes in at the waist, on each of its two edges. */
  readonly takes: Length;
}

/** From the top of a panel seam to the hem, taking in at the waist to the left (-1) or to the right (1). */
function panelEdge(drawn: Drawn, seam: PanelSeam, top: Point, way: -1 | 1): readonly Segment[] {
  const x = drawn.neckIn.x + seam.out;
  const level = drawn.corner.y;
  const [dx, dy] = [x - top.x, level - top.y];
  const first =
    seam.from === 'shoulder'
      ? pointOf(top.x + dx / 3, top.y + dy / 3)
      : pointOf(top.x + 0.6 * dx, top.y + 0.15 * dy);
  const to = pointOf(x, level);
  const upper: Segment = { kind: 'curve', first, second: pointOf(x, level - dy / 2), to };
  const foot = pointOf(x, drawn.hemIn.y);
  if (seam.takes === 0) return [upper, { kind: 'line', to: foot }];
  const waist = pointOf(x + way * seam.takes, drawn.waistLevel);
  const down = waist.y - level;
  const under = foot.y - waist.y;
  const shaped: Segment = {
    kind: 'curve',
    first: pointOf(x, level + down / 3),
    second: pointOf(waist.x, waist.y - down / 3),
    to: waist,
  };
  if (under < 1000) return [upper, shaped];
  const lower: Segment = {
    kind: 'curve',
    first: pointOf(waist.x, waist.y + under / 3),
    second: pointOf(x, foot.y - under / 3),
    to: foot,
  };
  return [upper, shaped, lower];
}

/** Half a front or back in two pieces, a centre and a side, whose panel seams are equally long. */
export function panelOutlines(
  drawn: Drawn,
  centre: Centre,
  seam: PanelSeam,
): { centre: Outline; side: Outline } {
  const { start, edges } = neckEdges(drawn, centre);
  const { neckOut, tip } = drawn;
  const shoulder = seam.from === 'shoulder';
  const top = shoulder
    ? pointOf(neckOut.x + seam.along * (tip.x - neckOut.x), neckOut.y + seam.along * (tip.y - neckOut.y))
    : drawn.narrow;
  const [upper, lower] = drawn.armhole;
  const inner = panelEdge(drawn, seam, top, -1);
  const outer = panelEdge(drawn, seam, top, 1);
  const foot = outer.at(-1)?.to ?? top;
  return {
    centre: {
      start,
      edges: [
        ...edges,
        straight('shoulder', shoulder ? top : tip),
        ...(shoulder ? [] : [edge('armhole', upper)]),
        edge('panel', ...inner),
        ...closing(drawn, centre, start),
      ],
    },
    side: {
      start: top,
      edges: [
        ...(shoulder ? [straight('shoulder', tip), edge('armhole', upper, lower)] : [edge('armhole', lower)]),
        edge('side', ...drawn.side),
        straight('hem', foot),
        edge('panel', ...turnedRound(top, outer)),
      ],
    },
  };
}
