import { addDeed, addRun, canUndo } from './add-deed.ts';
import type { Deed, DeedId } from './deed.ts';
import { closeDraft, draftOf } from './draft.ts';
import { isRun, type Packed, unpack } from './pack.ts';
import type { Progress } from './progress-types.ts';
import { comesNext, deedsOf, emptyTrail, laterDeeds, type Trail, trailOf, trailWith } from './trail.ts';

/** An outfit of which nothing is in the ledger yet. */
export const emptyProgress = (outfit: string): Progress => ({
  outfit,
  description: undefined,
  done: [],
  open: undefined,
  steps: new Map(),
  added: [],
  waived: new Set(),
  notes: [],
  reckoned: [],
  unfit: [],
  seen: [],
  reworks: [],
  undo: undefined,
  trail: emptyTrail(),
});

/** Numbers that may be taken back, by device; enough to see which runs of taps can stay whole. */
const numbersOf = (names: ReadonlySet<DeedId>): ReadonlyMap<string, readonly number[]> => {
  const numbers = new Map<string, number[]>();
  for (const name of names) {
    const dash = name.lastIndexOf('-');
    const device = name.slice(0, dash);
    const known = numbers.get(device);
    if (known === undefined) numbers.set(device, [Number(name.slice(dash + 1))]);
    else known.push(Number(name.slice(dash + 1)));
  }
  return numbers;
};

/** The trail in rows of which a run of taps either stays whole or is not there: its rows where none is taken back. */
const rowsOf = (trail: Trail): readonly Packed[] => {
  const numbers = numbersOf(trail.undone);
  const rows: Packed[] = [];
  for (const row of trail.packed) {
    const touched =
      isRun(row) &&
      numbers.get(row.device)?.some((seq) => seq >= row.seq && seq < row.seq + row.clock.length) === true;
    if (touched) for (const deed of unpack([row])) rows.push(deed);
    else rows.push(row);
  }
  for (const deed of laterDeeds(trail)) rows.push(deed);
  return rows;
};

const foldTrail = (outfit: string, trail: Trail): Progress => {
  const rows = rowsOf(trail);
  /** The deeds that are really taken back: named by an `undone`, there, and of a kind that can be. */
  const gone = new Map<DeedId, Deed>();
  if (trail.undone.size > 0) {
    for (const row of rows)
      if (!isRun(row) && trail.undone.has(row.id) && canUndo(row)) gone.set(row.id, row);
  }
  const draft = draftOf(emptyProgress(outfit));
  for (const row of rows) {
    if (isRun(row)) addRun(draft, row);
    else if (gone.size === 0 || !gone.has(row.id)) {
      addDeed(draft, row, row.act.kind === 'undone' ? gone.get(row.act.deed) : undefined);
    }
  }
  return { ...closeDraft(draft), trail };
};

/**
 * What deeds add up to, in whatever order they are handed in: they are sorted as `inOrder` says, each counts once, and
 * those that an `undone` names are left out. Deeds of other outfits than `outfit` (the first deed's, unless given) are
 * left out too. Acts of kinds unknown to this version are kept in the trail and otherwise ignored.
 */
export const addUp = (deeds: readonly Deed[], outfit: string = deeds[0]?.outfit ?? ''): Progress =>
  foldTrail(
    outfit,
    trailOf(deeds.every((deed) => deed.outfit === outfit) ? deeds : deeds.filter((d) => d.outfit === outfit)),
  );

/**
 * The progress with some more deeds; the one handed in stays as it is. Always the same as adding up all deeds anew, so
 * deeds may come late, twice or out of order; deeds of another outfit change nothing. A deed that comes next costs a
 * copy of its step; as soon as one takes back, or comes late, all are added up again, once.
 */
export const applyDeeds = (progress: Progress, deeds: readonly Deed[]): Progress => {
  const own = deeds.filter((deed) => deed.outfit === progress.outfit);
  let trail = progress.trail ?? emptyTrail();
  let again = false;
  let next = 0;
  const draft = draftOf(progress);
  for (const deed of own) {
    if (!comesNext(trail, deed)) break;
    again ||= deed.act.kind === 'undone' || trail.undone.has(deed.id);
    if (!again) addDeed(draft, deed, undefined);
    trail = trailWith(trail, deed);
    next++;
  }
  if (next === own.length) return again ? foldTrail(progress.outfit, trail) : { ...closeDraft(draft), trail };
  const there = deedsOf(trail);
  const names = new Set(there.map((deed) => deed.id));
  const late = own.slice(next).filter((deed) => !names.has(deed.id));
  if (late.length > 0) return addUp([...there, ...late], progress.outfit);
  return again ? foldTrail(progress.outfit, trail) : { ...closeDraft(draft), trail };
};

/** The progress with one more deed, as {@link applyDeeds}. */
export const applyDeed = (progress: Progress, deed: Deed): Progress => applyDeeds(progress, [deed]);
