import { describe, expect, it } from 'vitest';
import { downTo, downward, heightAt, type Placed, sidesOf } from '../../src/fitting/sides.ts';
import { allPieces, pieceOf } from './demo-garments.ts';

const named = (path: readonly Placed[] | undefined): readonly string[] =>
  (path ?? []).map(({ edge }) => edge.name);

describe('the sides of a piece', () => {
  it('are told from what lies across', () => {
    const sides = sidesOf(pieceOf('side-front', 'side-front').piece.outline);
    expect(named(sides?.left)).toEqual(['panel']);
    expect(named(sides?.right)).toEqual(['armhole', 'side']);
    expect(named(sides?.top)).toEqual(['shoulder']);
    expect(named(sides?.bottom)).toEqual(['hem']);
  });

  it('run together at the toes of a leg with a foot', () => {
    const sides = sidesOf(pieceOf('lower-leg', 'lower-leg').piece.outline);
    expect(named(sides?.right)).toEqual(['front-inseam', 'front-foot']);
    expect(named(sides?.left)).toEqual(['back-foot', 'back-inseam']);
    expect(named(sides?.bottom)).toEqual([]);
  });

  it('hold every edge once wherever there are any', () => {
    for (const { piece } of allPieces) {
      const sides = sidesOf(piece.outline);
      if (!sides) continue;
      const all = [sides.left, sides.right, sides.top, sides.bottom].flatMap(named);
      expect([...all].sort()).toEqual(piece.outline.edges.map(({ name }) => name).sort());
    }
  });
});

describe('a height along an edge', () => {
  it('is found again at the distance it lies from the upper end', () => {
    const sides = sidesOf(pieceOf('side-front', 'side-front').piece.outline);
    for (const edge of [...sides!.left, ...sides!.right]) {
      const points = downward(edge);
      const [top, bottom] = [points[0]!.y, points.at(-1)!.y];
      for (const share of [0.1, 0.5, 0.9]) {
        const y = top + (bottom - top) * share;
        expect(heightAt(points, downTo(points, y))).toBeCloseTo(y, -1);
      }
    }
  });
});
