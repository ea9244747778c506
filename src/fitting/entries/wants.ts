import type { OwnStep } from '../../outfit/outfit.ts';
import type { Level, Role, View, Want } from '../entry.ts';

/** Panels of the front, from the centre. */
export const FRONT: readonly Role[] = ['centre-front', 'side-front'];
/** Panels of the back, from the centre. */
export const BACK: readonly Role[] = ['centre-back', 'side-back'];
/** Panels under the arm. */
export const SIDE: readonly Role[] = ['side-front', 'side-back'];
/** Panels all round. */
export const BODY: readonly Role[] = [...FRONT, ...BACK];
/** From every side. */
export const ALL_ROUND: readonly View[] = ['front', 'back', 'side'];
/** Both parts of a leg. */
export const LEGS: readonly Role[] = ['leg', 'lower-leg'];

type Bound = 'exact' | 'at least' | 'some';

/*
 * Amounts are for one side of the body. What is pinched or missing all round the body is halved: `by` is 0.5. A sleeve, a
 * cuff and a leg go round by themselves, in one piece or in several, so that what is pinched there counts whole. At the knee
 * only the upper part is named; the lower part follows, because the knee seam holds both.
 *
 * A wedge that runs out to nothing (at the armhole, at the side), or a curve drawn anew, is neither a width nor a length of a
 * whole piece: such a cause wants nothing here, and its words alone say what to change.
 */

/** These pieces are wider together, or narrower where `by` is below zero. */
export const width = (of: readonly Role[], level: Level, by: number, bound: Bound = 'exact'): Want => ({
  kind: 'width',
  of,
  level,
  by,
  bound,
});

/** These pieces, one below the other, are longer together. Pieces beside them follow, because their seams are as long. */
export const length = (
  of: readonly Role[],
  from: Level,
  to: Level,
  by: number,
  bound: Bound = 'exact',
): Want => ({ kind: 'length', of, from, to, by, bound });

/** Something is sewn in besides. */
export const sewnIn = (name: string, on: readonly Role[], ...steps: readonly OwnStep[]): Want => ({
  kind: 'add',
  name,
  on,
  steps,
});

/** A step of what is sewn in; its minutes are for one side of the body where it is done to a pair. */
export const step = (say: string, station: OwnStep['station'], minutes: number): OwnStep => ({
  say,
  station,
  minutes,
  rest: 0,
  final: false,
  wets: false,
});

/** Pads that fill a sloping shoulder. */
export const shoulderPads: Want = sewnIn(
  'Shoulder pads',
  ['centre-front', 'side-front'],
  step('Pin a pad under each shoulder and shift it until the folds are gone', 'try-on', 3),
  step('Tack each pad to the shoulder seam and to the armhole seam allowance', 'hand', 6),
);

/** The elastic of a casing is drawn shorter: of one for each piece, or of one that goes through both of a pair. */
export function shorterElastic(of: string, on: readonly Role[], through: 'each' | 'both'): Want {
  const [open, draw, close] = through === 'each' ? [5, 6, 4] : [3, 3, 2];
  return sewnIn(
    `Shorter elastic in the ${of}`,
    on,
    step(`Open the casing of the ${of} for 2 in (50 mm) and draw the elastic out`, 'hand', open),
    step(`Pin the elastic of the ${of} shorter on the body, then stitch its ends`, 'machine', draw),
    step(`Close the casing of the ${of}`, 'machine', close),
  );
}
