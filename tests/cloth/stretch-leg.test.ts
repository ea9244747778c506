import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { stretchLeg } from '../../src/cloth/stretch-leg.ts';
import type { LegInput, LegMeasures } from '../../src/cloth/stretch-leg-measures.ts';
import { mm, size, subtract, toMm } from '../../src/length/index.ts';
import { edgeLengths } from '../../src/shape/index.ts';
import { made } from './good.ts';

const measures: LegMeasures = {
  heel: mm(310),
  ankle: mm(220),
  calf: mm(370),
  knee: mm(365),
  lowerThigh: mm(400),
  thigh: mm(610),
  hip: mm(1000),
  waist: mm(800),
  waistToCrotch: mm(220),
  crotchToHip: mm(80),
  rise: { front: mm(270), back: mm(330) },
  crotchToKnee: mm(330),
  kneeToFloor: mm(450),
  foot: { length: mm(245), ball: mm(228) },
};
const gauge = {
  round: { rest: mm(100), stretched: mm(180) },
  along: { rest: mm(100), stretched: mm(140) },
};
const leg = (change: Partial<LegMeasures> = {}, more: Partial<LegInput> = {}): LegInput => ({
  gauge,
  measures: { ...measures, ...change },
  ...more,
});
const names = (input: LegInput) => made(stretchLeg(input)).outline.edges.map((e) => e.name);
const says = (input: LegInput) => made(stretchLeg(input)).advice.map((a) => a.say);

describe('a leg of stretch cloth', () => {
  test('edges in order, without and with a foot', () => {
    const top = ['waist', 'front-rise', 'inner-front'];
    expect(names(leg())).toEqual([...top, 'ankle', 'inner-back', 'back-rise']);
    expect(names(leg({}, { footed: true }))).toEqual([
      ...top,
      'toe-front',
      'toe-back',
      'inner-back',
      'back-rise',
    ]);
  });

  test('a rise given whole is parted, and said', () => {
    const { rise, assumed } = made(stretchLeg(leg({ rise: { whole: mm(600) } }, { shareAlong: 0 })));
    expect(rise).toEqual({ front: mm(264), back: mm(336) });
    expect(assumed).toContainEqual(expect.stringContaining('56 %'));
  });

  test('an ankle that just passes is made less small; with an opening it is not', () => {
    const tight = leg({ heel: mm(350) });
    const ankle = (input: LegInput) =>
      made(stretchLeg(input)).levels.find((l) => l.name === 'ankle')!.reduction;
    expect(ankle(tight)).toBeCloseTo(1 - 350 / (220 * 1.8), 9);
    expect(says(tight)).toContainEqual(expect.stringContaining('just passes the heel'));
    expect(ankle({ ...tight, opening: { ankle: true } })).toBeCloseTo(0.2, 9);
  });

  test.each([
    [{ heel: mm(397) }, 'measures.ankle'],
    [{ waist: mm(550) }, 'measures.waist'],
    [{ thigh: mm(500) }, 'measures.thigh'],
    [{ crotchToHip: mm(220) }, 'measures.crotchToHip'],
    [{ floorToAnkle: mm(300) }, 'measures.floorToAnkle'],
    [{ calf: mm(0) }, 'measures.calf'],
    [{ rise: { front: mm(270), back: mm(100) } }, 'measures.rise'],
    [{ rise: { front: mm(800), back: mm(330) } }, 'measures.rise'],
  ])('refuses %j', (change, field) => {
    expect(stretchLeg(leg(change))).toMatchObject({ ok: false, error: { field } });
  });

  test('a cloth that hardly stretches, and a foot without measures, are refused', () => {
    const woven = { round: { rest: mm(100), stretched: mm(103) } };
    expect(stretchLeg(leg({}, { gauge: woven }))).toMatchObject({ error: { field: 'gauge.round' } });
    const { foot: _, ...bare } = measures;
    expect(stretchLeg({ gauge, measures: bare, footed: true })).toMatchObject({
      error: { field: 'measures.foot' },
    });
    expect(stretchLeg({ gauge, measures: bare }).ok).toBe(true);
  });

  test.each([
    [{ waist: mm(1010) }, 'The waist is larger'],
    [{ calf: mm(405) }, 'The calf is larger'],
    [{ knee: mm(450) }, 'This knee is unusual'],
    [{ knee: mm(300) }, 'This knee is unusual'],
  ])('warns of %j and drafts it as given', (change, start) => {
    expect(says(leg())).toEqual([]);
    expect(says(leg(change))).toContainEqual(expect.stringContaining(start));
  });

  test('warns of legs that differ by more than 1 cm', () => {
    expect(says(leg({}, { other: { calf: mm(380), thigh: mm(600) } }))).toEqual([]);
    expect(says(leg({}, { other: { calf: mm(381) } }))).toEqual([
      'The legs differ at the calf by more than 1 cm: draft each by itself.',
    ]);
  });

  test('inner seams match and rises hold for any likely body', () => {
    const part = (least: number, most: number) => fc.integer({ min: least, max: most }).map((n) => n / 100);
    fc.assert(
      fc.property(
        fc.integer({ min: 600, max: 1500 }),
        part(70, 110),
        part(52, 70),
        part(20, 27),
        part(55, 75),
        part(55, 75),
        fc.boolean(),
        (hip, waist, thigh, depth, front, back, footed) => {
          const d = hip * depth;
          const result = stretchLeg(
            leg(
              {
                hip: mm(hip),
                waist: mm(hip * waist),
                thigh: mm(hip * thigh),
                waistToCrotch: mm(d),
                crotchToHip: mm(d * 0.35),
                rise: { front: mm(d * 2 * front), back: mm(d * 2 * (back + 0.15)) },
              },
              { footed },
            ),
          );
          if (!result.ok) return expect(result.error.field).toMatch(/^measures\.(rise|waist)$/);
          const { outline, rise } = result.value;
          const length = edgeLengths(outline);
          expect(
            Math.abs(toMm(size(subtract(length.get('inner-front')!, length.get('inner-back')!)))),
          ).toBeLessThan(0.5);
          expect(Math.abs(toMm(length.get('front-rise')!) - toMm(rise.front))).toBeLessThan(0.5);
          expect(Math.abs(toMm(length.get('back-rise')!) - toMm(rise.back))).toBeLessThan(0.5);
        },
      ),
    );
  });

  test('with rises that fit, the waist is a little lower in front, a little higher behind, and the side as measured', () => {
    const { raised, lifted, reach } = made(
      stretchLeg(leg({ rise: { front: mm(243), back: mm(316) } }, { shareAlong: 0 })),
    );
    expect(toMm(raised.front)).toBeCloseTo(-10, 2);
    expect(toMm(raised.back)).toBeCloseTo(20, 2);
    expect(lifted).toBe(0);
    expect(reach.front).toBeLessThan(reach.back);
  });

  test('a longer rise first makes the point at the crotch reach further, then lifts the waist', () => {
    const drafts = Array.from({ length: 9 }, (_, k) =>
      made(stretchLeg(leg({ rise: { front: mm(236 + 5 * k), back: mm(306 + 5 * k) } }, { shareAlong: 0 }))),
    );
    const stands = drafts.map(({ raised, lifted }) => toMm(raised.front) + toMm(lifted));
    for (const [k, { reach, raised, lifted }] of drafts.entries()) {
      const before = drafts[k - 1];
      if (!before) continue;
      expect(reach.front).toBeGreaterThanOrEqual(before.reach.front);
      expect(reach.back).toBeGreaterThanOrEqual(before.reach.back);
      expect(stands[k]).toBeGreaterThanOrEqual(stands[k - 1]! - 0.001);
      expect(Math.min(raised.front, raised.back)).toBeLessThanOrEqual(1000);
      expect(lifted).toBeGreaterThanOrEqual(0);
    }
    expect(drafts[8]!.reach.front).toBe(drafts[7]!.reach.front);
    expect(stands[8]).toBeGreaterThan(stands[7]!);
  });

  test('says when the side is lifted, when the waist still dips there, and when the front is the higher', () => {
    const rises = (front: number, back: number) => says(leg({ rise: { front: mm(front), back: mm(back) } }));
    expect(rises(255, 330)).toEqual([]);
    expect(rises(290, 365)).toContainEqual(expect.stringContaining('the side is drafted'));
    expect(rises(350, 420)).toContainEqual(expect.stringContaining('dips'));
    expect(rises(320, 320)).toContainEqual(expect.stringContaining('higher in front than behind'));
  });

  test('the rises run on smoothly over the inner seam, and the waist over the outer side', () => {
    const { outline } = made(stretchLeg(leg()));
    const edge = (name: string) => outline.edges.find((e) => e.name === name)!;
    const turnAt = (before: string, after: string) => {
      const [last, first] = [edge(before).segments.at(-1)!, edge(after).segments[0]!];
      if (last.kind !== 'curve' || first.kind !== 'curve') throw new Error('a curve is wanted');
      const a = Math.atan2(last.to.y - last.second.y, last.to.x - last.second.x);
      const b = Math.atan2(first.first.y - last.to.y, first.first.x - last.to.x);
      return Math.abs((((b - a) * 180) / Math.PI + 540) % 360) - 180;
    };
    const inside = 180 - Math.abs(turnAt('front-rise', 'inner-front'));
    const other = 180 - Math.abs(turnAt('inner-back', 'back-rise'));
    expect(inside + other).toBeCloseTo(180, 0);
    const [first, second] = edge('waist').segments;
    if (first?.kind !== 'curve' || second?.kind !== 'curve') throw new Error('two curves are wanted');
    const slope = (p: { x: number; y: number }, q: { x: number; y: number }) => (q.y - p.y) / (q.x - p.x);
    expect(slope(first.second, first.to)).toBeCloseTo(slope(first.to, second.first), 4);
  });
});
