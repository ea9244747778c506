import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { tucksInWidth } from '../../../src/reckon/tucks/tucks-in-width.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('tucks to fit a width', () => {
  test('nine in eight inches with an inch plain on both sides', () => {
    const given = reckoned(tucksInWidth, { margin: '1' });
    expect(figures(given)).toEqual({
      'How many': 9,
      'Spacing, finished': inches(3, 4),
      'Cloth to cut, without allowances': inches(25, 2),
      'Cloth that the tucks take': inches(9, 2),
      'Showing between tucks': inches(1, 2),
      'Fold to fold, flat': inches(5, 4),
    });
    // The last second stitching lies one margin before the far edge.
    expect(places(given).at(-1)).toBe(inches(23, 2));
  });

  test('sixteen of 2 mm over 28 cm when rounded up', () => {
    const entries = { width: '28 cm', margin: '2 cm', depth: '2', showing: '1.5 cm', round: 'up' };
    const found = figures(reckoned(tucksInWidth, entries, 'mm'));
    expect(found).toMatchObject({
      'How many': 16,
      'Spacing, finished': mm(16),
      'Cloth to cut, without allowances': mm(344),
    });
  });

  test.each([
    [{ width: '0' }, 'width'],
    [{ margin: '-1' }, 'margin'],
    [{ margin: '4' }, 'margin'],
    [{ depth: '0' }, 'depth'],
    [{ showing: '-1' }, 'showing'],
    [{ width: '3 1/4', depth: '1', showing: '0', round: 'up' }, 'round'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(tucksInWidth, entries)).toEqual([field]);
  });
});
