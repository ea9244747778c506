import { EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import { describe, expect, test } from 'vitest';
import { reduced, reductions, stretchOf } from '../../src/cloth/stretch.ts';
import { stretchLeg } from '../../src/cloth/stretch-leg.ts';
import { inches, mm, toMm } from '../../src/length/index.ts';
import { distance, flattenOutline } from '../../src/shape/index.ts';
import { addAllowance } from '../../src/shape/offset.ts';
import { made } from '../cloth/good.ts';
import { toNearestSide } from '../shape/shapes.ts';
import { bodies, legOf } from './stretch-bodies.ts';

describe('stretch by the gauge', () => {
  // Gauge of 4 in across the knit: Knits Knacks, HE452, Gotwals, Purdue Cooperative Extension, undated, p. 1 (seen as an
  // excerpt). Percentages follow from the definition of percent stretch.
  test.each([
    [5, 0.25],
    [6, 0.5],
    [7, 0.75],
  ])('4 in drawn out to %s in', (stretched, part) => {
    expect(made(stretchOf({ rest: inches(4), stretched: inches(stretched) }))).toBe(part);
  });

  // A teaching text on stretch costume, undated (seen as an excerpt): fold, mark 10 in, pull to comfort; 10 to 14 in is 40 %.
  test('10 in drawn out to 14 in is 40 %', () => {
    expect(made(stretchOf({ rest: inches(10), stretched: inches(14) }))).toBe(0.4);
  });

  // From memory: legs are reduced 10 to 20 % round the leg and 0 to 5 % along it.
  test.each([34, 40, 50, 60, 80, 100, 150])('cloth of %s %% gives a usual reduction', (percent) => {
    const gauge = { rest: mm(100), stretched: mm(100 + percent) };
    const { round, along } = made(reductions({ gauge: { round: gauge, along: gauge } }));
    expect(round).toBeGreaterThanOrEqual(0.1);
    expect(round).toBeLessThanOrEqual(0.2);
    expect(along).toBeLessThanOrEqual(0.05);
    expect(toMm(reduced(mm(600), round))).toBeCloseTo(600 * (1 - round), 5);
  });
});

// clipper2-ts, a general polygon library: 10 mm round real pieces, against its mitred offset. It keeps mitres up to ten
// times the allowance; ours are cut off past twice, so only its corners farther out than that may miss ours.
test.each(bodies.map((body) => ({ name: body.name, body })))(
  'seam allowance of the leg of $name lies where a polygon library puts it',
  ({ body }) => {
    const gauge = {
      round: { rest: mm(100), stretched: mm(190) },
      along: { rest: mm(100), stretched: mm(150) },
    };
    const { outline } = made(stretchLeg({ gauge, measures: legOf(body) }));
    const cut = addAllowance(outline, new Map(), mm(10));
    if (!cut.ok) throw new Error(cut.error);
    const seam = flattenOutline(outline);
    const path = seam.map(({ x, y }) => ({ x: toMm(x), y: toMm(y) }));
    const rings = inflatePathsD([path], 10, JoinType.Miter, EndType.Polygon, 10, 4);
    expect(rings).toHaveLength(1);
    const theirs = rings[0]!.map(({ x, y }) => ({ x: mm(x), y: mm(y) }));
    for (const p of cut.value) expect(toNearestSide(theirs, p)).toBeLessThan(mm(0.02));
    const missed = theirs.filter((p) => toNearestSide(cut.value, p) > mm(0.02));
    expect(missed.length).toBeLessThanOrEqual(4);
    for (const p of missed) expect(Math.min(...seam.map((q) => distance(p, q)))).toBeGreaterThan(mm(20));
  },
);
