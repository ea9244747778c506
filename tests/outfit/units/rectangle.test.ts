import fc from 'fast-check';
import { expect, test } from 'vitest';
import { add, mm, zero } from '../../../src/length/length.ts';
import {
  curved,
  foldedStrip,
  point,
  rectangle,
  straight,
  strip,
} from '../../../src/outfit/units/rectangle.ts';
import { edgeLengths, outlineArea } from '../../../src/shape/measure.ts';

const sizes = fc.record({ wide: fc.integer({ min: 1, max: 5000 }), high: fc.integer({ min: 1, max: 5000 }) });

test('a rectangle closes, and each of its edges is as long as it was asked', () => {
  fc.assert(
    fc.property(sizes, ({ wide, high }) => {
      const made = rectangle(mm(wide), mm(high), ['top', 'right', 'bottom', 'left']);
      expect(made.edges.at(-1)?.segments.at(-1)?.to).toEqual(made.start);
      expect(edgeLengths(made)).toEqual(
        new Map([
          ['top', mm(wide)],
          ['right', mm(high)],
          ['bottom', mm(wide)],
          ['left', mm(high)],
        ]),
      );
      expect(outlineArea(made)).toBeCloseTo(wide * high, 3);
    }),
    { seed: 41 },
  );
});

test('a strip lies along; half of one has its fold on the datum', () => {
  expect(strip(mm(300), mm(40)).edges.map((edge) => edge.name)).toEqual([
    'upper',
    'right-end',
    'lower',
    'left-end',
  ]);
  const half = foldedStrip(mm(150), mm(40));
  expect(half.edges.map((edge) => edge.name)).toEqual(['upper', 'front-end', 'lower', 'fold']);
  expect(half.start.x).toBe(zero);
  expect(half.edges[2]?.segments[0]?.to.x).toBe(zero);
});

test('a curve with its handles on the straight line is as long as the line', () => {
  const to = point(mm(90), zero);
  const start = point(zero, zero);
  const closing = straight('back', start);
  const bent = curved('bent', point(mm(30), zero), point(mm(60), zero), to);
  const lengths = edgeLengths({ start, edges: [bent, closing] });
  expect(lengths.get('bent')).toBe(lengths.get('back'));
  expect(add(...lengths.values())).toBe(mm(180));
});
