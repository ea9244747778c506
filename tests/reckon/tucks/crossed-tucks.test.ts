import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { crossedTucks } from '../../../src/reckon/tucks/crossed-tucks.ts';
import { figures, places, reckoned, refusedAt } from '../reckoned.ts';

describe('crossed tucks', () => {
  test('square, an inch apart on eight by ten inches', () => {
    const given = reckoned(crossedTucks);
    expect(figures(given)).toMatchObject({
      'Down the panel, sewn first': 8,
      'Across them, sewn second': 10,
      'Cloth to cut, width': inches(10),
      'Cloth to cut, height': inches(25, 2),
      'Showing between tucks': inches(7, 8),
    });
    // 8 - (7 + 1/8) = 7/8 left, half of it before the first stitching; the next 1 1/4 in further, flat.
    expect(
      places(given, 0)
        .filter((_, i) => i % 3 === 0)
        .slice(0, 2),
    ).toEqual([inches(7, 16), inches(27, 16)]);
    expect(given.advice).toHaveLength(0);
    expect(reckoned(crossedTucks, { depth: '1/16' }).advice).toHaveLength(1);
    expect(given.strips.map(({ from }) => from)).toEqual(['the left edge', 'the top edge']);
    expect(given.sheets[0]?.drawn.some((d) => d.kind === 'path' && d.stroke === 'grain')).toBe(true);
  });

  test('aslant, the cloth is larger both ways and the second are marked after pressing', () => {
    const given = reckoned(crossedTucks, { angle: '60' }, 'mm');
    const found = figures(given);
    expect(Number(found['Cloth to cut, height'])).toBeGreaterThan(mm(250));
    expect(given.strips[1]?.name).toContain('after');
    expect(given.assumed.join(' ')).toContain('cut out after tucking');
    expect(places(given, 1).at(-1)).toBeLessThan(given.strips[1]!.span);
  });

  test.each([
    [{ width: '0' }, 'width'],
    [{ height: '0' }, 'height'],
    [{ depth: '0' }, 'depth'],
    [{ depth: '2' }, 'depth'],
    [{ spacing: '0' }, 'spacing'],
    [{ spacing: '1/32', depth: '1/32' }, 'spacing'],
    [{ angle: '20' }, 'angle'],
    [{ angle: '100' }, 'angle'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(crossedTucks, entries)).toEqual([field]);
  });
});
