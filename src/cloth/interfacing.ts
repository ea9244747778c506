import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import type { Weight } from './needles.ts';
import { DOT_LIMIT, type Dots, pressLimit } from './press-heat.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, published, type Source } from './source.ts';

/**
 * Usual heat for fusing, where the maker of the interfacing gives none.
 * @unit °C
 */
export const FUSING_DEGREES: Sourced<number> = {
  value: 150,
  source: published(
    'Dress Making, Trade Theory, National Instructional Media Institute',
    'about 2024',
    'p. 145, about 150; seen as an excerpt',
  ),
};
/**
 * The iron is held still on one place for so long, where the maker of the interfacing does not say.
 * @unit seconds
 */
export const FUSING_SECONDS: Sourced<number> = { value: 10, source: memory };
/** Interfacing is lighter than the cloth or about equal, never heavier. */
export const WEIGHT_RULE: Source = published(
  'Interfacings, EM014, Washington State University Extension',
  'undated',
  'choice of weight; seen as an excerpt',
);
/** Interfacing is woven for woven cloth and knit for knit, with the same give and care. */
export const SAME_KIND: Source = published(
  'Choosing and Using Interfacing, Extension Folder 341, Ingels',
  '1977',
  'woven with woven, knit with knit, same give and care; seen as an excerpt',
);
/** Fusing is decided on only after a sample. */
export const SAMPLE_FIRST: Source = published(
  'Interfacings, EM014, Washington State University Extension',
  'undated',
  'fusible only after a test sample; seen as an excerpt',
);
/**
 * An iron that fuses is as hot as this; anything else is taken for a slip.
 * @unit °C
 */
export const IRON_HEAT: Sourced<readonly [least: number, most: number]> = {
  value: [80, 230],
  source: memory,
};
/**
 * Longer than this an iron does not stay on one place; more is taken for a slip.
 * @unit seconds
 */
export const LONGEST_PRESS: Sourced<number> = { value: 120, source: memory };

/** What is stiffened. */
export type InterfacedPart = 'collar' | 'cuff' | 'band' | 'buttonholes' | 'facing' | 'hem';
/** These parts should stand, so they take interfacing as heavy as the cloth; the others take the next lighter. */
export const STANDS: Sourced<ReadonlySet<InterfacedPart>> = {
  value: new Set<InterfacedPart>(['collar', 'cuff', 'band']),
  source: practice,
};
const WEIGHTS: readonly Weight[] = ['sheer', 'light', 'medium', 'heavy', 'very heavy'];

/** A cloth, a part of it, and how it is to be stiffened. */
export interface InterfacingInput {
  readonly weight: Weight;
  readonly knit: boolean;
  /** Dots on the cloth's own care label. */
  readonly care: Dots;
  readonly part: InterfacedPart;
  /** Pile is crushed by fusing, glue shows through sheer cloth, and beads and sequins bear no iron. Smooth if not given. */
  readonly surface?: 'smooth' | 'pile' | 'see-through' | 'beaded';
  /** How it is held; chosen if not given. */
  readonly held?: 'sewn in' | 'fused';
  /** What the maker of the interfacing says; goes above our figures. Degrees Celsius and seconds. */
  readonly instructions?: { readonly degrees: number; readonly seconds: number };
}

/** What {@link interfacing} gives back. */
export interface InterfacingMade {
  readonly held: 'sewn in' | 'fused';
  readonly structure: 'woven' | 'knit';
  readonly weight: Weight;
  /** Heat and time for fusing; none where it is sewn in. */
  readonly fusing:
    | { readonly degrees: number; readonly seconds: number; readonly limit: number; readonly coolFlat: true }
    | undefined;
  /** Why it is held so. */
  readonly because: string;
  readonly advice: readonly Advice[];
  readonly assumed: readonly string[];
}

/**
 * Interfacing for a cloth and a part: woven for woven and knit for knit, never heavier than the cloth, fused where heat
 * and surface allow it and sewn in where they do not.
 *
 * Refused: fusing that was asked for on a cloth that must not be ironed, or whose care label allows less heat than the
 * fusing needs; instructions that no iron can follow.
 */
export function interfacing(input: InterfacingInput): Result<InterfacingMade, Refusal> {
  const { weight, knit, care, part, surface = 'smooth', held, instructions } = input;
  const degrees = instructions?.degrees ?? FUSING_DEGREES.value;
  const seconds = instructions?.seconds ?? FUSING_SECONDS.value;
  const [least, most] = IRON_HEAT.value;
  if (!(degrees >= least && degrees <= most && seconds > 0 && seconds <= LONGEST_PRESS.value)) {
    const cure = 'Give 80 to 230 °C and up to 120 seconds.';
    return bad(refusal('instructions', 'An iron cannot follow these instructions.', cure));
  }
  const limit = pressLimit([care]);
  const conflict = !limit.ok
    ? 'The cloth must not be ironed.'
    : degrees > limit.value
      ? `Fusing needs ${degrees} °C and the cloth bears ${limit.value} °C.`
      : undefined;
  if (held === 'fused' && conflict !== undefined) {
    const cure = 'Sew it in, or take an interfacing that fuses at less heat.';
    return bad(refusal('held', conflict, cure));
  }
  const spoilt = SURFACE[surface];
  const fused = held === undefined ? conflict === undefined && spoilt === undefined : held === 'fused';
  const because =
    held !== undefined
      ? 'As asked.'
      : (conflict ?? spoilt ?? 'The cloth bears the heat and its surface is smooth.');
  const advice: Advice[] = [
    advise('Try it on a sample of the cloth first, and let the sample cool before judging it.', SAMPLE_FIRST),
    advise('The instructions of the interfacing’s maker go above these figures.', practice),
    advise('Wash and dry it as the garment will be; both must shrink alike.', SAME_KIND),
  ];
  if (fused) {
    advice.push(
      advise('Set the iron down, do not slide it; then leave the piece flat until it is cold.', practice),
    );
    if (spoilt !== undefined) advice.push(advise(spoilt, practice));
    if (limit.ok && limit.value === degrees)
      advice.push(advise('The heat is at the limit of the care label: use a press cloth.', DOT_LIMIT.source));
  }
  const own = WEIGHTS.indexOf(weight);
  const stands = STANDS.value.has(part);
  const assumed: string[] = [];
  if (input.surface === undefined) assumed.push('The cloth is smooth.');
  if (fused && instructions === undefined) assumed.push(`Fused at ${degrees} °C for ${seconds} seconds.`);
  assumed.push(stands ? 'A part that stands takes the cloth’s own weight.' : 'The next lighter weight.');
  return good({
    held: fused ? 'fused' : 'sewn in',
    structure: knit ? 'knit' : 'woven',
    weight: WEIGHTS[stands ? own : Math.max(0, own - 1)] ?? weight,
    fusing: fused && limit.ok ? { degrees, seconds, limit: limit.value, coolFlat: true } : undefined,
    because,
    advice,
    assumed,
  });
}

const SURFACE: Readonly<Record<NonNullable<InterfacingInput['surface']>, string | undefined>> = {
  smooth: undefined,
  pile: 'Fusing crushes the pile.',
  'see-through': 'The glue shows through.',
  beaded: 'Beads and sequins may melt or break under the iron.',
};
