import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { startOf } from '../../../src/fields/fields.ts';
import { mm, ratio } from '../../../src/length/length.ts';
import { cornersOf } from '../../../src/outfit/changing/own-corners.ts';
import { OWN_SHAPES, type OwnShape, ownOutline } from '../../../src/outfit/changing/own-piece.ts';
import { insideOf } from '../../../src/paper/parallel-edge.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { edgeLengths, outlineArea } from '../../../src/shape/measure.ts';

const shapes = Object.keys(OWN_SHAPES) as OwnShape[];
const draw = (shape: OwnShape, entries: Readonly<Record<string, string>>) => {
  const made = ownOutline(shape, entries, 'mm');
  if (!made.ok) throw new Error(JSON.stringify(made.error));
  return made.value;
};
const faults = (shape: OwnShape, entries: Readonly<Record<string, string>>) => {
  const made = ownOutline(shape, entries, 'mm');
  return made.ok ? [] : made.error.map(({ field }) => field);
};

describe.each(shapes)('%s', (shape) => {
  test.each(['in', 'mm'] as const)('is drawn clockwise from what stands there first (%s)', (unit) => {
    const made = ownOutline(shape, {}, unit);
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    expect(insideOf(flattenOutline(made.value))).toBe(1);
    expect(outlineArea(made.value)).toBeGreaterThan(1000);
    expect(made.value.edges.at(-1)?.segments.at(-1)?.to).toEqual(made.value.start);
    expect(new Set(made.value.edges.map(({ name }) => name)).size).toBe(made.value.edges.length);
  });

  test('a length of nothing is refused at its field', () => {
    for (const [name, field] of Object.entries(OWN_SHAPES[shape].fields)) {
      if (field.kind !== 'length' || name === 'inner') continue;
      expect(faults(shape, { [name]: '0' })).toEqual([name]);
      expect(startOf(field, 'mm')).not.toBe('');
    }
  });
});

test('a part of a circle has arcs as long as the circle says, whatever its figures', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 10, max: 400 }),
      fc.integer({ min: 10, max: 900 }),
      fc.integer({ min: 1, max: 360 }),
      (inner, deep, degrees) => {
        const lengths = edgeLengths(
          draw('circle', { inner: String(inner), deep: String(deep), degrees: String(degrees) }),
        );
        const arc = (radius: number): number => (2 * Math.PI * radius * degrees) / 360;
        const of = (name: string) => ratio(lengths.get(name) ?? mm(0), mm(1));
        // Under a twentieth of a millimetre in a circle of a metre.
        expect(Math.abs(of('inner') - arc(inner))).toBeLessThan(0.05);
        expect(Math.abs(of('outer') - arc(inner + deep))).toBeLessThan(0.1);
        expect(of('right-end')).toBeCloseTo(deep, 5);
        expect(of('left-end')).toBeCloseTo(deep, 5);
      },
    ),
    { seed: 12 },
  );
});

test('cut from the middle, a part of a circle has no inner edge', () => {
  const made = draw('circle', { inner: '0', deep: '300', degrees: '180' });
  expect(made.edges.map(({ name }) => name)).toEqual(['right-end', 'outer', 'left-end']);
});

test.each(['0', '361', '-90'])('%s degrees are refused', (degrees) => {
  expect(faults('circle', { degrees })).toEqual(['degrees']);
});

test('half a rectangle has its fold where across is 0', () => {
  const corners = cornersOf(draw('half', { wide: '120', high: '80' }));
  expect(corners.filter(({ at }) => at.x === 0).map(({ edge }) => edge)).toEqual(['upper', 'fold']);
});

test('four sides are as wide as they were asked for above and below', () => {
  const lengths = edgeLengths(draw('four-sided', { upper: '200', lower: '360', high: '500' }));
  expect(lengths.get('upper')).toBe(mm(200));
  expect(lengths.get('lower')).toBe(mm(360));
});

test('corners that do not do are refused at their field', () => {
  expect(faults('corners', { corners: '0, 0\n1, 1' })).toEqual(['corners']);
  expect(faults('triangle', { wide: 'broad', high: 'x' })).toEqual(['wide', 'high']);
});
