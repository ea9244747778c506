import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stretchLeg } from '../../src/cloth/stretch-leg.ts';
import { frillLines, partLeg, seamFeet } from '../../src/cloth/stretch-leg-cut.ts';
import { mm, nm, toMm } from '../../src/length/index.ts';
import { edgeLengths, outlineArea } from '../../src/shape/index.ts';
import { matchSeams } from '../../src/shape/matching.ts';
import { nearestOn } from '../../src/shape/nearest.ts';
import { bodies, legOf } from '../outside/stretch-bodies.ts';
import { made } from './good.ts';

const gauge = {
  round: { rest: mm(100), stretched: mm(190) },
  along: { rest: mm(100), stretched: mm(150) },
};
const legs = bodies.flatMap((body) =>
  [false, true].map((footed) => made(stretchLeg({ gauge, measures: legOf(body), footed }))),
);
const leg = legs[10]!;
const levelOf = (name: string) => leg.levels.find((l) => l.name === name)!;

describe('a leg of two cloths', () => {
  test('parted anywhere: the edges match, the seams and the area stay whole', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...legs),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (one, share) => {
          const end = one.outline.edges.find((e) => e.name === 'inner-front')!.segments.at(-1)!.to.y;
          const level = nm(one.crotchLevel + share * (end - one.crotchLevel));
          const { upper, lower, cut } = made(partLeg(one, level));
          const match = matchSeams([{ outline: upper, edge: 'cut' }], [{ outline: lower, edge: 'cut' }]);
          expect(match).toMatchObject({ difference: 0, first: cut, matches: true });
          for (const piece of [upper, lower])
            expect(piece.edges.at(-1)?.segments.at(-1)?.to).toEqual(piece.start);
          const [a, b, whole] = [upper, lower, one.outline].map(edgeLengths);
          for (const name of ['inner-front', 'inner-back'])
            expect(toMm(nm(a!.get(name)! + b!.get(name)! - whole!.get(name)!))).toBeCloseTo(0, 2);
          expect(Math.abs(outlineArea(upper) + outlineArea(lower) - outlineArea(one.outline))).toBeLessThan(
            1,
          );
        },
      ),
      { numRuns: 40 },
    );
  });

  test('parted at the knee, the cut is as long as the knee', () => {
    const { y, finished } = levelOf('knee');
    const { cut, upper, lower } = made(partLeg(leg, y));
    expect(toMm(cut)).toBeCloseTo(toMm(finished), 4);
    expect(upper.edges.map((e) => e.name)).toEqual([
      'waist',
      'front-rise',
      'inner-front',
      'cut',
      'inner-back',
      'back-rise',
    ]);
    expect(lower.edges.map((e) => e.name)).toEqual(['cut', 'inner-front', 'ankle', 'inner-back']);
  });

  test('a level above the crotch or past the seam is refused', () => {
    for (const level of [mm(0), leg.crotchLevel, levelOf('ankle').y, mm(5000)]) {
      expect(partLeg(leg, level)).toMatchObject({
        ok: false,
        error: {
          field: 'level',
          cure: expect.stringMatching(
            /more than \d+ mm \([\d/ ]+ in\) and less than \d+ mm \([\d/ ]+ in\) below/,
          ),
        },
      });
      expect(frillLines(leg, [levelOf('calf').y, level])).toMatchObject({ error: { field: 'level' } });
    }
  });
});

test('a frill line is the girth at its level, in quarters', () => {
  const { y, finished } = levelOf('calf');
  const [line] = made(frillLines(leg, [y]));
  expect(toMm(line!.length)).toBeCloseTo(toMm(finished), 4);
  expect(line!.quarters.map((p) => toMm(p.x))).toEqual(
    [-2, -1, 0, 1, 2].map((k) => expect.closeTo((k * toMm(finished)) / 4, 3)),
  );
});

test.each([
  ['without', legs[10]!],
  ['with', legs[11]!],
])('the feet of seams lie on the outline, at different places: %s a foot', (_, one) => {
  const feet = seamFeet(one);
  for (const { at } of feet) expect(toMm(nearestOn(one.outline, at)!.away)).toBeLessThan(0.01);
  expect(new Set(feet.map(({ at }) => `${at.x} ${at.y}`)).size).toBe(9);
});
