import { add, type Length, longest, times } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import { type Advice, advise, type Sourced } from './advice.ts';
import { biasCloth } from './bias-strips.ts';
import { FULLNESS, FULLNESS_FOR, fullnessFor, type Gathered, type GathersMade, gathers } from './gathers.ts';
import { type Refusal, refusal } from './refusal.ts';
import { memory, practice, type Source } from './source.ts';

/** Which way the length of a frill's strips lies on the cloth. */
export type FrillGrain = 'along' | 'across' | 'bias';

/** What kind of frill gives its fullness: as usual (2 1/2 times), or one of the published kinds. */
export type FrillKind = 'usual' | 'plain ruffle' | 'full gathers' | 'ruche with body' | 'sheer ruche';

/** The common frill is cut with its length along the grain. */
export const CLEANER_ALONG: Advice = advise('A strip cut along the grain gathers cleaner.', practice);
/**
 * The shortest piece of a bias strip is this many times as long as it is wide, so that joins do not crowd.
 * @unit times
 */
export const SHORTEST_BIAS: Sourced<number> = { value: 2, source: memory };

/** A frill gathered along its upper edge. */
export interface FrillCutInput {
  /** Length of the seam that it is set to, and its finished depth below it. */
  readonly place: Length;
  readonly depth: Length;
  readonly kind: FrillKind;
  /** How many times its place it is long, if it is not to come from the kind. */
  readonly fullness?: number;
  readonly grain: FrillGrain;
  readonly clothWidth: Length;
  /** Of the cloth at hand, for strips along the grain; as long as it takes if not given. */
  readonly clothLength?: Length;
  /** Allowance of the gathered edge and of the joins, and what the hem takes. */
  readonly allowance: Length;
  readonly hem: Length;
  readonly ring: boolean;
  readonly parts: 4 | 8;
}

/** What {@link frillCut} gives back: the gathers, and how to cut them. */
export interface FrillCutMade extends Omit<GathersMade, 'cutLength'> {
  /** Cut depth of every strip: finished depth, allowance and hem. */
  readonly cutDepth: Length;
  /** Cut length of each strip, joins included; bias pieces are measured along their middle. */
  readonly cutLengths: readonly Length[];
  /** Length of cloth that the strips are cut from, of the width given. */
  readonly cloth: Length;
  /** Where the fullness comes from; none where the maker chose it. */
  readonly fullnessFrom:
    | { readonly range: readonly [least: number, most: number]; readonly source: Source }
    | undefined;
}

/** The published kind; a plain ruffle on the bias is told apart from a straight one. */
const published = (kind: Exclude<FrillKind, 'usual'>, grain: FrillGrain): Gathered =>
  kind === 'plain ruffle' ? (grain === 'bias' ? 'bias ruffle' : 'straight ruffle') : kind;

/**
 * A gathered frill cut from the cloth. Across: from selvage to selvage, as many as it takes. Along the grain: side by side
 * in the width. On the bias: pieces as `biasCloth` lays them. The cut depth follows from the measures.
 *
 * Refused: no depth; a hem below zero; a cut depth wider than the cloth; cloth no longer than two allowances; what `gathers` and
 * `biasCloth` refuse.
 */
export function frillCut(input: FrillCutInput): Result<FrillCutMade, Refusal> {
  const { place, depth, kind, grain, clothWidth, clothLength, allowance, hem, ring, parts } = input;
  if (depth <= 0) return bad(refusal('depth', 'The frill has no depth.', 'Give a depth above zero.'));
  if (hem < 0) return bad(refusal('hem', 'The hem is below zero.', 'Give zero or more.'));
  const cutDepth = add(depth, allowance, hem);
  const lanes = Math.floor(clothWidth / cutDepth);
  if (grain !== 'across' && lanes < 1) {
    const cure = 'Give a wider cloth, or cut the strips across it.';
    return bad(refusal('clothWidth', 'The strip is wider than the cloth.', cure));
  }
  if (grain === 'along' && clothLength !== undefined && clothLength <= 2 * allowance) {
    const cure = 'Give a longer cloth, or leave it empty.';
    return bad(refusal('clothLength', 'The cloth is no longer than the allowances of a strip.', cure));
  }
  const from = kind === 'usual' ? FULLNESS : fullnessFor(published(kind, grain));
  const fullness = input.fullness ?? from.value;
  const uncut = longest(clothWidth, add(times(place, 10), times(allowance, 4)));
  const made = gathers({
    place,
    fullness,
    clothWidth: grain === 'across' ? clothWidth : grain === 'along' ? (clothLength ?? uncut) : uncut,
    join: allowance,
    allowance,
    ring,
    parts,
  });
  if (!made.ok) return grain === 'along' && made.error.field === 'clothWidth' ? clothAt(made.error) : made;
  const { cutLength, ...rest } = made.value;
  const range: readonly [number, number] =
    kind === 'usual' ? [FULLNESS.value, FULLNESS.value] : FULLNESS_FOR[published(kind, grain)].value;
  const common = {
    ...rest,
    cutDepth,
    fullnessFrom: input.fullness === undefined ? { range, source: from.source } : undefined,
    advice: [...rest.advice, ...grainAdvice(kind, grain)],
    assumed: [...rest.assumed, 'The joins take the same allowance as the gathered edge.'],
  };
  if (grain !== 'bias') {
    const rows = grain === 'across' ? rest.strips : Math.ceil(rest.strips / lanes);
    return good({
      ...common,
      cutLengths: Array.from({ length: rest.strips }, () => cutLength),
      cloth: times(grain === 'across' ? cutDepth : cutLength, rows),
    });
  }
  const shortest = longest(times(cutDepth, SHORTEST_BIAS.value), times(allowance, 4));
  // The two slanted ends are trimmed square, half a depth each.
  const needed = add(rest.strip, times(allowance, 2), cutDepth);
  const laid = biasCloth({ across: clothWidth, strip: cutDepth, join: allowance, shortest, needed });
  if (!laid.ok) {
    const cure = 'Give a wider cloth, or cut the strips straight.';
    return bad(refusal('clothWidth', 'This cloth is too narrow for so deep a strip on the bias.', cure));
  }
  const { pieces, along } = laid.value;
  return good({
    ...common,
    strips: pieces.length,
    joins: pieces.length - (ring ? 0 : 1),
    joinsAt: [],
    cutLengths: pieces.map(({ middle }) => middle),
    cloth: along,
    assumed: [
      ...common.assumed,
      'No bias piece is shorter than twice its width.',
      'Bias pieces are measured along their middle; their ends are slanted, and the first and the last are trimmed square.',
    ],
  });
}

const clothAt = ({ wrong, cure }: Refusal): Result<never, Refusal> =>
  bad(refusal('clothLength', wrong, cure));

function grainAdvice(kind: FrillKind, grain: FrillGrain): readonly Advice[] {
  if (grain === 'across') return [CLEANER_ALONG];
  if (grain === 'along' || kind === 'plain ruffle') return [];
  const { source } = FULLNESS_FOR['bias ruffle'];
  return [advise('On the bias less is enough: 1 1/4 to 1 1/3 times its place.', source)];
}
