import { geometry } from '../../cloth/source.ts';
import { add, type Length, longer, nm, size, subtract, times } from '../../length/length.ts';
import { edgeStarts } from '../../shape/flatten.ts';
import type { Point, Segment } from '../../shape/outline.ts';
import type { Chain, Garment, Wearer } from '../outfit.ts';
import type { BodyKind } from './body-figures.ts';
import type { EdgesPlaced, Proposal } from './unit.ts';

const segmentsOf = (garment: Garment, piece: string, edge: string): readonly Segment[] | undefined =>
  garment.pieces.find((one) => one.id === piece)?.outline.edges.find((one) => one.name === edge)?.segments;

/** Where an edge begins and ends on its piece. */
export function endsOf(garment: Garment, piece: string, edge: string): readonly [Point, Point] | undefined {
  const outline = garment.pieces.find((one) => one.id === piece)?.outline;
  const start = outline && edgeStarts(outline).get(edge);
  const end = segmentsOf(garment, piece, edge)?.at(-1)?.to;
  return start && end && [start, end];
}

/** A shoulder as it is sewn to another: from the neck to the armhole, whichever way it was touched. */
export function fromNeck(garment: Garment, chain: Chain): Chain {
  const hasNeck = (ref: Chain[number] | undefined): boolean =>
    garment.pieces.some(
      (piece) => piece.id === ref?.piece && piece.outline.edges.some((edge) => edge.name === 'neck'),
    );
  return !hasNeck(chain[0]) && hasNeck(chain.at(-1)) ? chain.toReversed() : chain;
}

/** What a front says to the back that is sewn to it: lengths that must agree, and widths measured on one sheet. */
export function agreeing(
  garment: Garment,
  measures: Wearer['measures'],
  kind: BodyKind,
  {
    shoulder,
    side,
  }: { readonly shoulder?: EdgesPlaced | undefined; readonly side?: EdgesPlaced | undefined },
): Readonly<Record<string, Proposal>> {
  const found: Record<string, Proposal> = {};
  const said = (value: Length, because: string): Proposal => ({ value, because, source: geometry });
  if (shoulder) found.shoulder = said(shoulder.length, 'As long as the front shoulder it is sewn to.');
  if (side) found.side = said(side.length, 'As long as the front side seam it is sewn to.');
  if (!shoulder || !side) return found;
  const inner = fromNeck(garment, shoulder.chain)[0];
  const outer = side.chain[0];
  if (!inner || !outer) return found;
  // Pieces of one unit are drawn on one sheet, so that distances between them are true.
  const oneSheet =
    inner.piece === outer.piece ||
    garment.units.some(({ brought }) => brought.includes(inner.piece) && brought.includes(outer.piece));
  const neck = endsOf(garment, inner.piece, 'neck');
  const seam = endsOf(garment, outer.piece, outer.edge);
  if (!oneSheet || !neck || !seam) return found;
  const [centre, point] = neck;
  const [corner, foot] = seam;
  const out = size(subtract(corner.x, centre.x));
  found.neckWide = said(size(subtract(point.x, centre.x)), 'As wide as the front neck.');
  found.armhole = said(size(subtract(corner.y, point.y)), 'Level with the front armhole.');
  const round = measures.chest && times(add(measures.chest, kind.ease.value), 1 / 2);
  const wide = round && longer(round, out) ? subtract(round, out) : out;
  found.chest = said(
    wide,
    wide === out ? 'As wide as the front.' : 'What the front leaves of half the chest and its ease.',
  );
  if (kind.below > 0 || foot.x > corner.x)
    found.hem = said(nm(wide + foot.x - corner.x), 'Flared as the front is.');
  // A side that is taken in has its waist between its two curves.
  const curves = outer.other ? undefined : segmentsOf(garment, outer.piece, outer.edge);
  const [waist] = curves?.length === 2 ? curves : [];
  if (waist)
    found.below = said(
      times(side.length, (foot.y - waist.to.y) / (foot.y - corner.y)),
      'As far below the waist as the front goes.',
    );
  return found;
}
