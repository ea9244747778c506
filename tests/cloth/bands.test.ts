import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { band } from '../../src/cloth/bands.ts';
import { add, inches, mm, nm, subtract, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('a folded band', () => {
  test('pressed over half an inch and then an inch, centre front in its middle', () => {
    const result = made(band());
    expect(result).toMatchObject({
      width: inches(1),
      lap: inches(1, 2),
      overlap: inches(1),
      finishedEdge: inches(1, 2),
      firstFold: inches(3, 2),
      cutEdge: inches(2),
      innerFold: inches(-1, 2),
      stitching: inches(-3, 8),
      addition: inches(3, 2),
      press: [inches(1, 2), inches(1)],
    });
    expect(result.assumed).toHaveLength(4);
  });

  test('states no assumption when all is given', () => {
    expect(
      made(band({ firstTurn: mm(10), secondTurn: mm(30), lap: mm(15), stitchIn: mm(2) })).assumed,
    ).toEqual([]);
  });

  test.each([
    [{ secondTurn: zero }, 'secondTurn'],
    [{ firstTurn: zero }, 'firstTurn'],
    [{ firstTurn: inches(5, 4) }, 'firstTurn'],
    [{ lap: zero }, 'lap'],
    [{ lap: inches(1) }, 'lap'],
    [{ stitchIn: zero }, 'stitchIn'],
    [{ stitchIn: inches(3, 4) }, 'stitchIn'],
  ])('refuses %j', (input, field) => {
    expect(band(input)).toMatchObject({ ok: false, error: { field } });
  });

  test('folding the flat marks over brings each where it belongs', () => {
    const size = fc.integer({ min: 1_000_000, max: 60_000_000 }).map(nm);
    fc.assert(
      fc.property(size, size, size, (firstTurn, secondTurn, lap) => {
        const result = band({ firstTurn, secondTurn, lap, stitchIn: nm(firstTurn / 2) });
        if (!result.ok) return;
        const b = result.value;
        // The second fold turns everything beyond the finished edge over: distance d beyond comes to d inside.
        const turned = (flat: typeof lap) => subtract(b.finishedEdge, subtract(flat, b.finishedEdge));
        expect(turned(b.firstFold)).toBe(b.innerFold);
        // The first turn folds back towards the edge, so the cut edge lies outside the stitching and inside the edge.
        const cutEdgeDone = add(b.innerFold, subtract(b.cutEdge, b.firstFold));
        expect(cutEdgeDone).toBeGreaterThanOrEqual(b.stitching);
        expect(cutEdgeDone).toBeLessThanOrEqual(b.finishedEdge);
        expect(b.innerFold).toBeLessThan(0);
        expect(subtract(b.cutEdge, b.finishedEdge)).toBe(b.addition);
      }),
    );
  });
});
