import { expect, test } from 'vitest';
import { mm, toMm } from '../../../src/length/index.ts';
import {
  dotsDrawn,
  dotsOf,
  SOLE_LONG,
  sayDots,
  soleDrawn,
} from '../../../src/reckon/machine/iron-drawing.ts';
import { boundingBox, holds } from '../../../src/shape/index.ts';

test('as many dots as the label has, and a cross for none', () => {
  for (const dots of [1, 2, 3] as const) {
    const drawn = dotsDrawn(dots, mm(0), mm(0), mm(5));
    expect(drawn).toHaveLength(dots);
    const middles = drawn.map((one) => {
      const { left, right } = boundingBox(one.kind === 'path' ? one.points : []);
      return toMm(left) + toMm(right);
    });
    expect(middles.reduce((a, b) => a + b, 0)).toBeCloseTo(0, 0);
  }
  expect(dotsDrawn(0, mm(0), mm(0), mm(5)).map((one) => one.kind === 'path' && one.stroke)).toEqual([
    'cut',
    'cut',
  ]);
});

test('the dots lie on the sole', () => {
  const [sole, ...dots] = soleDrawn(3, mm(20), mm(-30));
  const outline = sole?.kind === 'path' ? sole.points : [];
  expect(toMm(boundingBox(outline).right)).toBeCloseTo(20 + toMm(SOLE_LONG), 6);
  expect(dots).toHaveLength(3);
  for (const dot of dots) {
    if (dot.kind === 'path') for (const point of dot.points) expect(holds(outline, point)).toBe(true);
  }
});

test('the words of a label say its heat', () => {
  expect(sayDots(dotsOf('2'))).toBe('two dots, 150 °C');
  expect(sayDots(0)).toBe('must not be ironed');
});
