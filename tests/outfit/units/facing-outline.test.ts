import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm, toMm } from '../../../src/length/length.ts';
import { facingOutline } from '../../../src/outfit/units/facing-outline.ts';
import { rectangle } from '../../../src/outfit/units/rectangle.ts';
import { edgeLengths, outlineArea } from '../../../src/shape/measure.ts';

const sheet = rectangle(mm(200), mm(300), ['top', 'right', 'bottom', 'left']);
const faced = (names: readonly string[], wide: number) => {
  const made = facingOutline(sheet, new Set(names), mm(wide));
  if (!made.ok) throw new Error(made.error.wrong);
  return made.value;
};

describe('the outline of a facing', () => {
  it('is a strip along one edge, as wide as asked and ending on the edges beside it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 150 }), (wide) => {
        const made = faced(['top'], wide);
        expect(made.edges.map((edge) => edge.name)).toEqual(['top', 'right', 'outer', 'left']);
        expect(outlineArea(made)).toBeCloseTo(200 * wide, 1);
        expect(toMm(edgeLengths(made).get('right')!)).toBeCloseTo(wide, 3);
      }),
      { seed: 3 },
    );
  });

  it('goes round a corner with the same width on both sides of it', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 90 }), (wide) => {
        const made = faced(['left', 'top'], wide);
        expect(made.edges.map((edge) => edge.name)).toEqual(['left', 'top', 'right', 'outer', 'bottom']);
        expect(outlineArea(made)).toBeCloseTo(200 * wide + 300 * wide - wide * wide, 1);
      }),
      { seed: 4 },
    );
  });

  it('goes straight in where the edge beside it is shorter than it is wide', () => {
    const low = rectangle(mm(200), mm(30), ['top', 'right', 'bottom', 'left']);
    const made = facingOutline(low, new Set(['left']), mm(40));
    expect(made.ok && made.value.edges.map((edge) => edge.name)).toEqual(['left', 'top', 'outer', 'bottom']);
  });

  it('refuses edges that stand apart, all edges at once, and more width than there is cloth', () => {
    const field = (names: readonly string[], wide: number) => {
      const made = facingOutline(sheet, new Set(names), mm(wide));
      return made.ok ? undefined : made.error.field;
    };
    expect(field(['top', 'bottom'], 20)).toBe('at.edges');
    expect(field(['top', 'right', 'bottom', 'left'], 20)).toBe('at.edges');
    expect(field(['left', 'top', 'right'], 120)).toBe('width');
  });
});
