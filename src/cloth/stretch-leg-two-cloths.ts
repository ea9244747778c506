import { inBothRules } from '../length/both-rules.ts';
import { type Length, subtract, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Outline, Point } from '../shape/outline.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice } from './source.ts';
import type { ReductionInput } from './stretch.ts';
import { stretchLeg } from './stretch-leg.ts';
import { frillLines, partLeg } from './stretch-leg-cut.ts';
import type { LegInput, LegMade } from './stretch-leg-measures.ts';

/**
 * Two edges that differ by more than this part of the longer are hard to join without a pucker.
 * @unit part
 */
export const EDGES_DIFFER: Sourced<number> = { value: 0.1, source: practice };

/** A leg whose lower part is of another cloth. */
export interface TwoClothsInput extends LegInput {
  /** The cloth below the level, and how much of its stretch is used. The cloth above is that of the leg itself. */
  readonly below: ReductionInput;
  /** Where the cloths meet: how far above the middle of the knee, on the body; below it with a minus sign. */
  readonly aboveKnee: Length;
}

/** One part of the leg, drafted for its own cloth. */
export interface ClothPart {
  readonly outline: Outline;
  /** Length of its edge where the cloths meet, and the five points that part it in quarters, from back to front. */
  readonly cut: Length;
  readonly quarters: readonly Point[];
  /** How far down its draft the cloths meet, from the waist at the side. */
  readonly level: Length;
  readonly reduction: LegMade['reduction'];
  /** The whole leg drafted for this cloth, of which the part is cut. */
  readonly leg: LegMade;
}

/** What {@link legOfTwoCloths} gives back. */
export interface TwoClothsMade {
  readonly upper: ClothPart;
  readonly lower: ClothPart;
  /** Which edge is stretched as the two are sewn, and by what part of its length; 0 where they are as long. */
  readonly eased: { readonly part: 'upper' | 'lower'; readonly by: number };
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Drafts a leg of two cloths, each part by what its own cloth stretches: girths and lengths above the level by the
 * reductions of the one, below it by those of the other. The inner seams of each part match each other. Where the cloths
 * meet, both edges lie round the same place of the body; the edge of the cloth that stretches more is shorter, and is
 * stretched to the other, quarter by quarter, as it is sewn.
 *
 * Refused: what {@link stretchLeg} refuses for either cloth, with the field of the lower under `below`; a level not
 * between the crotch and the end of the inner seam.
 */
export function legOfTwoCloths(input: TwoClothsInput): Result<TwoClothsMade, Refusal> {
  const { below, aboveKnee, measures, footed, opening, other, ...cloth } = input;
  const shared = { measures, ...(other && { other }) };
  // The ankle and the foot are no concern of the upper cloth, nor is the waist of the lower.
  const above = stretchLeg({ ...cloth, ...shared, opening: { ...opening, ankle: true } });
  if (!above.ok) return above;
  const under = stretchLeg({
    ...below,
    ...shared,
    ...(footed && { footed }),
    opening: { ...opening, waist: true },
  });
  if (!under.ok) {
    const { field } = under.error;
    return bad({ ...under.error, field: /^(gauge|share)/.test(field) ? `below.${field}` : field });
  }
  const upper = partOf(above.value, aboveKnee, 'upper');
  if (!upper.ok) return upper;
  const lower = partOf(under.value, aboveKnee, 'lower');
  if (!lower.ok) return lower;
  const [a, b] = [upper.value.cut, lower.value.cut];
  const eased =
    a < b ? ({ part: 'upper', by: b / a - 1 } as const) : ({ part: 'lower', by: a / b - 1 } as const);

  const advice: Advice[] = [
    ...above.value.advice,
    ...under.value.advice.filter((one) => !under.value.adviceAbove.includes(one)),
  ];
  if (eased.by * Math.min(a, b) > Math.max(a, b) * EDGES_DIFFER.value) {
    const say = `Where the cloths meet, the ${eased.part} edge is ${inBothRules(subtract(...longerFirst(a, b)))} shorter: pin the quarters together, stretch it as you sew, and try the join on scraps first.`;
    advice.push(advise(say, practice));
  }
  const seen = new Set<string>();
  return good({
    upper: upper.value,
    lower: lower.value,
    eased,
    advice: advice.filter(({ say }) => !seen.has(say) && seen.add(say)),
    assumed: [
      ...above.value.assumed.map((one) => `Above: ${one}`),
      ...under.value.assumed.map((one) => `Below: ${one}`),
    ],
  });
}

const longerFirst = (a: Length, b: Length): readonly [Length, Length] => (a > b ? [a, b] : [b, a]);

/** One part of a whole draft, cut where the cloths meet on the body. */
function partOf(leg: LegMade, aboveKnee: Length, which: 'upper' | 'lower'): Result<ClothPart, Refusal> {
  const knee = leg.levels.find(({ name }) => name === 'knee')?.y ?? leg.crotchLevel;
  const level = subtract(knee, times(aboveKnee, 1 - leg.reduction.along));
  const parts = partLeg(leg, level);
  const line = frillLines(leg, [level]);
  const quarters = line.ok ? line.value[0]?.quarters : undefined;
  if (!parts.ok || !quarters) {
    return bad(
      refusal(
        'aboveKnee',
        'The cloths would not meet between the crotch and the end of the inner seam.',
        'Give a level lower than the crotch and higher than the ankle.',
      ),
    );
  }
  return good({
    outline: parts.value[which],
    cut: parts.value.cut,
    quarters,
    level,
    reduction: leg.reduction,
    leg,
  });
}
