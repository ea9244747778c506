import fc from 'fast-check';
import type { Demand, Puzzle } from '../../src/fitting/puzzle.ts';

/** A sum of unknowns, each written as a factor and a name, between two bounds. */
export const sum = (terms: Readonly<Record<string, number>>, least: number, most = least): Demand => ({
  terms: Object.entries(terms).map(([unknown, factor]) => ({ unknown, factor })),
  least,
  most,
});

/** Minutes that add up, less something saved where two neighbours are opened together; it must be at most half of any. */
export const sharing =
  (own: ReadonlyMap<string, number>, shared: number) =>
  (ways: readonly string[]): number => {
    const pieces = new Set(ways.map((way) => way.split('/')[0] ?? ''));
    let minutes = 0;
    for (const way of ways) minutes += own.get(way) ?? 0;
    let saved = 0;
    for (const piece of pieces) if (pieces.has(`p${Number(piece.slice(1)) + 1}`)) saved += shared;
    return minutes - saved;
  };

const step = fc.integer({ min: -8, max: 8 });
const factor = fc.constantFrom(-1, 1, 1, 1, 0.5, 2);

export interface Sizes {
  readonly pieces: number;
  readonly ways: number;
  readonly unknowns: number;
  readonly seen: number;
  readonly explanations: number;
  readonly always: number;
}

/** Puzzles of any kind: some can be met, some cannot, some are met as they are. */
export function puzzles(sizes: Sizes): fc.Arbitrary<Puzzle> {
  const names = Array.from({ length: sizes.pieces }, (_, p) =>
    Array.from({ length: sizes.unknowns }, (_, u) => `p${p}:${u}`),
  );
  const demand = fc
    .tuple(
      fc.uniqueArray(fc.tuple(fc.constantFrom(...names.flat()), factor), {
        minLength: 1,
        maxLength: 3,
        selector: ([name]) => name,
      }),
      step,
      fc.constantFrom(0, 0, 1, 3, Number.POSITIVE_INFINITY),
    )
    .map(
      ([terms, least, more]): Demand => ({
        terms: terms.map(([unknown, by]) => ({ unknown, factor: by })),
        least,
        most: least + more,
      }),
    );
  /** Couplings hold where nothing changes, as those of seams do. */
  const coupling = fc
    .tuple(demand, fc.constantFrom(0, 1))
    .map(([{ terms }, much]): Demand => ({ terms, least: -much, most: much }));
  const span = fc
    .tuple(fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 10 }), fc.boolean())
    .map(([less, more, free]) => ({ least: -less, most: free ? Number.POSITIVE_INFINITY : more }));
  const pieces = fc.tuple(
    ...names.map((unknowns, p) =>
      fc
        .array(fc.array(span, { minLength: unknowns.length, maxLength: unknowns.length }), {
          minLength: 0,
          maxLength: sizes.ways,
        })
        .map((ways) => ({
          piece: `p${p}`,
          ways: ways.map((spans, w) => ({
            id: `p${p}/${w}`,
            bounds: new Map(
              spans.flatMap((one, u) => (unknowns[u] === undefined ? [] : [[unknowns[u], one] as const])),
            ),
          })),
        })),
    ),
  );
  const seen = fc
    .array(
      fc.array(fc.tuple(fc.array(demand, { maxLength: 2 }), fc.constantFrom(0, 0, 0, 15)), {
        minLength: 1,
        maxLength: sizes.explanations,
      }),
      { maxLength: sizes.seen },
    )
    .map((all) =>
      all.map((explanations, s) => ({
        id: `s${s}`,
        explanations: explanations.map(([demands, minutes], e) => ({ id: `c${e}`, demands, minutes })),
      })),
    );
  const count = sizes.pieces * sizes.ways;
  const costs = fc.array(fc.integer({ min: 8, max: 30 }), { minLength: count, maxLength: count });
  return fc
    .record({
      pieces,
      seen,
      always: fc.array(coupling, { maxLength: sizes.always }),
      costs,
      saved: fc.integer({ min: 0, max: 4 }),
    })
    .map(({ pieces: all, seen: things, always, costs: own, saved }) => {
      const ids = all.flatMap(({ ways }) => ways.map(({ id }) => id));
      const prices = new Map(ids.map((id, i) => [id, own[i] ?? 1]));
      const surely = new Map(ids.map((id) => [id, (prices.get(id) ?? 0) - 2 * saved]));
      return { pieces: all, seen: things, always, minutes: sharing(prices, saved), surely };
    });
}
