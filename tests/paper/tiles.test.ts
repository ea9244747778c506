import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { box, line, place } from '../../src/paper/drawing.ts';
import { inkOf } from '../../src/paper/ink.ts';
import { A4, LETTER, OVERLAP, roomOn } from '../../src/paper/papers.ts';
import { CLEAR, gridOf, sheetBox } from '../../src/paper/tiles.ts';
import { drawings, flounce } from './sheets.ts';

describe('cutting a sheet into tiles', () => {
  it('puts every place of every line well inside some tile, on either paper', () => {
    fc.assert(
      fc.property(
        drawings,
        fc.constantFrom(A4, LETTER),
        fc.boolean(),
        fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 4, maxLength: 12 }),
        ({ drawn }, paper, lying, shares) => {
          const room = roomOn(paper, lying);
          const grid = gridOf(inkOf(drawn), room.wide, room.high)!;
          for (const one of drawn) {
            if (one.kind !== 'path') continue;
            for (const [i, b] of one.points.entries()) {
              const a = one.points[i - 1] ?? (one.closed ? one.points.at(-1)! : b);
              for (const share of shares) {
                const [x, y] = [a.x + (b.x - a.x) * share, a.y + (b.y - a.y) * share];
                expect(
                  grid.tiles.some(
                    ({ area }) => x >= area.left && x <= area.right && y >= area.top && y <= area.bottom,
                  ),
                ).toBe(true);
              }
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });

  it('lets neighbours overlap by 15 mm, and makes every tile as large as the room', () => {
    fc.assert(
      fc.property(drawings, ({ drawn }) => {
        const room = roomOn(A4, false);
        const { tiles } = gridOf(inkOf(drawn), room.wide, room.high)!;
        for (const { row, column, area } of tiles) {
          expect([area.right - area.left, area.bottom - area.top]).toEqual([room.wide, room.high]);
          const right = tiles.find((one) => one.row === row && one.column === column + 1);
          if (right) expect(area.right - right.area.left).toBe(OVERLAP);
          const below = tiles.find((one) => one.row === row + 1 && one.column === column);
          if (below) expect(area.bottom - below.area.top).toBe(OVERLAP);
        }
      }),
      { numRuns: 60 },
    );
  });

  it('leaves out tiles in which nothing is drawn', () => {
    const ink = inkOf([line('cut', place(mm(0), mm(0)), place(mm(1000), mm(1000)))]);
    const { rows, columns, tiles } = gridOf(ink, mm(200), mm(200))!;
    expect([rows, columns]).toEqual([6, 6]);
    expect(tiles.length).toBeLessThan(12);
  });

  it('needs one tile for what just fits, and two for a hair more', () => {
    const of = (long: number) =>
      gridOf(inkOf([box('cut', mm(0), mm(0), mm(long), mm(50))]), mm(200), mm(200))!.tiles.length;
    expect(of(200 - 2)).toBe(1);
    expect(of(200.01)).toBe(2);
  });

  it('keeps paper clear round all that is drawn, words too', () => {
    const { left, right, top, bottom } = sheetBox(inkOf(flounce.drawn));
    expect(left).toBe(mm(-420) - CLEAR);
    expect(right).toBe(mm(420) + CLEAR);
    for (const edge of [top + mm(421), bottom - mm(421)]) expect(Math.abs(edge)).toBeLessThan(mm(0.05));
  });

  it('does not try a sheet as large as a hall', () => {
    expect(
      gridOf(inkOf([box('cut', mm(0), mm(0), mm(50_000), mm(50_000))]), mm(200), mm(200)),
    ).toBeUndefined();
  });
});
