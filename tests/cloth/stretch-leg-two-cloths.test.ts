import { describe, expect, test } from 'vitest';
import { stretchLeg } from '../../src/cloth/stretch-leg.ts';
import { partLeg } from '../../src/cloth/stretch-leg-cut.ts';
import { legOfTwoCloths, type TwoClothsInput } from '../../src/cloth/stretch-leg-two-cloths.ts';
import { mm, nm, times, toMm } from '../../src/length/index.ts';
import { clipLine, edgeLengths, flattenOutline, type Outline } from '../../src/shape/index.ts';
import { bodies, legOf } from '../outside/stretch-bodies.ts';
import { made } from './good.ts';

const cloth = (round: number, along: number) => ({
  gauge: {
    round: { rest: mm(100), stretched: mm(100 + round) },
    along: { rest: mm(100), stretched: mm(100 + along) },
  },
});
const body = bodies[25]!;
const leg = (change: Partial<TwoClothsInput> = {}): TwoClothsInput => ({
  ...cloth(60, 30),
  measures: legOf(body),
  below: cloth(100, 60),
  aboveKnee: mm(120),
  ...change,
});
const widthAt = (outline: Outline, y: number): number =>
  clipLine(flattenOutline(outline, mm(0.01)), { through: { x: nm(0), y: nm(y) }, angle: 0 }).reduce(
    (sum, s) => sum + toMm(nm(s.to - s.from)),
    0,
  );
const lengthOf = (outline: Outline, name: string): number => toMm(edgeLengths(outline).get(name)!);

describe('a leg of two cloths that stretch differently', () => {
  test.each(bodies.map((one) => [one.name, legOf(one)] as const))(
    '%s: each girth by its own cloth',
    (_, measures) => {
      const { upper, lower, eased } = made(legOfTwoCloths(leg({ measures, footed: true })));
      // A third of 60 % is 20 %: 0.2 / 1.2 of the measure. A third of 100 % is held to a fifth.
      expect(upper.reduction.round).toBeCloseTo(0.2 / 1.2, 9);
      expect(lower.reduction.round).toBeCloseTo(0.2, 9);
      const [up, low] = [
        made(stretchLeg(leg({ measures, opening: { ankle: true } }))),
        made(stretchLeg({ ...cloth(100, 60), measures })),
      ];
      const level = (draft: typeof up, name: string) => draft.levels.find((l) => l.name === name)!.y;
      expect(widthAt(upper.outline, level(up, 'thigh'))).toBeCloseTo(toMm(measures.thigh) / 1.2, 1);
      expect(widthAt(lower.outline, level(low, 'knee'))).toBeCloseTo(toMm(measures.knee) * 0.8, 1);
      expect(widthAt(lower.outline, level(low, 'calf'))).toBeCloseTo(toMm(measures.calf) * 0.8, 1);
      for (const { outline } of [upper, lower])
        expect(lengthOf(outline, 'inner-front')).toBeCloseTo(lengthOf(outline, 'inner-back'), 2);
      expect(lengthOf(lower.outline, 'toe-front')).toBeCloseTo(lengthOf(lower.outline, 'toe-back'), 2);
      // Both edges lie round the same place of the body, so stretched back to it they are nearly as long.
      const there = [
        toMm(upper.cut) / (1 - upper.reduction.round),
        toMm(lower.cut) / (1 - lower.reduction.round),
      ];
      expect(there[1]! / there[0]!).toBeCloseTo(1, 1);
      expect(eased.part).toBe('lower');
      expect(toMm(lower.cut) * (1 + eased.by)).toBeCloseTo(toMm(upper.cut), 6);
      expect(upper.quarters.map((p) => toMm(p.x))).toEqual(
        [-2, -1, 0, 1, 2].map((k) => expect.closeTo((k * toMm(upper.cut)) / 4, 3)),
      );
    },
  );

  test('of one cloth twice, it is the leg parted', () => {
    const same = leg({ below: cloth(60, 30) });
    const { upper, lower, eased } = made(legOfTwoCloths(same));
    const whole = made(stretchLeg(same));
    const knee = whole.levels.find((l) => l.name === 'knee')!.y;
    const parts = made(partLeg(whole, nm(knee - times(mm(120), 1 - whole.reduction.along))));
    expect(upper.outline).toEqual(parts.upper);
    expect(upper.cut).toBe(lower.cut);
    expect(eased.by).toBe(0);
    expect(lower.outline.edges.map((e) => e.name)).toEqual(parts.lower.edges.map((e) => e.name));
  });

  test('the ankle is judged by the lower cloth, the waist by the upper', () => {
    const measures = { ...legOf(body), heel: times(legOf(body).ankle, 1.7) };
    expect(legOfTwoCloths(leg({ measures })).ok).toBe(true);
    expect(legOfTwoCloths(leg({ measures, ...cloth(100, 60), below: cloth(60, 30) }))).toMatchObject({
      ok: false,
      error: { field: 'measures.ankle' },
    });
    const narrow = { ...legOf(body), waist: times(legOf(body).hip, 1 / 1.7) };
    expect(legOfTwoCloths(leg({ measures: narrow }))).toMatchObject({
      ok: false,
      error: { field: 'measures.waist' },
    });
  });

  test('edges far apart are said, and a cloth that does not stretch is refused where it is', () => {
    expect(made(legOfTwoCloths(leg())).advice.some(({ say }) => say.includes('cloths meet'))).toBe(false);
    const far = made(legOfTwoCloths(leg({ ...cloth(25, 20) })));
    expect(far.advice).toContainEqual(
      expect.objectContaining({ say: expect.stringContaining('the lower edge is') }),
    );
    expect(new Set(far.advice.map((a) => a.say)).size).toBe(far.advice.length);
    expect(legOfTwoCloths(leg({ below: cloth(5, 0) }))).toMatchObject({
      error: { field: 'below.gauge.round' },
    });
    expect(legOfTwoCloths(leg({ ...cloth(5, 0) }))).toMatchObject({ error: { field: 'gauge.round' } });
  });

  test.each([mm(600), mm(-600)])('refuses a level off the leg', (aboveKnee) => {
    expect(legOfTwoCloths(leg({ aboveKnee }))).toMatchObject({ ok: false, error: { field: 'aboveKnee' } });
  });
});
