import { type Length, nm, zero } from '../length/length.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import { flattenOutline } from '../shape/flatten.ts';
import type { Outline } from '../shape/outline.ts';
import { bodyLevels } from './body-levels.ts';
import type { Level, Role } from './entry.ts';
import { legLevels, skirtLevels, sleeveLevels } from './limb-levels.ts';
import { facing, isCalled } from './panels.ts';
import { type Heights, type Placed, placed, sidesOf, upright } from './sides.ts';
import { acrossAt } from './split.ts';

/** The levels from the top down, in the order in which they come on any piece. */
export const DOWNWARDS: readonly Level[] = [
  'neck',
  'shoulder',
  'chest',
  'top',
  'upper-arm',
  'elbow',
  'wrist',
  'waist',
  'hip',
  'crotch',
  'thigh',
  'knee',
  'calf',
  'ankle',
  'hem',
];

/** Level of a piece with but one, by what it is for. */
const ONE: Readonly<Partial<Record<Role, Level>>> = {
  cuff: 'wrist',
  collar: 'neck',
  waistband: 'waist',
  'arm-band': 'upper-arm',
  'sleeve-head': 'upper-arm',
};

const BODY: readonly Role[] = ['centre-front', 'side-front', 'side-back', 'centre-back'];

/** How wide a piece is at a height of its drawing; of a piece cut on the fold, the half that is drawn. */
export function widthAt(outline: Outline, y: Length): Length {
  const found = placed(outline).flatMap(({ edge, from }) => {
    let start = from;
    return edge.segments.flatMap((segment) => {
      const across = acrossAt(start, segment, y);
      start = segment.to;
      return across;
    });
  });
  return found.length > 1 ? nm(Math.max(...found) - Math.min(...found)) : zero;
}

/** The level at which a trim or a facing lies: that of the edge it is sewn to. */
function besideLevel(garment: Garment, roles: ReadonlyMap<string, Role>, piece: Piece): Level | undefined {
  const said: readonly (readonly [Level, readonly string[]])[] = [
    ['neck', ['neck']],
    ['knee', ['knee']],
    ['ankle', ['ankle']],
    ['waist', ['waist']],
    ['wrist', ['wrist', 'lower']],
    ['upper-arm', ['upper', 'cap', 'armhole']],
    ['hem', ['hem', 'bottom']],
  ];
  const partners = garment.joins.flatMap((join) =>
    join.this.some((ref) => ref.piece === piece.id)
      ? join.to
      : join.to.some((ref) => ref.piece === piece.id)
        ? join.this
        : [],
  );
  for (const ref of partners) {
    const role = roles.get(ref.piece) ?? 'other';
    const level = ONE[role] ?? said.find(([, names]) => isCalled(ref.edge, ...names))?.[0];
    if (ref.piece !== piece.id && level) return level;
  }
  return undefined;
}

/** Parts of a sleeve or skirt that are sewn one below the other, from the top down. */
function stacked(garment: Garment, parts: readonly Piece[]): readonly (readonly Piece[])[] {
  const below = new Map<string, string>();
  const ids = new Set(parts.map(({ id }) => id));
  for (const join of garment.joins)
    for (const [a, b] of facing(join)) {
      if (a.piece === b.piece || !ids.has(a.piece) || !ids.has(b.piece)) continue;
      const here = (ref: typeof a): Placed | undefined => {
        const piece = parts.find(({ id }) => id === ref.piece);
        return piece && placed(piece.outline).find(({ edge }) => edge.name === ref.edge);
      };
      const [one, other] = [here(a), here(b)];
      if (!one || !other || upright(one) || upright(other)) continue;
      const piece = parts.find(({ id }) => id === a.piece);
      const sides = piece && sidesOf(piece.outline);
      const isBottom = sides?.bottom.some(({ edge }) => edge.name === a.edge) === true;
      below.set(isBottom ? a.piece : b.piece, isBottom ? b.piece : a.piece);
    }
  const lower = new Set(below.values());
  return parts
    .filter(({ id }) => !lower.has(id))
    .map((piece) => {
      const chain = [piece];
      for (
        let next = below.get(piece.id);
        next !== undefined && chain.length <= parts.length;
        next = below.get(next)
      ) {
        const found = parts.find(({ id }) => id === next);
        if (found) chain.push(found);
      }
      return chain;
    });
}

/** At which heights of its drawing each piece has the levels that belong to it. */
export function levelsOf(
  garment: Garment,
  roles: ReadonlyMap<string, Role>,
): ReadonlyMap<string, ReadonlyMap<Level, Length>> {
  const of = (...wanted: readonly Role[]): readonly Piece[] =>
    garment.pieces.filter(({ id }) => wanted.includes(roles.get(id) ?? 'other'));
  const found = new Map<string, Heights>();
  const take = (some: ReadonlyMap<string, Heights>): void => {
    for (const [piece, its] of some) found.set(piece, its);
  };
  take(bodyLevels(garment, roles, of(...BODY)));
  for (const parts of stacked(garment, of('sleeve'))) take(sleeveLevels(parts));
  take(legLevels(of('leg'), of('lower-leg')));
  for (const piece of of('skirt')) found.set(piece.id, skirtLevels(piece));
  for (const piece of garment.pieces) {
    if (found.has(piece.id)) continue;
    const level = ONE[roles.get(piece.id) ?? 'other'] ?? besideLevel(garment, roles, piece);
    const { top, bottom } = extent(piece.outline);
    found.set(piece.id, level ? new Map([[level, (top + bottom) / 2]]) : new Map());
  }
  return new Map(
    [...found].map(([piece, its]) => [
      piece,
      new Map([...its].map(([level, y]) => [level, nm(y)] as const).sort((a, b) => a[1] - b[1])),
    ]),
  );
}

function extent(outline: Outline): { readonly top: number; readonly bottom: number } {
  const ys = flattenOutline(outline).map(({ y }) => y);
  return { top: Math.min(...ys), bottom: Math.max(...ys) };
}
