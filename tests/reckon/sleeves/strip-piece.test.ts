import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../src/length/index.ts';
import { LONGEST_SHEET, pieceLines, pieceSheets } from '../../../src/reckon/sleeves/strip-piece.ts';

const piece = (length: number, width: number, allowance: number) => ({
  name: 'Tie',
  notes: [],
  length: mm(length),
  width: mm(width),
  allowance: mm(allowance),
  folds: [mm(width / 2)],
  ends: 'stitch' as const,
});

test('everything of a piece lies within its cut line', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 30, max: 2000 }),
      fc.integer({ min: 30, max: 400 }),
      fc.integer({ min: 0, max: 14 }),
      (length, width, allowance) => {
        for (const drawn of pieceLines(piece(length, width, allowance), true))
          for (const { x, y } of drawn.kind === 'path' ? drawn.points : [drawn.at])
            expect(x >= 0 && x <= mm(length) && y >= 0 && y <= mm(width)).toBe(true);
      },
    ),
  );
});

test('a piece too long to print is measured instead', () => {
  expect(pieceSheets(piece(100, 50, 10), piece(LONGEST_SHEET / 1e6 + 1, 50, 10))).toHaveLength(1);
});
