import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type BiasLay, biasLengths, biasLinesFrom, biasStarts } from '../../src/cloth/bias-start.ts';
import { biasStrips } from '../../src/cloth/bias-strips.ts';
import { mm } from '../../src/length/index.ts';
import { made } from './good.ts';

const lay = fc
  .record({
    across: fc.integer({ min: 150, max: 900 }),
    along: fc.integer({ min: 150, max: 900 }),
    strip: fc.integer({ min: 10, max: 90 }),
    shortest: fc.integer({ min: 40, max: 200 }),
  })
  .map(({ across, along, strip, shortest }): BiasLay => {
    const wide = mm(strip);
    return {
      across: mm(across),
      along: mm(along),
      strip: wide,
      step: wide * Math.SQRT2,
      shortest: mm(shortest),
    };
  });

const total = (start: number, on: BiasLay, join: number): number =>
  biasLinesFrom(start, on).reduce(
    (sum, near, i) => sum + biasLengths(near, on).middle - (i > 0 ? 2 * Math.SQRT2 * join : 0),
    0,
  );

test('no other beginning gives a longer strip', () => {
  fc.assert(
    fc.property(
      lay,
      fc.integer({ min: 0, max: 12 }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (on, j, part) => {
        const join = mm(j);
        const best = Math.max(...biasStarts(on).map((start) => total(start, on, join)));
        const first = on.shortest / Math.SQRT2;
        for (let i = 0; i < 40; i++) {
          expect(total(first + ((i + part) / 40) * on.step, on, join)).toBeLessThanOrEqual(best + 1000);
        }
      },
    ),
    { numRuns: 300 },
  );
});

test('lines that meet a corner of the cloth beat lines laid from the shortest piece', () => {
  const cloth = { across: mm(300), along: mm(300), strip: mm(50), join: mm(6), shortest: mm(76) };
  const on: BiasLay = { ...cloth, step: cloth.strip * Math.SQRT2 };
  const fromCorner = total(cloth.shortest / Math.SQRT2, on, cloth.join);
  expect(made(biasStrips(cloth)).total).toBeGreaterThan(fromCorner + mm(90));
});
