import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { circleFrill } from '../../src/cloth/circles.ts';
import { gathers } from '../../src/cloth/gathers.ts';
import { inches, mm, nm, subtract, times, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const ruffle = { place: inches(40), clothWidth: inches(45), join: inches(1, 2), allowance: inches(5, 8) };

describe('a gathered strip', () => {
  test('two and a half times its place, in as few strips as the cloth allows', () => {
    const result = made(gathers(ruffle));
    expect(result).toMatchObject({ strip: inches(100), strips: 3, joins: 2 });
    expect(result.cutLength).toBe(nm(inches(100) / 3 + inches(1)));
    expect(result.marks.map((m) => m.strip / inches(1))).toEqual([0, 25, 50, 75, 100]);
    expect(result.marks[1]?.place).toBe(inches(10));
    expect(result.rows).toEqual([inches(1, 8), inches(3, 8)]);
    expect(result.assumed).toContain('Fullness 2 1/2.');
  });

  test('a ring has as many joins as strips, and eighths where wanted', () => {
    const result = made(gathers({ ...ruffle, ring: true, parts: 8 }));
    expect(result).toMatchObject({ joins: 3 });
    expect(result.joinsAt[0]).toBe(0);
    expect(result.marks).toHaveLength(9);
  });

  test.each([
    [1.2, 1],
    [1.25, 0],
    [3, 0],
    [3.1, 1],
  ])('fullness of %s gives %s pieces of advice', (fullness, count) => {
    expect(made(gathers({ ...ruffle, fullness })).advice).toHaveLength(count);
  });

  test.each([
    [{ place: zero }, 'place'],
    [{ place: mm(1_000_000), clothWidth: inches(3) }, 'place'],
    [{ fullness: 0.9 }, 'fullness'],
    [{ fullness: Number.NaN }, 'fullness'],
    [{ clothWidth: inches(1) }, 'clothWidth'],
    [{ join: mm(-1) }, 'join'],
    [{ allowance: inches(1, 4) }, 'allowance'],
  ])('refuses %j', (change, field) => {
    expect(gathers({ ...ruffle, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('the strips give the length and fit the cloth, and one fewer would not', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.integer({ min: 100, max: 300 }),
        fc.integer({ min: 300, max: 1600 }),
        fc.integer({ min: 0, max: 25 }),
        (place, percent, width, join) => {
          const input = {
            ...ruffle,
            place: mm(place),
            fullness: percent / 100,
            clothWidth: mm(width),
            join: mm(join),
          };
          const { strip, strips, cutLength } = made(gathers(input));
          const clear = subtract(cutLength, times(mm(join), 2));
          expect(Math.abs(clear * strips - strip)).toBeLessThanOrEqual(strips);
          expect(cutLength).toBeLessThanOrEqual(mm(width) + 1);
          if (strips > 1) expect((strips - 1) * (mm(width) - 2 * mm(join))).toBeLessThan(strip);
        },
      ),
    );
  });
});

describe('a circular frill', () => {
  const cuff = { seam: mm(240), depth: mm(60), circles: 1, allowance: mm(10), hem: mm(6) };

  test('one circle round a cuff', () => {
    const result = made(circleFrill(cuff));
    expect(toMm(result.radius)).toBeCloseTo(240 / (2 * Math.PI), 5);
    expect(result.cutInside).toBe(subtract(result.radius, mm(10)));
    expect(result.square).toBe(times(result.cutOutside, 2));
    expect(result.rings).toBe(1);
  });

  test('the slits of the rings are paid for by a larger ring', () => {
    const result = made(circleFrill({ ...cuff, circles: 2, slit: mm(5) }));
    expect(toMm(result.radius)).toBeCloseTo((240 + 20) / (4 * Math.PI), 5);
    expect(result.assumed).toEqual([]);
  });

  test.each([
    [{ seam: zero }, 'seam'],
    [{ depth: zero }, 'depth'],
    [{ circles: 0 }, 'circles'],
    [{ circles: 5 }, 'circles'],
    [{ circles: 1e-6 }, 'circles'],
    [{ allowance: mm(-1) }, 'allowance'],
  ])('refuses %j', (change, field) => {
    expect(circleFrill({ ...cuff, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
