import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastWork } from '../../src/fitting/least-work.ts';
import type { Explanation, Puzzle } from '../../src/fitting/puzzle.ts';
import { puzzles, sum } from './puzzles.ts';

/** Pieces a, b, … that may each become up to 10 wider or narrower, at 10, 20, … minutes. */
function row(names: string, ...seen: readonly (readonly Explanation[])[]): Puzzle {
  return {
    pieces: [...names].map((piece) => ({
      piece,
      ways: [{ id: piece, bounds: new Map([[piece, { least: -10, most: 10 }]]) }],
    })),
    seen: seen.map((explanations, i) => ({ id: `s${i}`, explanations })),
    always: [],
    minutes: (ways) => ways.reduce((all, way) => all + 10 * (names.indexOf(way) + 1), 0),
  };
}

const because = (id: string, ...demands: readonly ReturnType<typeof sum>[]): Explanation => ({
  id,
  demands,
  minutes: 0,
});

describe('least work', () => {
  it('changes nothing where nothing is seen', () => {
    const none = { ways: [], causes: new Map(), changes: new Map(), minutes: 0 };
    expect(leastWork(row('ab'))).toEqual({ best: none, unmet: [] });
    expect(leastWork(row(''))).toEqual({ best: none, unmet: [] });
  });

  it('takes the cheapest piece that can do it, and another as the runner-up', () => {
    const { best, other, unmet } = leastWork(row('abc', [because('wide', sum({ b: 1, c: 1 }, 4, 6))]));
    expect(best).toEqual({
      ways: ['b'],
      causes: new Map([['s0', 'wide']]),
      changes: new Map([['b', 4]]),
      minutes: 20,
    });
    expect(other?.ways).toEqual(['c']);
    expect(unmet).toEqual([]);
  });

  it('takes two where one is not enough', () => {
    const { best } = leastWork(row('abc', [because('wide', sum({ a: 1, b: 1, c: 1 }, 14))]));
    expect(best?.ways).toEqual(['a', 'b']);
    expect([...(best?.changes.values() ?? [])].reduce((all, by) => all + by, 0)).toBeCloseTo(14, 9);
  });

  it('takes another cause, where it costs less with the rest', () => {
    const puzzle = row(
      'abc',
      [because('one', sum({ a: 1 }, 5)), because('two', sum({ c: 1 }, 5))],
      [because('three', sum({ c: 1 }, 4, 8))],
    );
    const { best } = leastWork(puzzle);
    expect(best?.ways).toEqual(['c']);
    expect(best?.causes).toEqual(
      new Map([
        ['s0', 'two'],
        ['s1', 'three'],
      ]),
    );
  });

  it('reckons what a cause adds', () => {
    const sewnIn = { id: 'sewn in', demands: [], minutes: 15 };
    expect(leastWork(row('ab', [because('a', sum({ a: 1 }, 5)), sewnIn])).best?.ways).toEqual(['a']);
    const dear = leastWork(row('ab', [because('b', sum({ b: 1 }, 5)), sewnIn]));
    expect([dear.best?.ways, dear.best?.minutes]).toEqual([[], 15]);
    expect(dear.other?.ways).toEqual(['b']);
  });

  it('prefers fewer pieces, then smaller changes, where minutes are the same', () => {
    const puzzle = row('abc', [
      because('together', sum({ a: 1, b: 1 }, 12)),
      because('alone', sum({ c: 2 }, 12)),
      because('more', sum({ c: 1 }, 9)),
    ]);
    const free = leastWork({ ...puzzle, minutes: () => 0 }).best;
    expect([free?.ways, free?.changes]).toEqual([['c'], new Map([['c', 6]])]);
  });

  it('holds what always holds, and changes more where that asks for it', () => {
    const puzzle = row('ab', [because('wide', sum({ a: 1 }, 5))]);
    const { best } = leastWork({ ...puzzle, always: [sum({ a: 1, b: -1 }, -2, 2)] });
    expect(best?.changes).toEqual(
      new Map([
        ['a', 5],
        ['b', 3],
      ]),
    );
  });

  it('leaves out what contradicts the rest, and as little as it can', () => {
    const wide = [because('wide', sum({ a: 1 }, 5))];
    const solved = leastWork(row('ab', wide, [because('narrow', sum({ a: 1 }, -5))], wide));
    expect(solved.unmet).toEqual([{ seen: 's1', why: 'together' }]);
    expect(solved.best?.changes).toEqual(new Map([['a', 5]]));
  });

  it.each([
    ['that nothing can change', because('x', sum({ nobody: 1 }, 5))],
    ['that goes too far', because('x', sum({ a: 1 }, 50))],
    ['that contradicts itself', because('x', sum({ a: 1 }, 5, 4))],
    ['that contradicts itself in two', because('x', sum({ a: 1 }, 5), sum({ a: 1 }, -5))],
  ])('says of something %s that it cannot be met by itself', (_, explanation) => {
    expect(leastWork(row('ab', [explanation]))).toEqual({ unmet: [{ seen: 's0', why: 'alone' }] });
    const both = leastWork(row('ab', [explanation], [because('wide', sum({ b: 1 }, 5))]));
    expect(both.unmet).toEqual([{ seen: 's0', why: 'alone' }]);
    expect(both.best?.ways).toEqual(['b']);
  });

  it('can do nothing where what always holds cannot', () => {
    const puzzle = row('a', [because('wide', sum({ a: 1 }, 5))]);
    for (const never of [sum({ a: 1 }, 3, 2), sum({ a: 1 }, 20), sum({ nobody: 1 }, 1)])
      expect(leastWork({ ...puzzle, always: [never] })).toEqual({ unmet: [{ seen: 's0', why: 'alone' }] });
  });

  it('has no limit where a way has none', () => {
    const puzzle = row('', [because('wide', sum({ a: 1 }, 700, Number.POSITIVE_INFINITY))]);
    const bounds = new Map([['a', { least: Number.NEGATIVE_INFINITY, most: Number.POSITIVE_INFINITY }]]);
    const { best } = leastWork({ ...puzzle, pieces: [{ piece: 'a', ways: [{ id: 'a', bounds }] }] });
    expect(best?.changes).toEqual(new Map([['a', 700]]));
  });

  it('does not show the same kind twice', () => {
    const puzzle = row('ab', [because('wide', sum({ a: 1, b: 1 }, 4))]);
    const alike = {
      ...puzzle,
      pieces: puzzle.pieces.map((one) => ({
        ...one,
        ways: one.ways.map((way) => ({ ...way, kind: 'same' })),
      })),
    };
    expect(leastWork(alike).other).toBeUndefined();
  });

  it('comes to the same each time, and never dearer where more ways are open', () => {
    fc.assert(
      fc.property(
        puzzles({ pieces: 6, ways: 2, unknowns: 2, seen: 4, explanations: 3, always: 2 }),
        (puzzle) => {
          const solved = leastWork(puzzle);
          expect(leastWork(puzzle)).toEqual(solved);
          const fewer = {
            ...puzzle,
            pieces: puzzle.pieces.map((one) => ({ ...one, ways: one.ways.slice(0, 1) })),
          };
          const less = leastWork(fewer);
          expect(solved.unmet.length).toBeLessThanOrEqual(less.unmet.length);
          if (solved.best && less.best && solved.unmet.length === less.unmet.length)
            expect(solved.best.minutes).toBeLessThanOrEqual(less.best.minutes + 1e-9);
          if (solved.best && solved.other)
            expect(solved.other.minutes).toBeGreaterThanOrEqual(solved.best.minutes - 1e-9);
        },
      ),
      { numRuns: 200, seed: 3 },
    );
  });
});
