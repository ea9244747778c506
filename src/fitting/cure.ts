import { inches, mm, toMm } from '../length/length.ts';
import type { Marking } from '../length/writing.ts';
import type { Running } from '../order/running-types.ts';
import type { StepId } from '../order/step.ts';
import { type Prepared, prepareUndoing, undoing, undoingMinutes } from '../order/undoing/undoing.ts';
import type { Alteration } from '../order/undoing/undoing-types.ts';
import type { Garment, Outfit } from '../outfit/outfit.ts';
import { altered } from './altered.ts';
import { addsOf } from './cure-adds.ts';
import { inTheMiddle, onMarks } from './cure-marks.ts';
import type { Amount, Cure, Cures, PieceChange } from './cure-types.ts';
import { whyNot } from './cure-why.ts';
import { sayAmounts } from './cure-words.ts';
import type { Level, Role } from './entry.ts';
import { fitted } from './fitted.ts';
import { gathersAfter, regathered } from './gathers-after.ts';
import { leastWork } from './least-work.ts';
import type { Observation } from './observation.ts';
import type { Puzzle, Solution } from './puzzle.ts';
import { type PuzzleOf, puzzleOf } from './puzzle-of.ts';

/** Where things stand when a cure is looked for. */
export interface CureAt {
  readonly done: Iterable<StepId>;
  /** The maker's own minutes by step. */
  readonly own?: ReadonlyMap<StepId, number>;
  /** What the rework will be called: unique within the outfit. */
  readonly id: string;
  /** How the maker's rule is marked, for words; else as the outfit's units are. Amounts are rounded to its marks. */
  readonly marking?: Marking;
}

/** All that is needed to turn a solution into a cure. */
interface Room {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly prepared: Prepared;
  readonly built: PuzzleOf;
  readonly observations: readonly Observation[];
  readonly roles: ReadonlyMap<string, Role>;
  readonly levels: ReadonlyMap<string, ReadonlyMap<Level, ReturnType<typeof mm>>>;
  readonly marking: Marking;
  readonly at: CureAt & { readonly done: ReadonlySet<StepId> };
}

/**
 * What can be done about all that was seen in a garment: the cure that loses the fewest minutes, given what is done by
 * now (less likely causes count some more), and the cheapest of another kind; what cannot be met and what was not reckoned with, and why.
 */
export function cure(
  outfit: Outfit,
  garmentId: string,
  running: Running,
  observations: readonly Observation[],
  at: CureAt,
): Cures {
  const garment = outfit.garments.find(({ id }) => id === garmentId);
  if (!garment) return { unmet: [], left: [] };
  const prepared = prepareUndoing(outfit, running);
  const standing = { ...at, done: new Set(at.done) };
  const built = puzzleOf(garment, observations, (some) => undoingMinutes(prepared, some, standing));
  const solved = leastWork(byKind(built));
  const { roles, levels } = fitted(garment);
  const marking: Marking =
    at.marking ?? (outfit.units === 'in' ? { unit: 'in', per: 16 } : { unit: 'mm', step: 1 });
  const room: Room = {
    outfit,
    garment,
    prepared,
    built,
    observations,
    roles,
    levels,
    marking,
    at: standing,
  };
  const nothing = built.puzzle.seen.length === 0;
  return {
    ...(solved.best && !nothing ? { best: cureOf(room, solved.best) } : {}),
    ...(solved.other && !nothing ? { other: cureOf(room, solved.other) } : {}),
    unmet: solved.unmet.map((one) => ({
      observation: one.seen,
      why: whyNot(built, garment, observations, one, marking),
    })),
    left: built.left,
  };
}

/** Letting out the one side of a piece or the other is one kind of cure; cutting it anew is another. */
const byKind = ({ puzzle, ways }: PuzzleOf): Puzzle => ({
  ...puzzle,
  pieces: puzzle.pieces.map(({ piece, ways: its }) => ({
    piece,
    ways: its.map((way) => {
      const { how, side } = ways.get(way.id)?.alteration ?? { how: '', side: '' };
      return { ...way, kind: `${piece} ${how} ${side}` };
    }),
  })),
});

function cureOf(room: Room, solution: Solution): Cure {
  const { outfit, garment, built, at } = room;
  const mark = toMm(outfit.units === 'in' ? inches(1, 16) : mm(1));
  const amounts = onMarks(built.puzzle, inTheMiddle(built.puzzle, solution), mark);
  const changes = solution.ways.flatMap((way) => changeOf(room, way, amounts));
  const named = (piece: string): string => garment.pieces.find(({ id }) => id === piece)?.name ?? piece;
  const taken = [...solution.causes].map(([observation, cause]) => ({ observation, cause }));
  const adds = addsOf(garment, room.roles, room.observations, taken);
  const after = afterwards(room, changes, adds);
  const gathers = regathered(garment, after);
  const say = [
    ...changes.map((change) => [named(change.piece), change.say].filter(Boolean).join(' ')),
    ...adds.map(({ work }) => work.name),
    ...gathers.map((one) => one.say),
  ].join('; ');
  const alterations = changes.map(
    ({ piece, how, edges, side, say: its }): Alteration => ({
      garment: garment.id,
      piece,
      how,
      edges,
      side,
      say: its,
    }),
  );
  const undone = undoing(room.prepared, alterations, { ...at, say });
  // What cannot be opened any more is cut anew instead.
  const settled = changes.map((change): PieceChange => {
    const now = undone.alterations.find(({ piece }) => piece === change.piece);
    return now && now.how !== change.how ? { ...change, how: now.how, edges: now.edges } : change;
  });
  return {
    changes: settled,
    adds,
    ...(gathers.length > 0 ? { gathers } : {}),
    taken,
    undoing: undone,
    minutes: Math.round((solution.minutes - built.doubt(solution.causes)) * 10) / 10,
    after: { ...outfit, garments: outfit.garments.map((one) => (one === garment ? after : one)) },
  };
}

/** What one way does to its piece, with its outline before and after. */
function changeOf(room: Room, way: string, found: ReadonlyMap<string, number>): readonly PieceChange[] {
  const { garment, built } = room;
  const alteration = built.ways.get(way)?.alteration;
  const piece = garment.pieces.find(({ id }) => id === alteration?.piece);
  const bounds = built.puzzle.pieces.flatMap(({ ways }) => ways).find(({ id }) => id === way)?.bounds;
  if (!alteration || !piece || !bounds) return [];
  // Also what stays as it is, for it holds its level where it is.
  const all = [...bounds.keys()].flatMap((unknown): readonly Amount[] => {
    const known = built.unknowns.get(unknown);
    return known ? [{ kind: known.kind, level: known.level, by: mm(found.get(unknown) ?? 0) }] : [];
  });
  const amounts = all.filter(({ by }) => by !== 0);
  const { how, edges, side } = alteration;
  const before = piece.outline;
  const role = room.roles.get(piece.id) ?? 'other';
  const levels = room.levels.get(piece.id) ?? new Map();
  return [
    {
      garment: garment.id,
      piece: piece.id,
      how,
      edges,
      side,
      amounts,
      say: sayAmounts(piece, side, amounts, room.marking),
      before,
      after: altered(piece, role, levels, all, edges),
    },
  ];
}

/** The garment with the new outlines and what is added. An outline stands for both of a pair, so a change to one leaves it. */
function afterwards({ garment }: Room, changes: readonly PieceChange[], adds: Cure['adds']): Garment {
  const outlines = new Map(
    changes.flatMap(({ piece, side, after }) => (side === 'both' ? [[piece, after] as const] : [])),
  );
  const changed: Garment = {
    ...garment,
    pieces: garment.pieces.map((piece) => {
      const outline = outlines.get(piece.id);
      return outline ? { ...piece, outline } : piece;
    }),
    works: [...garment.works, ...adds.map(({ work }) => work)],
  };
  return gathersAfter(garment, changed);
}
