import type { Deed, DeedId } from './deed.ts';
import { addDeed, canUndo, closeDraft, draftOf } from './draft.ts';
import type { Progress } from './progress-types.ts';
import { comesNext, deedsOf, emptyTrail, type Trail, trailOf, trailWith } from './trail.ts';

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
  undo: undefined,
  trail: emptyTrail(),
});

/** The deeds that are really taken back: named by an `undone`, there, and of a kind that can be. */
const takenBack = (deeds: readonly Deed[], undone: ReadonlySet<DeedId>): ReadonlyMap<DeedId, Deed> => {
  const found = new Map<DeedId, Deed>();
  if (undone.size === 0) return found;
  for (const deed of deeds) if (undone.has(deed.id) && canUndo(deed)) found.set(deed.id, deed);
  return found;
};

const foldTrail = (outfit: string, trail: Trail): Progress => {
  const deeds = deedsOf(trail);
  const gone = takenBack(deeds, trail.undone);
  const draft = draftOf(emptyProgress(outfit));
  for (const deed of deeds) {
    if (gone.has(deed.id)) continue;
    addDeed(draft, deed, deed.act.kind === 'undone' ? gone.get(deed.act.deed) : undefined);
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
