import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { ovalOutline } from '../../../src/outfit/units/oval-outline.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { boundingBox, signedArea } from '../../../src/shape/measure.ts';

test('an oval fills its box, runs clockwise and closes where it began', () => {
  const outline = ovalOutline(mm(80), mm(50));
  const polygon = flattenOutline(outline);
  const { left, top, right, bottom } = boundingBox(polygon);
  expect([left, top, right, bottom].map((n) => n / 1e6)).toEqual([0, 0, 80, 50]);
  expect(Math.abs(signedArea(polygon) - (Math.PI / 4) * 80 * 50)).toBeLessThan(15);
  expect(outline.edges.at(-1)?.segments.at(-1)?.to).toEqual(outline.start);
});
