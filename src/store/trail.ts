import type { Deed, DeedId } from './deed.ts';
import { compareDeeds, inOrder } from './deed-order.ts';
import { type Packed, unpack } from './pack.ts';

/**
 * The deeds behind a progress, in their order. What came from a snapshot stays packed until it is asked for; what came
 * since is a list that grows, of which this trail sees the first `length`.
 */
export interface Trail {
  /** Deeds of the snapshot that this trail goes on from, written short. */
  readonly packed: readonly Packed[];
  readonly later: Deed[];
  readonly length: number;
  /** Highest number of each device in the trail. */
  readonly heads: ReadonlyMap<string, number>;
  /** The last deed in order, none in an empty trail. */
  readonly last: Deed | undefined;
  /** Names that an `undone` in the trail takes back. */
  readonly undone: ReadonlySet<DeedId>;
}

/** A trail with no deeds. */
export const emptyTrail = (): Trail => ({
  packed: [],
  later: [],
  length: 0,
  heads: new Map(),
  last: undefined,
  undone: new Set(),
});

/** Deeds that came since the snapshot. Read them at once and do not keep the list: it may be the one that grows. */
export const laterDeeds = (trail: Trail): readonly Deed[] =>
  trail.later.length === trail.length ? trail.later : trail.later.slice(0, trail.length);

/** All deeds of a trail in their order. Read them at once, as {@link laterDeeds}. */
export const deedsOf = (trail: Trail): readonly Deed[] => {
  const later = laterDeeds(trail);
  if (trail.packed.length === 0) return later;
  return [...unpack(trail.packed), ...later];
};

/** A trail of these deeds, sorted and each once. */
export const trailOf = (deeds: readonly Deed[]): Trail => {
  const later = [...inOrder(deeds)];
  const heads = new Map<string, number>();
  const undone = new Set<DeedId>();
  for (const deed of later) {
    if (deed.seq > (heads.get(deed.device) ?? -1)) heads.set(deed.device, deed.seq);
    if (deed.act.kind === 'undone') undone.add(deed.act.deed);
  }
  return { packed: [], later, length: later.length, heads, last: later.at(-1), undone };
};

/** Whether a deed comes after all of a trail, so that it need not be put in further up. */
export const comesNext = (trail: Trail, deed: Deed): boolean =>
  deed.seq > (trail.heads.get(deed.device) ?? -1) &&
  (trail.last === undefined || compareDeeds(trail.last, deed) < 0);

/** The trail with a deed that {@link comesNext}. The list is shared with the trail before, which does not see the deed. */
export const trailWith = (trail: Trail, deed: Deed): Trail => {
  const later = trail.later.length === trail.length ? trail.later : trail.later.slice(0, trail.length);
  later.push(deed);
  return {
    packed: trail.packed,
    later,
    length: trail.length + 1,
    heads: new Map(trail.heads).set(deed.device, deed.seq),
    last: deed,
    undone: deed.act.kind === 'undone' ? new Set(trail.undone).add(deed.act.deed) : trail.undone,
  };
};
