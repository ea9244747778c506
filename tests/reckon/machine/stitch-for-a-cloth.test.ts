import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { stitchForACloth } from '../../../src/reckon/machine/stitch-for-a-cloth.ts';
import { figure, worked } from '../legs/reckoned.ts';

test.each(['in', 'mm'] as const)('a plain seam in a woven cloth: %s', (unit) => {
  const made = worked(stitchForACloth, {}, unit);
  expect(figure(made, 'Stitch')).toBe('Lockstitch, type 301 of ISO 4915');
  expect(figure(made, 'Stitches to an inch')).toBe(12);
  expect(figure(made, 'Length of a stitch')).toBe('2.1 mm');
  expect(figure(made, 'Needle')).toBe('80/12, round point');
});

test('a zigzag where the other cloth stretches, with a ball point', () => {
  const made = worked(stitchForACloth, { weight: 'light', otherWeight: 'heavy', otherMake: 'knit' });
  expect(figure(made, 'Stitch')).toContain('type 304');
  expect(figure(made, 'Width')).toBe('0.5 mm');
  expect(figure(made, 'Needle')).toBe('90/14, ball point');
  expect(figure(made, 'When the cloth is stretched')).toBe('the stitch gives');
});

test('a knit that hardly stretches takes a ball point and a plain stitch', () => {
  const made = worked(stitchForACloth, { make: 'firm' });
  expect(figure(made, 'Stitch')).toContain('type 301');
  expect(figure(made, 'Needle')).toContain('ball');
});

test('an overlocker neatens, and it is said that its width is only drawn', () => {
  const made = worked(stitchForACloth, { purpose: 'neaten', overlocker: 'yes' });
  expect(figure(made, 'Width')).toBe('as the machine sets it');
  expect(made.assumed.join(' ')).toContain('Drawn 5 mm wide');
});

test('the row is drawn as long and as wide as it is reckoned, on paper and on the screen', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('seam', 'baste', 'reinforce', 'neaten'),
      fc.constantFrom('woven', 'giving', 'knit', 'firm'),
      (purpose, make) => {
        const made = worked(stitchForACloth, { purpose, make });
        const long = 25.4 / (figure(made, 'Stitches to an inch') as number);
        for (const { drawn } of [made.drawing, ...made.sheets]) {
          const holes = drawn.flatMap((one) => {
            if (one.kind !== 'path' || one.stroke !== 'thin' || one.points.length < 8) return [];
            const xs = one.points.map(({ x }) => toMm(x));
            return [(Math.min(...xs) + Math.max(...xs)) / 2];
          });
          expect(holes.length).toBeGreaterThan(9);
          for (const [i, x] of holes.entries()) if (i > 0) expect(x - holes[i - 1]!).toBeCloseTo(long, 1);
        }
        expect(made.advice[0]?.say).toContain('sample');
      },
    ),
    { numRuns: 16 },
  );
});
