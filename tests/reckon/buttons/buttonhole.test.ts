import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { buttonhole } from '../../../src/reckon/buttons/buttonhole.ts';
import { figures, reckoned, refusedAt } from '../reckoned.ts';

const length = (entries: Record<string, string>, unit: 'in' | 'mm' = 'in') =>
  figures(reckoned(buttonhole, entries, unit))['Length of the hole'];

describe('the length of a buttonhole', () => {
  test('each rule for a button of half an inch, an eighth thick', () => {
    expect(length({})).toBe(inches(5, 8));
    expect(length({ rule: 'bulky' })).toBe(inches(3, 4));
    expect(length({ rule: 'tape', round: '1 1/4' })).toBe(inches(3, 4));
    expect(length({ rule: 'ball' })).toBe(inches(5, 8));
    expect(length({ rule: 'older' })).toBe(inches(9, 16));
    expect(length({ rule: 'linen' })).toBe(inches(1, 2));
    expect(length({ rule: 'bound' })).toBe(inches(5, 8));
    expect(length({}, 'mm')).toBe(mm(15));
  });

  test('says the lap, the size in lines, and whose rule it is', () => {
    const given = reckoned(buttonhole);
    expect(figures(given)).toMatchObject({
      'Cloth beyond centre front, least': inches(1, 2),
      'Cloth beyond centre front, most': inches(3, 4),
      'Button size': 20,
    });
    const sources = new Set(
      ['flat', 'ball', 'older', 'linen', 'bound'].map((rule) =>
        JSON.stringify(reckoned(buttonhole, { rule }).sources[0]),
      ),
    );
    expect(sources.size).toBe(5);
  });

  test('the slit on the sheet is as long as it says', () => {
    const given = reckoned(buttonhole, { rule: 'bulky' });
    const cuts = given.sheets[0]?.drawn.flatMap((d) => (d.kind === 'path' && d.stroke === 'cut' ? [d] : []));
    expect(cuts).toHaveLength(1);
    const [from, to] = cuts?.[0]?.points ?? [];
    expect(to!.x - from!.x).toBe(inches(3, 4));
  });

  test.each([
    [{ diameter: '0' }, 'diameter'],
    [{ thickness: '-1' }, 'thickness'],
    [{ thickness: '2' }, 'thickness'],
    [{ rule: 'tape' }, 'round'],
    [{ rule: 'tape', round: '0' }, 'round'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(buttonhole, entries)).toEqual([field]);
  });
});
