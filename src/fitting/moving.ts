import type { Length } from '../length/length.ts';
import type { Amount } from './cure-types.ts';
import type { Level, Role } from './entry.ts';
import { bottomOf, type Placed, topOf } from './sides.ts';

/** A change along the height of a piece, straight between its knots and level beyond them. */
export type Knots = readonly (readonly [y: number, by: number])[];

/** The change at a height; `near` tells on which stretch. */
export const at = (knots: Knots, y: number, near = y): number => {
  // Beyond its ends a stretch goes on straight, so that the handles of a curve move as the curve itself does.
  const i = knots.findIndex(([knot]) => knot > near);
  const [from, to] = [knots[i < 0 ? knots.length - 1 : i - 1], knots[i < 0 ? knots.length : i]];
  if (!from || !to) return (from ?? to)?.[1] ?? 0;
  return from[1] + ((to[1] - from[1]) * (y - from[0])) / (to[0] - from[0]);
};

/** Where a height comes to lie once lengths have changed. */
export function downBy(
  role: Role,
  levels: ReadonlyMap<Level, Length>,
  amounts: readonly Amount[],
): (y: number, near: number) => number {
  const order = [...levels].sort((a, b) => a[1] - b[1]);
  const parts = amounts.flatMap((amount): readonly { knots: Knots; lift: number }[] => {
    const i = order.findIndex(([level]) => level === amount.level);
    const [from, to] = [order[i]?.[1], order[i + 1]?.[1]];
    if (amount.kind !== 'length' || amount.by === 0 || i < 0 || from === undefined || to === undefined)
      return [];
    // A rise is changed at its top: the leg below stays where it is.
    const lift = role === 'leg' && ['waist', 'hip'].includes(amount.level) ? amount.by : 0;
    return [
      {
        knots: [
          [from, 0],
          [to, amount.by],
        ],
        lift,
      },
    ];
  });
  return (y, near) => parts.reduce((sum, { knots, lift }) => sum + at(knots, y, near) - lift, 0);
}

/** Heights at which a length begins or ends to change. */
export const lengthKnots = (
  levels: ReadonlyMap<Level, Length>,
  amounts: readonly Amount[],
): readonly number[] => {
  const order = [...levels.entries()].sort((a, b) => a[1] - b[1]);
  return amounts.flatMap(({ kind, level, by }) => {
    const i = order.findIndex(([one]) => one === level);
    return kind === 'length' && by !== 0 ? order.slice(i, i + 2).map(([, y]) => y) : [];
  });
};

/** How far out a side goes at every height: nothing at its upper end, as was asked at each level, the same below the last. */
export function outBy(
  path: readonly Placed[],
  pointed: boolean,
  levels: ReadonlyMap<Level, Length>,
  amounts: readonly Amount[],
): Knots {
  const top = topOf(path);
  const asked = amounts
    .flatMap(({ kind, level, by }): readonly (readonly [number, number])[] => {
      const y = levels.get(level);
      return kind === 'width' && level !== 'neck' && y !== undefined ? [[y, by]] : [];
    })
    .sort((a, b) => a[0] - b[0]);
  const [first, last] = [asked[0], asked.at(-1)];
  if (!first || !last) return [];
  const above: Knots = first[0] > top + 1 ? [[top, 0]] : [];
  const bottom = bottomOf(path);
  // Where both sides run into one point, as at the toes, that point stays.
  return [...above, ...asked, ...(pointed && last[0] < bottom - 1 ? [[bottom, 0] as const] : [])];
}
