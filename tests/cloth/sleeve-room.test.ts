import { expect, test } from 'vitest';
import { lowerWide, onArm, sleeveWide, WIDE_OF_ARMHOLE } from '../../src/cloth/sleeve-room.ts';
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

test('a lower edge passes the hand and is wider than the wrist, as far as they are known', () => {
  expect(lowerWide(undefined, undefined)).toBeUndefined();
  expect(toMm(lowerWide(mm(160), undefined)!)).toBeCloseTo(160 + 76.2, 1);
  expect(toMm(lowerWide(undefined, mm(210))!)).toBeCloseTo(210 + 19.05, 1);
  expect(toMm(lowerWide(mm(160), mm(210))!)).toBeCloseTo(236.2, 1);
  expect(toMm(lowerWide(mm(160), mm(230))!)).toBeCloseTo(249.05, 1);
});

test('the arm that a sleeve was drafted round is known from its width', () => {
  expect(onArm(sleeveWide(mm(300), undefined)!)).toBe(mm(300));
  expect(onArm(mm(40))).toBe(mm(40));
});
