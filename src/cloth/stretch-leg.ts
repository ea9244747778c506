import { inBothRules } from '../length/both-rules.ts';
import { type Length, nm, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { flattenOutline, pointOf } from '../shape/flatten.ts';
import { sidesCross } from '../shape/offset-crossing.ts';
import type { OutlineEdge } from '../shape/outline.ts';
import { type Advice, advise } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice } from './source.ts';
import { reductions } from './stretch.ts';
import { legAdvice, measuresFit, passing, waistAdvice } from './stretch-leg-checks.ts';
import { type Cubic, mirrored, segmentOf, shiftedDown, smoothDown, turned } from './stretch-leg-curves.ts';
import { footTube, toeCurves } from './stretch-leg-foot.ts';
import {
  ANKLE_PART,
  BACK_SHARE,
  CALF_PART,
  HIP_PART,
  HIP_WITHIN,
  INNER_LEAN,
  type LegInput,
  type LegLevel,
  type LegMade,
  type LevelName,
  MOST_LIFT,
  REACH_BACK,
  REACH_FRONT,
  THIGH_BELOW,
  THIGH_WITHIN,
  TOE_ROUND,
  WAIST_HIGHER,
  WAIST_LOWER,
} from './stretch-leg-measures.ts';
import { legTop } from './stretch-leg-top.ts';

const edge = (name: string, curves: readonly Cubic[]): OutlineEdge => ({
  name,
  segments: curves.map(segmentOf),
});

const contradicts = (field: string, what: string): Result<never, Refusal> =>
  bad(
    refusal(
      `measures.${field}`,
      `${what} does not fit the other measures of the hip and the rise.`,
      'Measure it once more, with the waist and the crotch at the same levels as the rest.',
    ),
  );

/**
 * Drafts one leg of stretch cloth in one piece: the whole leg round, and half the body above the crotch, without an
 * outer seam. The inner seams mirror each other, so they match; each rise is as long as measured, less the part used
 * along; each girth is its measure less the part used round. The ankle and the waist are made less small where
 * they would not pass the heel and the hip. Rises keep their length by lifting the waist at the front and back, since the points at
 * the crotch are shorter than the body is deep.
 *
 * Cut two, one of them turned over.
 *
 * Refused: a cloth that hardly stretches (this draft is only for stretch cloth: common practice, no source); measures
 * missing or out of order; a thigh under half the hip; an ankle or waist that cannot pass and has no
 * opening; a rise or waist that no height of the waist can meet.
 */
export function stretchLeg(input: LegInput): Result<LegMade, Refusal> {
  const { measures, footed = false, opening = {} } = input;
  const cut = reductions(input);
  if (!cut.ok) return cut;
  const fit = measuresFit(input);
  if (!fit.ok) return fit;
  const { round, along, stretch } = cut.value;
  const assumed = [...cut.value.assumed];
  const advice: Advice[] = legAdvice(input);
  if (stretch.along === 0) {
    const say = 'The cloth was not found to stretch along the leg: try how the knee bends before cutting.';
    advice.push(advise(say, practice));
  }

  const eased = (
    field: 'ankle' | 'waist',
    over: string,
    wide: Length,
    open = false,
  ): Result<number, Refusal> => {
    if (open) return good(round);
    const passes = passing(field, over, measures[field], wide, stretch.round, round);
    if (passes.ok && passes.value < round) {
      const percent = (part: number) => `${(part * 100).toFixed(0)} %`;
      const say = `The ${field} is made ${percent(passes.value)} smaller instead of ${percent(round)}, so that it just passes the ${over}: try it on a sample.`;
      advice.push(advise(say, practice));
    }
    return passes;
  };
  const ankleBy = eased('ankle', 'heel', measures.heel, opening.ankle);
  if (!ankleBy.ok) return ankleBy;
  const waistBy = eased('waist', 'hip', measures.hip, opening.waist);
  if (!waistBy.ok) return waistBy;

  const assume = (given: Length | undefined, usual: number, say: string): number => {
    if (given === undefined) assumed.push(say);
    return given ?? usual;
  };
  const long = 1 - along;
  const { waistToCrotch, crotchToKnee, kneeToFloor } = measures;
  const toHip = assume(
    measures.crotchToHip,
    waistToCrotch * HIP_PART.value,
    'Hip a third of the way up to the waist.',
  );
  const [lowest, highest] = HIP_WITHIN.value;
  const lowestHip = waistToCrotch * lowest;
  if (toHip < lowestHip)
    assumed.push('The hip is drafted a little higher than measured, above the curve of the crotch.');
  const fromFloor = assume(
    measures.floorToAnkle,
    kneeToFloor * ANKLE_PART.value,
    'Ankle at a quarter of the height of the knee.',
  );
  const fromHip = Math.min(Math.max(toHip, lowestHip), waistToCrotch * highest) * long;

  const wholeRise =
    'whole' in measures.rise
      ? {
          front: times(measures.rise.whole, 1 - BACK_SHARE.value),
          back: times(measures.rise.whole, BACK_SHARE.value),
        }
      : measures.rise;
  if ('whole' in measures.rise) assumed.push('Of the rise, 56 % lies behind.');
  const rise = { front: times(wholeRise.front, long), back: times(wholeRise.back, long) };

  const halfOf = (measure: Length, reduction: number): number => times(measure, 1 - reduction) / 2;
  const hip = halfOf(measures.hip, round);
  const within = ([least, most]: readonly [number, number]) => [least * 2 * hip, most * 2 * hip] as const;
  const height = waistToCrotch * long;
  const top = legTop({
    waist: halfOf(measures.waist, waistBy.value),
    hip,
    reach: {
      front: within(REACH_FRONT.value),
      back: within(REACH_BACK.value),
      both: times(measures.thigh, 1 - round) - hip,
    },
    stands: { front: -WAIST_LOWER.value, back: WAIST_HIGHER.value },
    mostLift: MOST_LIFT.value * height,
    crotchLevel: height,
    hipLevel: height - fromHip,
    rise,
  });
  if (top === 'waist') return contradicts('waist', 'The waist');
  if (top === 'front' || top === 'back') return contradicts('rise', `The ${top} rise`);
  const adviceAbove = waistAdvice(top, height);
  advice.push(...adviceAbove);
  if (top.lift > 1e6) {
    const by = inBothRules(nm(top.lift));
    assumed.push(`The side is drafted ${by} higher than measured, so that the waist runs smoothly.`);
  }

  // From here on the datum is the waist at the side as drafted.
  const crotchLevel = height + top.lift;
  const knee = crotchLevel + crotchToKnee * long;
  const ankle = knee + (kneeToFloor - fromFloor) * long;
  const calf = knee + CALF_PART.value * (ankle - knee);
  const thigh = crotchLevel + Math.min(THIGH_BELOW.value, crotchToKnee * THIGH_WITHIN.value) * long;
  assumed.push(
    `Calf a third of the way from the knee to the ankle; thigh ${inBothRules(THIGH_BELOW.value)} below the crotch.`,
  );

  const levels: LegLevel[] = [];
  const girth = (name: LevelName, y: number, measure: Length, reduction: number): number => {
    const finished = times(measure, 1 - reduction);
    levels.push({ name, y: nm(y), measure, reduction, finished });
    return finished;
  };
  girth('waist', 0, measures.waist, waistBy.value);
  girth('hip', crotchLevel - fromHip, measures.hip, round);
  const spots = [
    { x: girth('thigh', thigh, measures.thigh, round) / 2, y: thigh },
    { x: girth('knee', knee, measures.knee, round) / 2, y: knee },
    { x: girth('calf', calf, measures.calf, round) / 2, y: calf },
    { x: girth('ankle', ankle, measures.ankle, ankleBy.value) / 2, y: ankle },
  ];

  let bottom: OutlineEdge[] = [
    { name: 'ankle', segments: [{ kind: 'line', to: pointOf(-(spots[3]?.x ?? 0), ankle) }] },
  ];
  if (footed && measures.foot) {
    const tube = footTube(ankle, fromFloor, measures.foot.length, along, stretch.along);
    advice.push(...tube.advice);
    if (tube.ball <= tube.heel) return contradicts('foot', 'The foot');
    spots.push({ x: girth('heel', tube.heel, measures.heel, round) / 2, y: tube.heel });
    const half = girth('ball', tube.ball, measures.foot.ball, round) / 2;
    spots.push({ x: half, y: tube.ball });
    const start = Math.max(tube.ball + 1000, tube.tip - half * TOE_ROUND.value);
    spots.push({ x: half, y: start });
    const toe = toeCurves(half, start, tube.tip);
    bottom = [edge('toe-front', toe), edge('toe-back', toe.map(mirrored).map(turned).toReversed())];
  }
  const inner = smoothDown(
    [{ x: (hip + top.reach.front + top.reach.back) / 2, y: crotchLevel }, ...spots],
    INNER_LEAN.value,
  );
  const lowered = (curves: readonly Cubic[]): Cubic[] => curves.map((curve) => shiftedDown(curve, top.lift));
  const [waist, front, back] = [lowered(top.waist), lowered(top.front), lowered(top.back)];
  const start = waist[0]?.[0] ?? { x: 0, y: 0 };
  const outline = {
    start: pointOf(start.x, start.y),
    edges: [
      edge('waist', waist),
      edge('front-rise', front),
      edge('inner-front', inner),
      ...bottom,
      edge('inner-back', inner.map(mirrored).map(turned).toReversed()),
      edge('back-rise', back.map(turned).toReversed()),
    ],
  };
  if (sidesCross(flattenOutline(outline))) return contradicts('rise', 'The rise');
  return good({
    outline,
    levels,
    rise,
    raised: { front: nm(top.raised.front), back: nm(top.raised.back) },
    lifted: nm(top.lift),
    reach: { front: nm(top.reach.front), back: nm(top.reach.back) },
    crotchLevel: nm(crotchLevel),
    reduction: { round, along },
    advice,
    adviceAbove,
    assumed,
  });
}
