import { bindingWidth } from '../../cloth/bias.ts';
import type { FrillCutMade } from '../../cloth/frill-cut.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, type Length, times } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { OwnStep, Piece, Work } from '../outfit.ts';
import { pieceOf, stepOf } from './parts.ts';
import { rectangle } from './rectangle.ts';
import { eachOf } from './runs.ts';
import { edgeOf } from './sleeve-made.ts';

/** Fields that every gathered frill has. */
export const FRILL_FIELDS = {
  depth: {
    kind: 'length',
    label: 'Finished depth',
    means: 'From the seam to the finished outer edge.',
    start: { in: '2 1/2', mm: '65' },
  },
  fullness: {
    kind: 'number',
    label: 'Fullness',
    means: 'How many times as long as the edge or seam it is sewn to.',
    start: '2.5',
    unit: 'times',
  },
} as const;

/** How the outer edge of a frill may be finished. */
export const FINISH_FIELD = {
  kind: 'choice',
  label: 'Outer edge',
  options: [
    { value: 'hem', label: 'narrow hem' },
    { value: 'bound', label: 'bound with a bias strip' },
  ],
} as const;

/** In how many parts both edges are marked, so that the fullness comes out even. */
export const MARKS_FIELD = {
  kind: 'choice',
  usual: true,
  label: 'Gathers marked',
  options: [
    { value: '4', label: 'in quarters' },
    { value: '8', label: 'in eighths' },
  ],
  start: '8',
} as const;

/** A gathered frill, as a strip with its seam edge uppermost. */
export interface FrillTold {
  readonly id: (part?: string) => string;
  readonly name: string;
  readonly cloth: string;
  readonly cut: 'one' | 'pair';
  readonly allowance: Length;
  readonly depth: Length;
  readonly made: Pick<FrillCutMade, 'strip' | 'strips' | 'fullness'>;
  readonly divide: 4 | 8;
  readonly marker: string;
  /** `folded`: cut double and folded lengthwise, so that the outer edge is the fold. */
  readonly finish: 'hem' | 'bound' | 'folded';
  /** `sewn`: a join of its own closes it into a ring. */
  readonly ends: 'hem' | 'ring' | 'sewn';
  /** Degrees of the grain from the depth of the frill: 90 where it runs along its length. */
  readonly grain: 0 | 45 | 90;
}

/** The most fullness that the description of an outfit holds. */
const MOST_FULLNESS = 6;
/** A frill is bound this wide. */
const BOUND_WIDE = inches(1, 4);

/** Refused: more fullness than can be written down. */
export const tooFull = (fullness: number): Refusal | undefined =>
  fullness > MOST_FULLNESS
    ? refusal(
        'fullness',
        'So full a frill cannot be drawn up to its place.',
        `Give a fullness of up to ${MOST_FULLNESS}; 2.5 is usual.`,
      )
    : undefined;

/** The piece of a frill and all that is done to it before it is sewn on. Refused as the width of a binding is. */
export function frillParts(
  told: FrillTold,
): Result<{ readonly pieces: readonly Piece[]; readonly works: readonly Work[] }, Refusal> {
  const { id, name, cloth, cut, allowance, depth, made, divide, marker, finish, ends, grain } = told;
  const folded = finish === 'folded';
  const on = id();
  const it = eachOf(cut, name);
  const high = times(depth, folded ? 2 : 1);
  const piece = pieceOf({
    id: on,
    name,
    cloth,
    cut,
    allowance,
    ...(grain === 0 ? {} : { grain }),
    outline: rectangle(made.strip, high, ['seam', 'front-end', folded ? 'inner' : 'outer', 'back-end']),
    marks: folded
      ? [
          { name: 'Fold', at: { x: times(depth, 0), y: depth } },
          { name: 'Fold', at: { x: made.strip, y: depth } },
        ]
      : [],
  });
  const works: Work[] = [];
  const steps: OwnStep[] = [];
  const binding = bindingWidth({ kind: 'single', width: BOUND_WIDE });
  if (!binding.ok) return binding;
  const strip = binding.value.cut;
  const several = made.strips > 1;
  // A ring’s own join takes its ends; all else is turned, bound, stitched or folded in here.
  const finished = [
    ...(ends === 'sewn' ? [] : ['front-end', 'back-end']),
    ...(folded ? ['inner'] : finish === 'hem' || several ? ['outer'] : []),
  ];
  const turn = inBothRules(times(allowance, 1 / 2));
  const edges = [
    ...(finish === 'hem' ? ['the outer edge'] : []),
    ...(ends === 'hem' && !folded ? ['both ends'] : []),
  ].join(' and ');

  if (several) {
    steps.push(
      stepOf(
        `Join the ${made.strips} strips of ${it} end to end${grain === 45 ? ', on the thread of the cloth' : ''}, and trim to length`,
        'machine',
        4 * made.strips,
      ),
      stepOf(`Press the joins of ${it} open`, 'iron', made.strips),
    );
  }
  if (ends === 'ring') steps.push(stepOf(`Join the two ends of ${it} and press the seam open`, 'machine', 5));
  if (finish === 'bound' && several) {
    // Strips are joined before they are bound, so the binding cannot be the work that comes before them.
    steps.push(
      stepOf(`Cut the outer edge of ${it} down to its seam line`, 'cut', 4, { final: true }),
      stepOf(`Bind the outer edge of ${it} with a bias strip ${inBothRules(strip)} wide`, 'machine', 16),
    );
  } else if (finish === 'bound') {
    works.push({ kind: 'bind-edge', id: id('binding'), name: `${name} binding`, on, edge: 'outer', strip });
  }
  if (edges !== '') {
    steps.push(
      stepOf(`Turn ${edges} of ${it} in twice, ${turn} each time, and stitch`, 'machine', 10),
      stepOf(`Press ${edges} of ${it}`, 'iron', 3),
    );
  }
  if (folded) {
    if (ends === 'hem')
      steps.push(
        stepOf(`Fold ${it} lengthwise, right sides together, and stitch across both ends`, 'machine', 5),
      );
    steps.push(
      stepOf(
        `Fold ${it} lengthwise, ${ends === 'hem' ? 'right side out' : 'wrong sides together'}, and press the fold`,
        'iron',
        6,
      ),
      stepOf(`Baste the two raw edges of ${it} together`, 'machine', 4),
    );
  }
  if (steps.length > 0)
    works.push({
      kind: 'own',
      id: id('edges'),
      name: `Edges of the ${name.toLowerCase()}`,
      on,
      with: [],
      when: 'flat',
      finishes: finished.map((edge) => edgeOf(on, edge)),
      steps,
    });
  works.push({
    kind: 'gather',
    id: id('gathers'),
    name: `${name} gathers`,
    on,
    edge: 'seam',
    fullness: made.fullness,
    divide,
    marker,
  });
  return good({ pieces: [piece], works });
}

/** Refusals of the arithmetic of frills about what is no field of a unit, at the place that they speak of. */
export function atPlace<T>(made: Result<T, Refusal>, place: string): Result<T, Refusal> {
  if (made.ok) return made;
  const { field, wrong, cure } = made.error;
  return field === 'place'
    ? bad(refusal(`at.${place}`, wrong, cure))
    : field === 'clothWidth'
      ? bad(refusal('cloth.main', wrong, cure))
      : made;
}
