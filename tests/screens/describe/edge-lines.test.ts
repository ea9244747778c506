import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches } from '../../../src/length/length.ts';
import { ownOutline } from '../../../src/outfit/changing/own-piece.ts';
import type { Piece } from '../../../src/outfit/outfit.ts';
import { pieceOf } from '../../../src/outfit/units/parts.ts';
import { pieceLines } from '../../../src/screens/describe/edge-lines.ts';

const made = (shape: 'rectangle' | 'half', wide: string, high: string): Piece => {
  const outline = ownOutline(shape, { wide, high }, 'in');
  if (!outline.ok) throw new Error('not drawn');
  return pieceOf({
    id: 'strip',
    name: 'Strip',
    cloth: 'cotton',
    cut: shape === 'half' ? 'fold' : 'pair',
    allowance: inches(1, 2),
    outline: outline.value,
  });
};

describe('a piece drawn for touching', () => {
  test('has every edge once, numbered round the outline, with its true length', () => {
    const { sides, stretched } = pieceLines(made('rectangle', '10', '6'), false);
    expect(stretched).toBe(false);
    expect(sides).toHaveLength(1);
    expect(sides[0]!.edges.map(({ ref, number, long }) => [ref, number, long])).toEqual([
      ['strip.upper', 1, inches(10)],
      ['strip.right', 2, inches(6)],
      ['strip.lower', 3, inches(10)],
      ['strip.left', 4, inches(6)],
    ]);
  });

  test('stands beside its mate; a folded half lies against its other half, without a fold of its own', () => {
    const pair = pieceLines(made('rectangle', '10', '6'), true);
    expect(pair.sides[1]!.edges.map(({ ref }) => ref)).toEqual([
      'other:strip.upper',
      'other:strip.right',
      'other:strip.lower',
      'other:strip.left',
    ]);
    const half = pieceLines(made('half', '10', '6'), true);
    expect(half.sides[1]!.edges.map(({ ref }) => ref)).toEqual([
      'other:strip.upper',
      'other:strip.side',
      'other:strip.lower',
    ]);
    // 10 in of the other half lie left of 0, and the rim.
    expect(half.view[0]).toBeLessThan(-254);
  });

  test('is never so narrow that its edges lie on each other, and its labels lie inside the picture', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 400 }), fc.integer({ min: 1, max: 400 }), (wide, high) => {
        const { view, sides, stretched, letters } = pieceLines(
          made('rectangle', String(wide), String(high)),
          true,
        );
        const [left, top, across, down] = view;
        expect(stretched).toBe(Math.min(wide, high) < Math.max(wide, high) / 4);
        for (const { label, number, name } of sides.flatMap((side) => side.edges)) {
          expect(label.x).toBeGreaterThan(left);
          expect(label.x).toBeLessThan(left + across);
          expect(label.y).toBeGreaterThan(top);
          expect(label.y).toBeLessThan(top + down);
          expect([name, String(number)]).toContain(label.words);
          if (label.words === name) expect(name.length).toBeLessThanOrEqual(label.room);
        }
        expect(Math.min(across, down)).toBeGreaterThan(letters * 4);
      }),
      { seed: 13 },
    );
  });
});
