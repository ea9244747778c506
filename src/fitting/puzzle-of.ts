import type { Alteration } from '../order/undoing/undoing-types.ts';
import type { Garment } from '../outfit/outfit.ts';
import {
  type Asked,
  type Asking,
  causesLeft,
  type Explaining,
  explaining,
  LESS_LIKELY,
  type Unfit,
} from './asked.ts';
import { couplings, drawnAlong } from './couplings.ts';
import type { Cures } from './cure-types.ts';
import { entryCalled } from './entries/all.ts';
import type { Cause, Entry, Level } from './entry.ts';
import { fitted } from './fitted.ts';
import type { Observation } from './observation.ts';
import type { Demand, Puzzle, Solution } from './puzzle.ts';
import type { Change, Taking } from './taking-part.ts';
import { givesTo, type Side, type WayOf, waysOf } from './ways.ts';

/** A fitting as a puzzle, and what its names stand for. */
export interface PuzzleOf {
  readonly puzzle: Puzzle;
  /** What each way does; what it says is filled in once the amounts are known. */
  readonly ways: ReadonlyMap<string, { readonly alteration: Alteration }>;
  /**
   * What each unknown is. All unknowns of a way belong to the shape of its piece, also those that do not change: where one
   * is 0 the piece keeps its width at that level, and does not follow the levels above.
   */
  readonly unknowns: ReadonlyMap<
    string,
    { readonly piece: string; readonly kind: Change['kind']; readonly level: Level; readonly side: Side }
  >;
  /**
   * Minutes that a choice of causes counts more than its work takes, for it has less likely ones among them: they weigh in
   * the search and are never shown.
   */
  readonly doubt: (causes: Solution['causes']) => number;
  /** What the puzzle leaves out, and why. */
  readonly left: Cures['left'];
}

/** No more pieces than this are changed in one cure. */
const MOST_PIECES = 12;

const lower = (clause: string): string => clause.charAt(0).toLowerCase() + clause.slice(1);

/** Why an observation is not reckoned with, in a sentence that says what would help. */
function whyLeft(entry: Entry, causes: readonly Cause[], unfit: readonly Unfit[]): string {
  const [cause] = causes;
  if (!cause) return 'Every cause of it is ruled out; take one back, or note what is seen in other words.';
  if (unfit.includes('no amount'))
    return entry.asks
      ? `How much it is has not been noted yet. ${entry.asks} Then it is reckoned with.`
      : 'How much it is has not been noted yet; measure it, and it is reckoned with.';
  if (unfit.every((one) => one === 'nothing to change'))
    return `Put it right by hand if ${cause.is}: ${lower(cause.change)}`;
  return 'No piece of this garment can be changed where it is seen.';
}

/** A fitting of a garment as a puzzle of numbers. `cost` says how many minutes some alterations cost together. */
export function puzzleOf(
  garment: Garment,
  observations: readonly Observation[],
  cost: (alterations: readonly Alteration[]) => number,
): PuzzleOf {
  const { roles, levels, seams, grown } = fitted(garment);
  const here = observations.filter((one) => one.garment === garment.id);
  const left: { observation: string; why: string }[] = [];
  const parts = new Map<string, Taking>();
  const every = new Map<string, Taking>(
    garment.pieces.map((piece) => [
      piece.id,
      {
        piece,
        role: roles.get(piece.id) ?? 'other',
        levels: levels.get(piece.id) ?? new Map(),
        widths: new Set(),
        lengths: new Set(),
      },
    ]),
  );
  const known = (piece: string): Taking | undefined => every.get(piece);
  const entries = new Map(here.flatMap((one) => [[one.id, entryCalled(one.entry)] as const]));
  const asking: Asking = {
    garment,
    roles,
    known,
    lengths: here.flatMap((seen) => {
      const entry = entries.get(seen.id);
      return (entry ? causesLeft(entry, seen) : []).flatMap(({ wants }) =>
        wants.flatMap((want) => (want.kind === 'length' ? [want] : [])),
      );
    }),
  };

  const seen = here.flatMap((one): readonly { of: Observation; explanations: readonly Explaining[] }[] => {
    const entry = entries.get(one.id);
    if (!entry) {
      left.push({ observation: one.id, why: 'This version does not know what was seen; note it anew.' });
      return [];
    }
    const causes = causesLeft(entry, one);
    const tried = causes.map((cause) => explaining(asking, cause, one));
    const explanations = tried.filter((found): found is Explaining => typeof found !== 'string');
    if (explanations.length > 0) return [{ of: one, explanations }];
    const unfit = tried.filter((found): found is Unfit => typeof found === 'string');
    left.push({ observation: one.id, why: whyLeft(entry, causes, unfit) });
    return [];
  });

  const take = (piece: string, { kind, level }: Change): boolean => {
    const one = known(piece);
    if (!one || (!parts.has(piece) && parts.size >= MOST_PIECES)) return false;
    parts.set(piece, one);
    const set = kind === 'width' ? one.widths : one.lengths;
    const fresh = !set.has(level);
    set.add(level);
    return fresh;
  };
  for (const { explanations } of seen)
    for (const { asked } of explanations)
      for (const { terms } of asked) for (const { piece, change } of terms) take(piece, change);

  // What follows a piece that changes may draw others along in its turn.
  const looking = new Set(parts.keys());
  for (const id of looking) {
    looking.delete(id);
    const part = parts.get(id);
    for (const { piece, change } of part ? drawnAlong(seams, part, known, grown) : [])
      if (take(piece, change)) looking.add(piece);
  }

  const sided = seen.some(({ of }) => of.side !== 'both');
  const ways = new Map([...parts].map(([id, part]) => [id, waysOf(garment, part, sided)] as const));
  const all = [...ways.values()].flat();
  const alterations = new Map(all.map((one) => [one.way.id, one.alteration]));
  return {
    puzzle: {
      pieces: [...ways].map(([piece, its]) => ({ piece, ways: its.map(({ way }) => way) })),
      seen: seen.map(({ of, explanations }) => ({
        id: of.id,
        explanations: explanations.map(({ cause, asked, minutes }, place) => ({
          id: cause,
          demands: asked.flatMap((one) =>
            [one, ...sameWay(one)].flatMap((its) => demands(its, of.side, sided, ways)),
          ),
          minutes: minutes + place * LESS_LIKELY.value,
        })),
      })),
      always: couplings(seams, parts, ways, sided, grown),
      minutes: (some) => cost(some.flatMap((id) => alterations.get(id) ?? [])),
    },
    ways: new Map([...alterations].map(([id, alteration]) => [id, { alteration }])),
    unknowns: new Map(all.flatMap(({ unknowns }) => [...unknowns])),
    doubt: (causes) =>
      seen.reduce((sum, { of, explanations }) => {
        const place = explanations.findIndex(({ cause }) => cause === causes.get(of.id));
        return sum + Math.max(0, place) * LESS_LIKELY.value;
      }, 0),
    left,
  };
}

/** Pieces that are to be wider together do not become wider and narrower so that it cancels; none where it is one piece. */
function sameWay({ terms, least, most }: Asked): readonly Asked[] {
  if (terms.length < 2 || (least <= 0 && most >= 0)) return [];
  const up = least > 0;
  return terms.map((term) => ({
    terms: [term],
    least: up ? 0 : Number.NEGATIVE_INFINITY,
    most: up ? Number.POSITIVE_INFINITY : 0,
  }));
}

/** What is asked, in the unknowns of all ways; for each side of the body by itself where anything was seen on one side only. */
function demands(
  asked: Asked,
  seen: Side,
  sided: boolean,
  ways: ReadonlyMap<string, readonly WayOf[]>,
): readonly Demand[] {
  const sides: readonly Side[] = seen !== 'both' ? [seen] : sided ? ['left', 'right'] : ['both'];
  return sides.map((side) => ({
    terms: asked.terms.flatMap(({ piece, change, factor }) =>
      (ways.get(piece) ?? []).flatMap(({ alteration, unknowns }) =>
        givesTo(alteration.side, side)
          ? [...unknowns].flatMap(([unknown, one]) =>
              one.kind === change.kind && one.level === change.level ? [{ unknown, factor }] : [],
            )
          : [],
      ),
    ),
    least: asked.least,
    most: asked.most,
  }));
}
