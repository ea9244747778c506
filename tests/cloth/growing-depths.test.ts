import { describe, expect, test } from 'vitest';
import { growingDepths } from '../../src/cloth/growing-depths.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('tucks that grow', () => {
  test('by the same step each, either way, each reckoned from the first', () => {
    expect(made(growingDepths(inches(1, 8), inches(5, 8), 5))).toEqual(
      [1, 2, 3, 4, 5].map((n) => inches(n, 8)),
    );
    expect(made(growingDepths(mm(9), mm(3), 3))).toEqual([mm(9), mm(6), mm(3)]);
    const thirds = made(growingDepths(mm(1), mm(2), 4));
    expect(thirds).toEqual([mm(1), mm(4 / 3), mm(5 / 3), mm(2)]);
  });

  test.each([
    [mm(1), mm(2), 1, 'count'],
    [mm(1), mm(2), 2.5, 'count'],
    [mm(1), mm(2), 1001, 'count'],
    [zero, mm(2), 3, 'firstDepth'],
    [mm(1), mm(-2), 3, 'lastDepth'],
  ])('refuses %s to %s in %s', (first, last, count, field) => {
    expect(growingDepths(first, last, count)).toMatchObject({ ok: false, error: { field } });
  });
});
