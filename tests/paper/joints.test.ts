import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { box } from '../../src/paper/drawing.ts';
import { inkOf } from '../../src/paper/ink.ts';
import { jointInk, jointsOf, letterOf } from '../../src/paper/joints.ts';
import { gridOf } from '../../src/paper/tiles.ts';

const grid = gridOf(inkOf([box('cut', mm(0), mm(0), mm(500), mm(500))]), mm(200), mm(200))!;

describe('joints', () => {
  it('counts letters on past Z', () => {
    expect([0, 25, 26, 27, 51, 52, 701, 702].map(letterOf)).toEqual([
      'A',
      'Z',
      'AA',
      'AB',
      'AZ',
      'BA',
      'ZZ',
      'AAA',
    ]);
  });

  it('numbers those side by side and letters those above one another', () => {
    expect([grid.rows, grid.columns, grid.tiles.length]).toEqual([3, 3, 8]);
    const joints = jointsOf(grid);
    for (const { first, second, way, sign } of joints) {
      expect(sign).toMatch(way === 'across' ? /^\d+$/ : /^[A-Z]+$/);
      expect([second.row - first.row, second.column - first.column]).toEqual(
        way === 'across' ? [0, 1] : [1, 0],
      );
    }
    expect(new Set(joints.map(({ sign }) => sign)).size).toBe(joints.length);
  });

  it('has no joint with a tile that is left out', () => {
    const joints = jointsOf(grid);
    // Of nine tiles the middle one is empty: twelve joints less its four.
    expect(joints).toHaveLength(8);
  });

  it('makes whole diamonds of the halves on two neighbours', () => {
    for (const joint of jointsOf(grid)) {
      const halves = [joint.first, joint.second].map((tile) =>
        jointInk(tile, [joint]).flatMap((ink) =>
          ink.kind === 'line' && ink.pen === 'sign' ? [ink.points] : [],
        ),
      );
      expect(halves[0]).toHaveLength(2);
      for (const [i, [from, tip, to]] of halves[0]!.entries()) {
        const [otherFrom, otherTip, otherTo] = halves[1]![i]!;
        expect([otherFrom, otherTo]).toEqual([from, to]);
        expect({ x: tip!.x + otherTip!.x, y: tip!.y + otherTip!.y }).toEqual({
          x: from!.x + to!.x,
          y: from!.y + to!.y,
        });
      }
    }
  });

  it('draws a fine line on the first tile where the edge of the second is laid', () => {
    const joint = jointsOf(grid).find(({ way }) => way === 'across')!;
    const lines = (tile: typeof joint.first) =>
      jointInk(tile, [joint]).flatMap((ink) =>
        ink.kind === 'line' && ink.pen === 'frame' ? [ink.points] : [],
      );
    expect(lines(joint.second)).toEqual([]);
    expect(lines(joint.first)[0]!.every(({ x }) => x === joint.second.area.left)).toBe(true);
  });
});
