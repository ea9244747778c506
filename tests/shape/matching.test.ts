import { describe, expect, test } from 'vitest';
import { mm, zero } from '../../src/length/index.ts';
import type { Outline } from '../../src/shape/index.ts';
import { matchSeams, pairedMarks } from '../../src/shape/matching.ts';
import { at } from './shapes.ts';

/** A strip whose upper edge is in parts of these lengths, a, b, c. */
const strip = (...parts: number[]): Outline => {
  let x = 0;
  const edges = parts.map((part, i) => {
    x += part;
    return { name: 'abc'[i]!, segments: [{ kind: 'line' as const, to: at(x, 0) }] };
  });
  return {
    start: at(0, 0),
    edges: [
      ...edges,
      { name: 'rest', segments: [at(x, 9), at(0, 9), at(0, 0)].map((to) => ({ kind: 'line' as const, to })) },
    ],
  };
};
const links = (outline: Outline, names: string) => [...names].map((edge) => ({ outline, edge }));

describe('matching seams', () => {
  test('runs of the same length whose parts meet', () => {
    const found = matchSeams(links(strip(100, 200), 'ab'), links(strip(100.3, 199.7), 'ab'));
    expect(found).toMatchObject({ first: mm(300), second: mm(300), difference: 0, matches: true });
    expect(found.ends).toEqual([{ first: mm(100), second: mm(100.3), apart: mm(0.3) }]);
  });

  test('parts that do not meet are told, in the order along the seam', () => {
    const found = matchSeams(links(strip(100, 100, 100), 'abc'), links(strip(101, 199), 'ab'));
    expect(found.matches).toBe(true);
    expect(found.ends).toEqual([
      { first: mm(100), second: undefined, apart: zero },
      { first: undefined, second: mm(101), apart: zero },
      { first: mm(200), second: undefined, apart: zero },
    ]);
  });

  test('half a millimetre matches, more does not unless allowed', () => {
    const [a, b] = [links(strip(100), 'a'), links(strip(100.5), 'a')];
    expect(matchSeams(a, b)).toMatchObject({ difference: mm(-0.5), matches: true });
    const c = links(strip(100.6), 'a');
    expect(matchSeams(a, c).matches).toBe(false);
    expect(matchSeams(a, c, mm(1)).matches).toBe(true);
  });

  test('an edge that is not there is named, and nothing matches then', () => {
    const found = matchSeams(links(strip(100), 'az'), links(strip(100), 'a'));
    expect(found).toMatchObject({ missing: ['z'], matches: false });
    expect(matchSeams([], [])).toMatchObject({ first: 0, second: 0, ends: [] });
  });

  test('paired marks spread the difference evenly', () => {
    const found = matchSeams(links(strip(400), 'a'), links(strip(408), 'a'));
    expect(pairedMarks(found, 4)).toEqual(
      [100, 200, 300].map((n) => ({ first: mm(n), second: mm(n * 1.02) })),
    );
    expect(pairedMarks(found, 1)).toEqual([]);
  });
});
