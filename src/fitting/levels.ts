import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { inches, type Length, mm, nm, zero } from '../length/length.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import { flattenOutline } from '../shape/flatten.ts';
import type { Outline } from '../shape/outline.ts';
import type { Level, Role } from './entry.ts';
import { facing, hasEdge, isCalled } from './panels.ts';
import {
  bottomOf,
  downTo,
  downward,
  heightAt,
  type Placed,
  placed,
  sidesOf,
  spanAt,
  topOf,
  upright,
} from './sides.ts';
import { acrossAt } from './split.ts';

/** The waist is taken to lie this far below the armhole where the drawing does not show it. */
export const ARMHOLE_TO_WAIST: Sourced<Length> = { value: inches(17, 2), source: practice };
/** The hips are taken to lie this far below the waist. */
export const WAIST_TO_HIP: Sourced<Length> = { value: inches(8), source: practice };
/** A piece that ends this near to the waist or the hips is taken to end there. */
export const ENDS_AT: Sourced<Length> = { value: inches(1), source: practice };

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

type Heights = Map<Level, number>;

/** The height of the lowest point of an edge so called. */
const lowest = (piece: Piece, name: string): number =>
  Math.max(
    ...placed(piece.outline).flatMap((one) =>
      isCalled(one.edge.name, name) ? downward(one).map(({ y }) => y) : [],
    ),
  );

const endsOf = (piece: Piece, name: string): readonly number[] =>
  placed(piece.outline).flatMap(({ edge, from, to }) => (isCalled(edge.name, name) ? [from.y, to.y] : []));

/** Levels that are corners of the piece itself. */
function corners(piece: Piece): Heights {
  const found: Heights = new Map();
  const [shoulder, neck] = [endsOf(piece, 'shoulder'), endsOf(piece, 'neck')];
  if (shoulder.length > 0) found.set('shoulder', Math.max(...shoulder));
  if (neck.length > 0 && Math.min(...neck) < Math.max(...shoulder, ...neck))
    found.set('neck', Math.min(...neck));
  if (hasEdge(piece, 'armhole') && hasEdge(piece, 'side')) found.set('chest', lowest(piece, 'armhole'));
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
function bodyLevels(
  garment: Garment,
  roles: ReadonlyMap<string, Role>,
  body: readonly Piece[],
): ReadonlyMap<string, Heights> {
  const found = new Map(body.map((piece) => [piece.id, corners(piece)]));
  carry(garment, found, 'chest');
  const ends = (piece: Piece): number => {
    const sides = sidesOf(piece.outline);
    return sides ? Math.min(bottomOf(sides.left), bottomOf(sides.right)) : Math.max(...endsOf(piece, 'hem'));
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

/** How far down a piece goes along its sides. */
const depth = (piece: Piece): number => {
  const sides = sidesOf(piece.outline);
  return sides
    ? Math.min(bottomOf(sides.left), bottomOf(sides.right)) - Math.max(topOf(sides.left), topOf(sides.right))
    : 0;
};

/** The ends of a piece that both its sides reach. */
function reach(piece: Piece): { readonly top: number; readonly bottom: number } | undefined {
  const sides = sidesOf(piece.outline);
  return (
    sides && {
      top: Math.max(topOf(sides.left), topOf(sides.right)),
      bottom: Math.min(bottomOf(sides.left), bottomOf(sides.right)),
    }
  );
}

/** Sleeves, from the top part down: the upper arm at the foot of the cap, the elbow half way from there to the wrist. */
function sleeveLevels(parts: readonly Piece[]): ReadonlyMap<string, Heights> {
  const found = new Map<string, Heights>();
  const whole = parts.reduce((sum, piece) => sum + depth(piece), 0);
  const [upper] = parts;
  const capped = upper !== undefined && hasEdge(upper, 'cap');
  // Without a cap there is a little sleeve above the widest place of the arm.
  const places: readonly (readonly [Level, number])[] = capped
    ? [
        ['upper-arm', 0],
        ['elbow', whole / 2],
        ['wrist', whole],
      ]
    : [
        ['top', 0],
        ['upper-arm', whole / 6],
        ['elbow', whole / 2],
        ['wrist', whole],
      ];
  let above = 0;
  for (const piece of parts) {
    const [ends, long] = [reach(piece), depth(piece)];
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends) continue;
    if (piece === upper && capped) {
      const ys = placed(piece.outline).flatMap((one) =>
        isCalled(one.edge.name, 'cap') ? downward(one).map(({ y }) => y) : [],
      );
      if (Math.min(...ys) < ends.top - mm(1)) its.set('top', Math.min(...ys));
    }
    for (const [level, at] of places) {
      const last = piece === parts.at(-1) ? at <= above + long : at < above + long;
      if (at >= above && last) its.set(level, ends.top + at - above);
    }
    above += long;
  }
  return found;
}

/** The height at which a leg's inner seam and rise meet. */
function crotchOf(piece: Piece): number | undefined {
  const rises = placed(piece.outline).filter(({ edge }) => isCalled(edge.name, 'rise'));
  return rises.length > 0 ? Math.max(...rises.flatMap(({ from, to }) => [from.y, to.y])) : undefined;
}

/** Legs, thigh and lower leg: hips two thirds down the rise, the thigh below the crotch, the calf a third below the knee. */
function legLevels(uppers: readonly Piece[], lowers: readonly Piece[]): ReadonlyMap<string, Heights> {
  const found = new Map<string, Heights>();
  const between = (from: number, to: number, share: number): number => from + (to - from) * share;
  for (const piece of uppers) {
    const [ends, crotch] = [reach(piece), crotchOf(piece)];
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends || crotch === undefined) continue;
    its
      .set('waist', ends.top)
      .set('hip', between(ends.top, crotch, 2 / 3))
      .set('crotch', crotch);
    const foot = endsOf(piece, 'ankle');
    const down = hasEdge(piece, 'foot', 'heel', 'sole')
      ? footTop(piece, ends.bottom)
      : Math.min(ends.bottom, ...foot);
    const whole = lowers.length === 0;
    // Half way from crotch to ankle, a little above, is the knee of a leg in one piece.
    const knee = whole ? between(crotch, down, 0.48) : ends.bottom;
    its.set('thigh', between(crotch, knee, 1 / 4)).set('knee', knee);
    if (whole) its.set('calf', between(knee, down, 1 / 3)).set('ankle', down);
  }
  for (const piece of lowers) {
    const ends = reach(piece);
    const its: Heights = new Map();
    found.set(piece.id, its);
    if (!ends) continue;
    const down = footTop(piece, ends.bottom);
    its
      .set('knee', ends.top)
      .set('calf', between(ends.top, down, 1 / 3))
      .set('ankle', down);
  }
  return found;
}

/** Where the foot begins that is cut in one with a leg; the end of the leg where it has none. */
function footTop(piece: Piece, bottom: number): number {
  const foot = placed(piece.outline).flatMap(({ edge, from, to }) =>
    isCalled(edge.name, 'foot', 'heel', 'sole') ? [from.y, to.y] : [],
  );
  return Math.min(bottom, ...foot);
}

function skirtLevels(piece: Piece): Heights {
  const ends = reach(piece);
  if (!ends) return new Map();
  const its: Heights = new Map<Level, number>([['waist', ends.top]]);
  const hip = ends.top + WAIST_TO_HIP.value;
  if (hip < ends.bottom - ENDS_AT.value) its.set('hip', hip);
  return its.set('hem', ends.bottom);
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
