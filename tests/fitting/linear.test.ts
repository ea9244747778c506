import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastChange, type Span, type Sum } from '../../src/fitting/linear.ts';

const free: Span = { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY };
const sum = (terms: Sum['terms'], least: number, most = least): Sum => ({ terms, least, most });

describe('least change', () => {
  it('changes nothing where nothing is asked', () => {
    expect(leastChange([], [])).toEqual({ meets: true, values: [], total: 0 });
    expect(leastChange([free, { least: -2, most: 5 }], [])).toEqual({
      meets: true,
      values: [0, 0],
      total: 0,
    });
  });

  it('starts from the value nearest to nought that is allowed', () => {
    const found = leastChange(
      [
        { least: 3, most: 9 },
        { least: -9, most: -4 },
        { least: 2, most: 2 },
      ],
      [],
    );
    expect(found).toEqual({ meets: true, values: [3, -4, 2], total: 9 });
  });

  it('takes the value that gives most for its change, and the next where that is not enough', () => {
    const found = leastChange(
      [{ least: 0, most: 2 }, free],
      [
        sum(
          [
            [0, 3],
            [1, 1],
          ],
          8,
          9,
        ),
      ],
    );
    expect(found).toEqual({ meets: true, values: [2, 2], total: 4 });
  });

  it('has no limit where there is none', () => {
    const found = leastChange(
      [free, free],
      [
        sum(
          [
            [0, 1],
            [1, -1],
          ],
          1000,
        ),
        sum([[1, 1]], -1e5, Number.POSITIVE_INFINITY),
      ],
    );
    expect(found.meets && found.total).toBeCloseTo(1000, 6);
  });

  it.each([
    ['a span that is too short', [{ least: -1, most: 4 }], [sum([[0, 1]], 5, 6)]],
    [
      'two sums against each other',
      [free, free],
      [
        sum(
          [
            [0, 1],
            [1, 1],
          ],
          5,
        ),
        sum(
          [
            [0, 2],
            [1, 2],
          ],
          3,
        ),
      ],
    ],
    ['a sum of nothing', [free], [sum([], 1, 2)]],
    ['more asked at least than at most', [free], [sum([[0, 1]], 2, 1)]],
  ] as const)('cannot meet %s', (_, spans, sums) => {
    expect(leastChange(spans, sums).meets).toBe(false);
  });

  const spans = fc.array(
    fc
      .tuple(fc.integer({ min: -6, max: 2 }), fc.integer({ min: 0, max: 8 }))
      .map(([least, more]) => ({ least, most: least + more })),
    { minLength: 1, maxLength: 5 },
  );
  const sums = (count: number) =>
    fc.array(
      fc
        .tuple(
          fc.uniqueArray(fc.tuple(fc.nat({ max: count - 1 }), fc.constantFrom(-2, -1, 0.5, 1, 1)), {
            minLength: 1,
            selector: ([at]) => at,
          }),
          fc.integer({ min: -9, max: 9 }),
          fc.nat({ max: 4 }),
        )
        .map(([terms, least, more]) => sum(terms, least, least + more)),
      { maxLength: 6 },
    );
  const asked = spans.chain((all) => sums(all.length).map((some) => [all, some] as const));

  it('keeps every span and every sum, or shows by its weights that none can', () => {
    const counts = { met: 0, not: 0 };
    fc.assert(
      fc.property(asked, ([all, some]) => {
        const found = leastChange(all, some);
        if (found.meets) {
          counts.met += 1;
          for (const [i, { least, most }] of all.entries()) {
            expect(found.values[i]).toBeGreaterThanOrEqual(least - 1e-6);
            expect(found.values[i]).toBeLessThanOrEqual(most + 1e-6);
          }
          for (const { terms, least, most } of some) {
            const comes = terms.reduce((total, [at, factor]) => total + factor * (found.values[at] ?? 0), 0);
            expect(comes).toBeGreaterThanOrEqual(least - 1e-6);
            expect(comes).toBeLessThanOrEqual(most + 1e-6);
          }
          return;
        }
        counts.not += 1;
        // All sums so weighted ask for more than the spans can give.
        const need = some.reduce((total, one, i) => {
          const weight = found.weights[i] ?? 0;
          return total + (weight === 0 ? 0 : weight * (weight > 0 ? one.least : one.most));
        }, 0);
        const gives = all.reduce((total, { least, most }, at) => {
          const factor = some.reduce(
            (f, { terms }, i) => f + (found.weights[i] ?? 0) * (terms.find(([one]) => one === at)?.[1] ?? 0),
            0,
          );
          return total + Math.max(factor * least, factor * most);
        }, 0);
        expect(gives).toBeLessThan(need);
      }),
      { numRuns: 2000, seed: 11 },
    );
    expect(Math.min(counts.met, counts.not)).toBeGreaterThan(200);
  });
});
