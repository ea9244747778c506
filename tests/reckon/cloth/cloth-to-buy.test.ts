import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { clothToBuy } from '../../../src/reckon/cloth/cloth-to-buy.ts';
import type { Reckoned } from '../../../src/reckon/reckoning.ts';
import { boundingBox } from '../../../src/shape/index.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

const bare = { laid: 'single', gap: '0', selvage: '0', step: '1' };

/** Boxes of the pieces as they are drawn, in millimetres. */
const boxes = (made: Reckoned) =>
  made.drawing.drawn.flatMap((one) => {
    if (one.kind !== 'path' || one.stroke !== 'cut') return [];
    const { left, top, right, bottom } = boundingBox(one.points);
    return [{ left: toMm(left), top: toMm(top), right: toMm(right), bottom: toMm(bottom) }];
  });

describe('cloth to buy', () => {
  test('two beside each other take the length of one', () => {
    const made = worked(clothToBuy, { ...bare, width: '1000', pieces: '2 x 500 x 700' });
    expect(figure(made, 'Length to buy')).toBe(700);
    expect(figure(made, 'By the metre')).toBe('0.70 m');
    expect(figure(made, 'Cloth that is used')).toBe('100 %');
    expect(figure(made, 'Pieces')).toBe(2);
  });

  test('in inches, by the yard', () => {
    const made = worked(
      clothToBuy,
      { ...bare, width: '36', step: '4 1/2', pieces: '2 x 18 x 40 front' },
      'in',
    );
    expect(figure(made, 'Length that the pieces take')).toBeCloseTo(40 * 25.4, 6);
    expect(figure(made, 'By the yard')).toBe('1 1/8 yd');
  });

  test('doubled, a folded piece lies with its half at the fold', () => {
    const made = worked(clothToBuy, {
      ...bare,
      laid: 'doubled',
      width: '1000',
      pieces: '1 x 800 x 600 back, fold',
    });
    expect(boxes(made)).toEqual([{ left: 0, top: 0, right: 400, bottom: 600 }]);
    expect(made.drawing.drawn.some((one) => one.kind === 'path' && one.stroke === 'fold')).toBe(true);
  });

  test('what shrinks is bought longer', () => {
    const made = worked(clothToBuy, { ...bare, width: '1000', pieces: '1 x 500 x 950', shrinks: '5' });
    expect(figure(made, 'Before it shrinks')).toBeCloseTo(1000, 6);
  });

  test('crosswise only where it may lie so, and on the bias at 45 degrees', () => {
    const long = { ...bare, width: '1000', pieces: '1 x 1200 x 300' };
    expect(faultsAt(clothToBuy, long)).toEqual(['width']);
    expect(figure(worked(clothToBuy, { ...long, grain: 'any' }), 'Length to buy')).toBe(1200);
    const bias = worked(clothToBuy, { ...bare, width: '1000', pieces: '1 x 100 x 100 bias' });
    expect(figure(bias, 'Length that the pieces take')).toBeCloseTo(100 * Math.SQRT2, 3);
  });

  test('a refused piece is named with its line', () => {
    const made = clothToBuy.reckon({ pieces: '1 x 10 x 10\n1 x 3000 x 100 sash' }, 'mm');
    expect(made.ok ? '' : made.error[0]?.say).toContain('“sash” in line 2');
  });

  test('pieces are numbered by their lines, and none lies on another', () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.integer({ min: 1, max: 3 }),
            fc.integer({ min: 40, max: 600 }),
            fc.integer({ min: 40, max: 600 }),
          ),
          {
            minLength: 1,
            maxLength: 6,
          },
        ),
        fc.constantFrom('single', 'doubled'),
        fc.constantFrom('yes', 'no'),
        (lines, laid, nap) => {
          const pieces = lines.map((line) => line.join(' x ')).join('\n');
          const made = worked(clothToBuy, { pieces, laid, nap });
          const lying = boxes(made);
          const area = lines.reduce((sum, [n, a, b]) => sum + n * a * b, 0);
          expect(figure(made, 'Length that the pieces take')).toBeGreaterThanOrEqual(area / 1400);
          for (const [i, a] of lying.entries()) {
            for (const b of lying.slice(0, i)) {
              const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
              expect(apart).toBe(true);
            }
          }
        },
      ),
      { numRuns: 8 },
    );
  });

  test.each([
    [{ width: '0' }, 'width'],
    [{ width: '12 m' }, 'width'],
    [{ width: '15', pieces: '1 x 10 x 10' }, 'width'],
    [{ pieces: '' }, 'pieces'],
    [{ pieces: '61 x 10 x 10' }, 'pieces'],
    [{ pieces: '1 x 10' }, 'pieces'],
    [{ nap: 'yes', grain: 'any' }, 'grain'],
    [{ shrinks: '-1' }, 'shrinks'],
    [{ shrinks: '50' }, 'shrinks'],
    [{ step: '0' }, 'step'],
    [{ gap: '-1' }, 'gap'],
    [{ selvage: '-1' }, 'selvage'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(faultsAt(clothToBuy, entries)).toEqual([field]);
  });
});
