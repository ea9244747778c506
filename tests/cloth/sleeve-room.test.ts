import { expect, test } from 'vitest';
import { sleeveWide, WIDE_OF_ARMHOLE } from '../../src/cloth/sleeve-room.ts';
import { mm, toMm } from '../../src/length/index.ts';

test('a sleeve is as wide as the arm asks, held to what its armhole takes', () => {
  const [least, most] = WIDE_OF_ARMHOLE.value;
  expect(sleeveWide(undefined, undefined)).toBeUndefined();
  expect(toMm(sleeveWide(mm(300), undefined)!)).toBeCloseTo(350.8, 1);
  expect(toMm(sleeveWide(mm(300), mm(480))!)).toBeCloseTo(350.8, 1);
  expect(toMm(sleeveWide(mm(200), mm(480))!)).toBeCloseTo(480 * least, 1);
  expect(toMm(sleeveWide(mm(600), mm(480))!)).toBeCloseTo(480 * most, 1);
  expect(toMm(sleeveWide(undefined, mm(480))!)).toBeCloseTo((480 * (least + most)) / 2, 1);
});
