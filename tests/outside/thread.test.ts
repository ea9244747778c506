import { describe, expect, test } from 'vitest';
import type { StitchType } from '../../src/cloth/stitches.ts';
import { THREAD_TAIL, threadUsed, WASTE } from '../../src/cloth/thread-used.ts';
import { inches, mm, toInches, toMm, zero } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const metre = (type: StitchType) => ({ name: 'Seam', type, length: mm(1000) });

describe('thread against published figures', () => {
  // Estimation of Thread Consumption of Garment, undated, quoting The Technology of Clothing Manufacture, Carr and Latham (seen
  // as an excerpt of a secondary page): thread for each length of seam, and 2 to 3 cm at each end.
  test.each<[StitchType, number]>([
    [301, 2.5],
    [101, 4],
    [401, 5.5],
    [304, 7],
    [503, 12],
    [504, 14],
    [512, 18],
    [516, 20],
    [406, 18],
    [602, 25],
    [605, 28],
    [606, 32],
  ])('stitch %s takes %s m a metre', (type, ratio) => {
    expect(toMm(made(threadUsed({ seams: [metre(type)], waste: 0, tail: zero })).needed)).toBe(ratio * 1000);
  });

  test('2 to 3 cm at each end, and 10 to 20 in the hundred of waste', () => {
    expect(toMm(THREAD_TAIL.value)).toBeGreaterThanOrEqual(20);
    expect(toMm(THREAD_TAIL.value)).toBeLessThanOrEqual(30);
    expect(WASTE.value).toBeGreaterThanOrEqual(0.1);
    expect(WASTE.value).toBeLessThanOrEqual(0.2);
  });

  // Measuring actual thread consumption, trade technical article, undated (seen as an excerpt): 401 over 100 cm takes 540 cm,
  // and 621 cm with 15 in the hundred of waste. The table's 5.5 against the measured 5.4.
  test('a measured metre of 401', () => {
    const { needed } = made(threadUsed({ seams: [metre(401)], tail: zero }));
    expect(Math.abs(toMm(needed) / 6210 - 1)).toBeLessThan(0.1);
  });

  // A thread bulletin, undated (seen as an excerpt): 1.17 yd of 401 at a factor of 5.0 and 15 in the hundred is 6.73 yd; by its
  // formula at 5.20 it is 7.00. Published factors differ by a tenth.
  test('1.17 yd of 401', () => {
    const { needed } = made(
      threadUsed({ seams: [{ name: 'Seam', type: 401, length: inches(1.17 * 36) }], tail: zero }),
    );
    expect(Math.abs(toInches(needed) / 36 / 6.73 - 1)).toBeLessThan(0.11);
    expect(Math.abs(toInches(needed) / 36 / 7 - 1)).toBeLessThan(0.1);
  });
});
