import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { inches, type Length, mm, nm } from '../length/length.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import { flattenOutline } from '../shape/flatten.ts';
import type { Outline } from '../shape/outline.ts';
import type { Level, Role } from './entry.ts';
import { facing, hasEdge } from './panels.ts';
import {
  bottomOf,
  downTo,
  downward,
  endsOf,
  type Heights,
  heightAt,
  heightsAlong,
  type Placed,
  placed,
  sidesOf,
  spanAt,
  upright,
} from './sides.ts';

/** The waist is taken to lie this far below the armhole where the drawing does not show it. */
export const ARMHOLE_TO_WAIST: Sourced<Length> = { value: inches(17, 2), source: practice };
/** The hips are taken to lie this far below the waist. */
export const WAIST_TO_HIP: Sourced<Length> = { value: inches(8), source: practice };
/** A piece that ends this near to the waist or the hips is taken to end there. */
export const ENDS_AT: Sourced<Length> = { value: inches(1), source: practice };

/** Levels that are corners of the piece itself. */
function corners(piece: Piece): Heights {
  const found: Heights = new Map();
  const [shoulder, neck] = [endsOf(piece.outline, 'shoulder'), endsOf(piece.outline, 'neck')];
  if (shoulder.length > 0) found.set('shoulder', Math.max(...shoulder));
  if (neck.length > 0 && Math.min(...neck) < Math.max(...shoulder, ...neck))
    found.set('neck', Math.min(...neck));
  if (hasEdge(piece, 'armhole') && hasEdge(piece, 'side'))
    found.set('chest', Math.max(...heightsAlong(piece.outline, 'armhole')));
  return found;
}

/** Is the bottom of a body sewn to what begins at the waist? */
const endsAtWaist = (
  garment: Garment,
  roles: ReadonlyMap<string, Role>,
  piece: Piece,
  bottom: readonly Placed[],
): boolean =>
  garment.joins.some((join) =>
    [
      [join.this, join.to],
      [join.to, join.this],
    ].some(
      ([one = [], to = []]) =>
        one.some((ref) => ref.piece === piece.id && bottom.some(({ edge }) => edge.name === ref.edge)) &&
        to.some((ref) => ['skirt', 'waistband'].includes(roles.get(ref.piece) ?? 'other')),
    ),
  );

/** The waist of a piece that shows it: where it is narrowest, clearly narrower than above and below. */
function narrowest(outline: Outline, from: number, to: number): number | undefined {
  const points = flattenOutline(outline);
  const steps = 60;
  const widths = Array.from({ length: steps + 1 }, (_, k) => {
    const y = from + ((to - from) * k) / steps;
    const span = spanAt(points, nm(y));
    return { y, wide: span.to - span.from };
  });
  const least = widths.reduce((a, b) => (b.wide < a.wide ? b : a));
  const clear = mm(3);
  const [first, last] = [widths[0]?.wide ?? 0, widths.at(-1)?.wide ?? 0];
  return least.wide < first - clear && least.wide < last - clear ? least.y : undefined;
}

/** Hands a height over the seams to the pieces beside, at the same distance along both edges. */
function carry(garment: Garment, found: ReadonlyMap<string, Heights>, level: Level): void {
  const edges = new Map(
    garment.pieces.flatMap((piece) =>
      placed(piece.outline).map((one) => [`${piece.id}.${one.edge.name}`, one] as const),
    ),
  );
  const pairs = garment.joins.flatMap(facing).flatMap(([a, b]) => [[a, b] as const, [b, a] as const]);
  for (let changed = true; changed; ) {
    changed = false;
    for (const [a, b] of pairs) {
      const [from, to] = [found.get(a.piece), found.get(b.piece)];
      const y = from?.get(level);
      const [one, other] = [edges.get(`${a.piece}.${a.edge}`), edges.get(`${b.piece}.${b.edge}`)];
      if (y === undefined || !to || to.has(level) || !one || !other || !upright(one) || !upright(other))
        continue;
      const points = downward(one);
      if (y < (points[0]?.y ?? 0) - 1 || y > (points.at(-1)?.y ?? 0) + 1) continue;
      to.set(level, heightAt(downward(other), downTo(points, y)));
      changed = true;
    }
  }
}

/** Levels of the panels of a body, which agree along the seams between them. */
export function bodyLevels(
  garment: Garment,
  roles: ReadonlyMap<string, Role>,
  body: readonly Piece[],
): ReadonlyMap<string, Heights> {
  const found = new Map(body.map((piece) => [piece.id, corners(piece)]));
  carry(garment, found, 'chest');
  const ends = (piece: Piece): number => {
    const sides = sidesOf(piece.outline);
    return sides
      ? Math.min(bottomOf(sides.left), bottomOf(sides.right))
      : Math.max(...endsOf(piece.outline, 'hem'));
  };
  const cutAtWaist = (piece: Piece): boolean =>
    endsAtWaist(
      garment,
      roles,
      piece,
      placed(piece.outline).filter((one) => !upright(one)),
    );
  // The first front beside the arm says where waist and hips are; the others take it from there.
  const order = [...body].sort((a, b) => Number(hasEdge(b, 'side')) - Number(hasEdge(a, 'side')));
  for (const piece of order) {
    const its = found.get(piece.id);
    const chest = its?.get('chest');
    const bottom = ends(piece);
    if (!its || chest === undefined || its.has('waist') || cutAtWaist(piece)) continue;
    const waist = narrowest(piece.outline, chest, bottom) ?? chest + ARMHOLE_TO_WAIST.value;
    if (waist > bottom - ENDS_AT.value) continue;
    its.set('waist', waist);
    carry(garment, found, 'waist');
    if (waist + WAIST_TO_HIP.value < bottom - ENDS_AT.value) its.set('hip', waist + WAIST_TO_HIP.value);
    carry(garment, found, 'hip');
  }
  for (const piece of body) {
    const its = found.get(piece.id);
    const bottom = ends(piece);
    if (Number.isFinite(bottom)) its?.set(cutAtWaist(piece) ? 'waist' : 'hem', bottom);
  }
  return found;
}
