import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { box, LETTERS, place, sheet, words } from '../../src/paper/drawing.ts';
import type { Drawn } from '../../src/paper/pattern-sheet.ts';
import { sideBySide } from '../../src/paper/side-by-side.ts';
import { boundingBox } from '../../src/shape/measure.ts';

const side = fc.integer({ min: 5, max: 900 });
const pieces = fc.array(fc.record({ x: fc.integer({ min: -500, max: 500 }), wide: side, high: side }), {
  minLength: 1,
  maxLength: 9,
});
const sheetOf = ({ x, wide, high }: { x: number; wide: number; high: number }, i: number) =>
  sheet(`piece ${i}`, [box('cut', mm(x), mm(-x), mm(wide), mm(high)), words('hem', place(mm(0), mm(0)))]);
const boxes = (drawn: readonly Drawn[]) =>
  drawn.flatMap((one) => (one.kind === 'path' ? [boundingBox(one.points)] : []));

describe('sheets side by side', () => {
  test('keep their sizes, lie clear of each other, and each has its name below and no other words', () => {
    fc.assert(
      fc.property(pieces, (all) => {
        const { drawn } = sideBySide('pieces', all.map(sheetOf));
        const found = boxes(drawn);
        expect(found.map((b) => [b.right - b.left, b.bottom - b.top])).toEqual(
          all.map(({ wide, high }) => [mm(wide), mm(high)]),
        );
        for (const [i, a] of found.entries()) {
          for (const b of found.slice(i + 1)) {
            const apart = a.right < b.left || b.right < a.left || a.bottom < b.top || b.bottom < a.top;
            expect(apart).toBe(true);
          }
        }
        const names = drawn.filter((one) => one.kind === 'words');
        expect(names.map((one) => one.words)).toEqual(all.map((_, i) => `piece ${i}`));
        for (const [i, name] of names.entries()) expect(name.at.y).toBeGreaterThan(found[i]!.bottom);
      }),
      { seed: 5, numRuns: 200 },
    );
  });

  test('leave out a sheet without lines', () => {
    const none = sheet('words only', [words('nothing', place(mm(0), mm(0)), LETTERS)]);
    expect(sideBySide('pieces', [none]).drawn).toEqual([]);
  });
});
