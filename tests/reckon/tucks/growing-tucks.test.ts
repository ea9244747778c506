import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { growingTucks } from '../../../src/reckon/tucks/growing-tucks.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('tucks that grow', () => {
  test('from an eighth to five eighths in five, an inch apart', () => {
    const given = reckoned(growingTucks);
    expect(figures(given)).toEqual({
      'Cloth to cut, without allowances': inches(39, 4),
      'Cloth that the tucks take': inches(15, 4),
      'Finished width': inches(6),
      'Each deeper by': inches(1, 8),
      'Most that shows between': inches(7, 8),
      'Least that shows between': inches(1, 2),
    });
    // Depths 1/8, 2/8: stitching 1, fold 1 1/8, stitching 1 1/4; then 2 1/4, 2 1/2, 2 3/4.
    expect(places(given).slice(0, 6)).toEqual([8, 9, 10, 18, 20, 22].map((n) => inches(n, 8)));
  });

  test('shrinking, in millimetres', () => {
    const found = figures(
      reckoned(growingTucks, { firstDepth: '16', lastDepth: '4', pressed: 'toward' }, 'mm'),
    );
    expect(found['Each shallower by']).toBe(mm(3));
    expect(found['Cloth that the tucks take']).toBe(mm(100));
  });

  test.each([
    [{ count: '1' }, 'count'],
    [{ count: '2000' }, 'count'],
    [{ firstDepth: '0' }, 'firstDepth'],
    [{ lastDepth: '0' }, 'lastDepth'],
    [{ lastDepth: '3' }, 'lastDepth'],
    [{ spacing: '0' }, 'spacing'],
    [{ first: '-1' }, 'first'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(growingTucks, entries)).toEqual([field]);
  });
});
