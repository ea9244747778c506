import { type Length, nm } from '../length/length.ts';
import type { Piece } from '../outfit/outfit.ts';
import type { Outline, Point, Segment } from '../shape/outline.ts';
import { altered } from './altered.ts';
import type { Amount } from './cure-types.ts';
import type { Level, Role } from './entry.ts';
import { DOWNWARDS } from './levels.ts';

/** A piece that may have to change, with the levels at which it is asked to. */
export interface Taking {
  readonly piece: Piece;
  readonly role: Role;
  readonly levels: ReadonlyMap<Level, Length>;
  /** Levels at which its width may change. */
  readonly widths: Set<Level>;
  /** The upper of the two levels between which its length may change. */
  readonly lengths: Set<Level>;
}

/** A change of a piece that has one amount. */
export type Change = Pick<Amount, 'kind' | 'level'>;

/** All changes that a piece may have, from the top down. */
export const changesOf = (one: Taking): readonly Change[] =>
  (['width', 'length'] as const).flatMap((kind) =>
    DOWNWARDS.filter((level) => (kind === 'width' ? one.widths : one.lengths).has(level)).map((level) => ({
      kind,
      level,
    })),
  );

/** Levels between which a length may change that is asked for from one level to another, each the upper of two neighbours. */
export function within(levels: ReadonlyMap<Level, Length>, from: Level, to: Level): readonly Level[] {
  const order = [...levels.keys()];
  const at = (level: Level): number => DOWNWARDS.indexOf(level);
  return order.filter((level, i) => {
    const next = order[i + 1];
    return next !== undefined && at(level) >= at(from) && at(next) <= at(to);
  });
}

const STEP = nm(1_000_000);

/** Places and weights of the sum that stands for a curve's length. Source: Gauss's rule with eight points (from memory). */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.183_434_642_495_649_8, 0.362_683_783_378_362],
  [0.525_532_409_916_329, 0.313_706_645_877_887_3],
  [0.796_666_477_413_626_7, 0.222_381_034_453_374_5],
  [0.960_289_856_497_536_3, 0.101_228_536_290_376_3],
].flatMap(([at = 0, weight = 0]) => [
  [(1 - at) / 2, weight / 2],
  [(1 + at) / 2, weight / 2],
]);

function curveLength(from: Point, { first, second, to }: Extract<Segment, { kind: 'curve' }>): number {
  let sum = 0;
  for (const [t, weight] of GAUSS) {
    const [a, b, c] = [3 * (1 - t) * (1 - t), 6 * (1 - t) * t, 3 * t * t];
    const x = a * (first.x - from.x) + b * (second.x - first.x) + c * (to.x - second.x);
    const y = a * (first.y - from.y) + b * (second.y - first.y) + c * (to.y - second.y);
    sum += weight * Math.hypot(x, y);
  }
  return sum;
}

/** Lengths of all edges, near enough for how they grow: what the rule leaves out is the same before and after. */
function roughLengths(outline: Outline): ReadonlyMap<string, number> {
  let from = outline.start;
  return new Map(
    outline.edges.map(({ name, segments }) => {
      let long = 0;
      for (const segment of segments) {
        const { to } = segment;
        long +=
          segment.kind === 'line' ? Math.hypot(to.x - from.x, to.y - from.y) : curveLength(from, segment);
        from = to;
      }
      return [name, long] as const;
    }),
  );
}

/**
 * By how much each edge grows for a change of 1, to first order: read off the outline with the change made a little and
 * taken back a little.
 */
export function growth(one: Taking, change: Change, edges: readonly string[]): ReadonlyMap<string, number> {
  const lengths = (by: Length): ReadonlyMap<string, number> => {
    const amounts = changesOf(one).map((each): Amount => {
      const its = each.kind === change.kind && each.level === change.level;
      return { ...each, by: its ? by : nm(0) };
    });
    return roughLengths(altered(one.piece, one.role, one.levels, amounts, edges));
  };
  const [more, less] = [lengths(STEP), lengths(nm(-STEP))];
  const found = new Map<string, number>();
  for (const [edge, long] of more) {
    const by = (long - (less.get(edge) ?? 0)) / 2 / STEP;
    // What is less than a thousandth is the roundness of the figures.
    if (Math.abs(by) > 1e-3) found.set(edge, by);
  }
  return found;
}

/** Levels between which a length changes, told apart only where what is asked tells them apart. */
export function apart(
  part: Taking,
  asked: readonly { readonly from: Level; readonly to: Level }[],
): readonly (readonly Level[])[] {
  const classes = new Map<string, Level[]>();
  const wholes = asked.map(({ from, to }) => within(part.levels, from, to));
  for (const level of new Set(wholes.flat())) {
    const sign = wholes.map((whole) => (whole.includes(level) ? '1' : '0')).join('');
    classes.set(sign, [...(classes.get(sign) ?? []), level]);
  }
  return [...classes.values()];
}
