import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { parallelTucks } from '../../../src/reckon/tucks/parallel-tucks.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('parallel tucks', () => {
  test('five of a quarter, three quarters apart, an inch from the edge', () => {
    const given = reckoned(parallelTucks);
    expect(figures(given)).toEqual({
      'Cloth to cut, without allowances': inches(15, 2),
      'Cloth that the tucks take': inches(5, 2),
      'Finished width': inches(5),
      'Showing between tucks': inches(1, 2),
      'Fold to fold, flat': inches(5, 4),
    });
    // First stitching at 1 in, fold 1/4 in on, second stitching 1/4 in on; the next tuck 1 1/4 in further, flat.
    expect(places(given).slice(0, 4)).toEqual([inches(1), inches(5, 4), inches(3, 2), inches(9, 4)]);
    expect(places(given, 1)).toEqual([4, 7, 10, 13, 16].map((n) => inches(n, 4)));
    expect(given.strips[0]?.span).toBe(inches(15, 2));
    expect(given.sources).toHaveLength(2);
  });

  test('in millimetres, and blind tucks', () => {
    const given = reckoned(parallelTucks, {}, 'mm');
    expect(figures(given)).toMatchObject({
      'Cloth to cut, without allowances': mm(190),
      'Cloth that the tucks take': mm(60),
      'Finished width': mm(130),
      'Showing between tucks': mm(14),
    });
    const blind = figures(reckoned(parallelTucks, { depth: '20' }, 'mm'));
    expect(blind['Showing between tucks']).toMatch(/^nothing/);
    const alone = figures(reckoned(parallelTucks, { count: '1', after: '30' }, 'mm'));
    expect(Object.keys(alone)).toHaveLength(3);
    expect(alone['Finished width']).toBe(mm(55));
  });

  test('a shallow tuck brings advice, a field left empty says what was taken', () => {
    const given = reckoned(parallelTucks, { depth: '1/16' });
    expect(given.advice).toHaveLength(1);
    expect(given.assumed).toHaveLength(1);
    expect(reckoned(parallelTucks, { after: '2' }).assumed).toHaveLength(0);
  });

  test.each([
    [{ count: '0' }, 'count'],
    [{ count: '1001' }, 'count'],
    [{ depth: '0' }, 'depth'],
    [{ depth: '7/8' }, 'depth'],
    [{ spacing: '0' }, 'spacing'],
    [{ first: '-1' }, 'first'],
    [{ after: '-1' }, 'after'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(parallelTucks, entries)).toEqual([field]);
  });

  test('flat is finished and twice the depths, whatever is asked', () => {
    const sizes = fc.tuple(
      fc.integer({ min: 1, max: 40 }),
      fc.integer({ min: 1, max: 30 }),
      fc.integer({ min: 0, max: 30 }),
      fc.integer({ min: 0, max: 90 }),
    );
    fc.assert(
      fc.property(sizes, fc.constantFrom('away', 'toward'), ([count, depth, more, first], pressed) => {
        const entries = {
          count: String(count),
          depth: String(depth),
          spacing: String(depth + more),
          first: String(first),
          pressed,
        };
        const given = reckoned(parallelTucks, entries, 'mm');
        const found = figures(given);
        expect(Number(found['Cloth to cut, without allowances']) - Number(found['Finished width'])).toBe(
          mm(2 * depth * count),
        );
        const at = places(given);
        expect(at).toEqual([...at].sort((a, b) => a - b));
        expect(at.at(-1)).toBeLessThanOrEqual(given.strips[0]!.span);
      }),
      { numRuns: 40 },
    );
  });
});
