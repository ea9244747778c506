import { inBothRules } from '../length/both-rules.ts';
import { type Length, longer, nm, size, subtract, zero } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise } from './advice.ts';
import { type Refusal, refusal } from './refusal.ts';
import { practice } from './source.ts';
import {
  BODY_SURVEY,
  DIP_UNLIKELY,
  HIGH_WAIST,
  HIGHEST_ANKLE,
  KNEE_BASE,
  KNEE_BY_CALF,
  KNEE_OF_CALF,
  KNEE_OF_THIGH,
  KNEE_UNLIKELY,
  LEGS_DIFFER,
  type LegInput,
  LIFT_UNLIKELY,
} from './stretch-leg-measures.ts';

const NEEDED = [
  'heel',
  'ankle',
  'calf',
  'knee',
  'thigh',
  'hip',
  'waist',
  'waistToCrotch',
  'crotchToKnee',
  'kneeToFloor',
] as const;

/** Refuses a measure of zero or less, a foot without measures, heights that do not follow each other, and a thigh under half the hip. */
export function measuresFit({ measures, footed }: LegInput): Result<true, Refusal> {
  const at = (field: string) => `measures.${field}`;
  const foot = measures.foot ?? { length: zero, ball: zero };
  const given: [string, Length][] = NEEDED.map((name) => [name, measures[name]]);
  for (const name of ['lowerThigh', 'crotchToHip', 'floorToAnkle'] as const)
    if (measures[name] !== undefined) given.push([name, measures[name]]);
  for (const part of Object.values(measures.rise)) given.push(['rise', part]);
  if (footed) given.push(['foot', foot.length], ['foot', foot.ball]);
  for (const [name, value] of given) {
    if (value <= 0) {
      return bad(refusal(at(name), 'This measure is missing or not above zero.', 'Measure it on the body.'));
    }
  }
  if (measures.crotchToHip !== undefined && measures.crotchToHip >= measures.waistToCrotch) {
    return bad(
      refusal(at('crotchToHip'), 'The hip lies above the waist.', 'Give less than from waist to crotch.'),
    );
  }
  if (
    measures.floorToAnkle !== undefined &&
    measures.floorToAnkle >= measures.kneeToFloor * HIGHEST_ANKLE.value
  ) {
    return bad(
      refusal(at('floorToAnkle'), 'The ankle lies too near the knee.', 'Measure it just above the bones.'),
    );
  }
  if (measures.thigh * 2 <= measures.hip) {
    const cure = 'Measure the thigh just below the crotch; two thighs are more than the hip.';
    return bad(refusal(at('thigh'), 'The thigh is less than half the hip.', cure));
  }
  return good(true);
}

/**
 * The part by which a narrow place can be made smaller and still stretch over a wider one: as much as wanted, less
 * where that would not pass, and refused where it does not pass even at the body's own measure.
 */
export function passing(
  field: string,
  over: string,
  narrow: Length,
  wide: Length,
  stretch: number,
  wanted: number,
): Result<number, Refusal> {
  const most = 1 - wide / (narrow * (1 + stretch));
  if (most >= 0) return good(Math.min(wanted, most));
  const percent = Math.ceil((wide / narrow - 1) * 100);
  return bad(
    refusal(
      `measures.${field}`,
      `The ${field} cannot stretch over the ${over}: it would need ${percent} % of stretch, and the cloth gives ${Math.floor(stretch * 100)} %.`,
      `Take a cloth that stretches ${percent} % or more round, or put an opening at the ${field}.`,
    ),
  );
}

/** What is unlikely or needs care, without being wrong. */
export function legAdvice({ measures, other }: LegInput): Advice[] {
  const { waist, hip, calf, lowerThigh, knee, thigh } = measures;
  const advice: Advice[] = [];
  if (longer(waist, hip)) {
    advice.push(
      advise(
        'The waist is larger than the hip, so nothing keeps the leg up by itself: plan braces, or a wide band tried on first.',
        BODY_SURVEY,
      ),
    );
  }
  if (lowerThigh !== undefined && longer(calf, lowerThigh)) {
    advice.push(
      advise(
        'The calf is larger than the lower thigh, as in some people: measure both once more, and expect the cloth to gather above the calf.',
        BODY_SURVEY,
      ),
    );
  }
  const [least, most] = KNEE_BY_CALF.value;
  const expected =
    lowerThigh === undefined
      ? undefined
      : KNEE_BASE.value + KNEE_OF_THIGH.value * lowerThigh + KNEE_OF_CALF.value * calf;
  const unlikely =
    expected === undefined
      ? knee < calf * least || knee > calf * most
      : Math.abs(knee - expected) > KNEE_UNLIKELY.value;
  if (unlikely || longer(knee, thigh)) {
    advice.push(
      advise(
        'This knee is unusual for the calf and the thigh: measure it again at the middle of the kneecap. The draft uses it as given.',
        KNEE_BY_CALF.source,
      ),
    );
  }
  for (const name of ['ankle', 'calf', 'knee', 'thigh'] as const) {
    const there = other?.[name];
    if (there !== undefined && longer(size(subtract(there, measures[name])), LEGS_DIFFER.value)) {
      advice.push(
        advise(`The legs differ at the ${name} by more than 1 cm: draft each by itself.`, practice),
      );
    }
  }
  return advice;
}

/** What is said about a waist that the rises do not let stand as it should. Heights in nanometres. */
export function waistAdvice(
  {
    raised,
    lift,
  }: { readonly raised: { readonly front: number; readonly back: number }; readonly lift: number },
  height: number,
): Advice[] {
  const advice: Advice[] = [];
  const said = (length: number): string => inBothRules(nm(length));
  if (lift > LIFT_UNLIKELY.value) {
    const say = `The rises are long for the height from waist to crotch, so the side is drafted ${said(lift)} higher than measured: measure both again, and trim the waist at the try-on.`;
    advice.push(advise(say, practice));
  }
  const dip = Math.min(raised.front, raised.back);
  if (dip > DIP_UNLIKELY.value) {
    const say = `Even so the waist dips ${said(dip)} at the side. Measure the rise and the height again before you cut.`;
    advice.push(advise(say, practice));
  }
  if (raised.front > raised.back + DIP_UNLIKELY.value) {
    const say = `The waist stands ${said(raised.front - raised.back)} higher in front than behind, as a full belly asks: measure both parts of the rise once more.`;
    advice.push(advise(say, practice));
  }
  if (Math.max(raised.front, raised.back) > height * HIGH_WAIST.value) {
    const say =
      'The rise is long for the height of the hip, so the waist stands high at the front or back: measure the rise again, and trim the waist at the try-on.';
    advice.push(advise(say, practice));
  }
  if (Math.min(raised.front, raised.back) < -height * HIGH_WAIST.value) {
    const say =
      'The rise is short for the height of the hip, so the waist lies low at the front or back: measure the rise again before you cut.';
    advice.push(advise(say, practice));
  }
  return advice;
}
