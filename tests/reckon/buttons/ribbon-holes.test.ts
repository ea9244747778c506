import { describe, expect, test } from 'vitest';
import { add, inches, mm } from '../../../src/length/length.ts';
import { ribbonHoles } from '../../../src/reckon/buttons/ribbon-holes.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('ribbon holes round a tube', () => {
  test('eight an inch apart round eight inches, the seam midway between two', () => {
    const given = reckoned(ribbonHoles, { round: '8' });
    expect(figures(given)).toEqual({
      'Holes in a row': 8,
      'From hole to hole': inches(1),
      'Length of a hole': add(inches(3, 8), mm(2)),
      'First hole, from the seam': inches(1, 2),
      'Ribbon for a row': inches(28),
      'Ties, from the seam': inches(4),
      'Over the seam': 'the ribbon lies outside',
    });
    expect(places(given)).toEqual([1, 3, 5, 7, 9, 11, 13, 15].map((n) => inches(n, 2)));
  });

  test('the ribbon shows where it is tied, and not over the seam where it lies inside', () => {
    for (const [round, shows] of [
      ['200', 8 / 2 - 1],
      ['250', 10 / 2],
    ] as const) {
      const given = reckoned(ribbonHoles, { round }, 'mm');
      const tie = Number(figures(given)['Ties, from the seam']);
      const ribbon = given.drawing.drawn.flatMap((d) =>
        d.kind === 'path' && d.stroke === 'thin' ? [d] : [],
      );
      expect(ribbon).toHaveLength(shows);
      const over = ribbon.filter(({ points }) => {
        const xs = points.map((p) => p.x);
        return Math.min(...xs) < tie && tie < Math.max(...xs);
      });
      expect(over).toHaveLength(1);
    }
  });

  test('further rows lie as far apart as the first from the edge', () => {
    const given = reckoned(ribbonHoles, { rows: '3', level: '30' }, 'mm');
    expect(places(given, 1)).toEqual([24, 36, 54, 66, 84, 96].map((x) => mm(x)));
  });

  test.each([
    [{ round: '0' }, 'round'],
    [{ apart: '0' }, 'apart'],
    [{ apart: '1/8', free: '0', rows: '50' }, 'apart'],
    [{ ribbon: '0' }, 'ribbon'],
    [{ rows: '0' }, 'rows'],
    [{ rows: '51' }, 'rows'],
    [{ level: '0' }, 'level'],
    [{ level: '1/8' }, 'level'],
    [{ free: '-1' }, 'free'],
    [{ free: '8' }, 'free'],
    [{ tie: '-1' }, 'tie'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(ribbonHoles, entries)).toEqual([field]);
  });
});
