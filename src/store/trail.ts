import type { Deed, DeedId } from './deed.ts';
import { compareDeeds, inOrder } from './deed-order.ts';

/**
 * The deeds behind a progress, in their order. What came from a snapshot is unpacked only when it is asked for; what
 * came since is a list that grows, of which this trail sees the first `length`.
 */
export interface Trail {
  /** Deeds of the snapshot that this trail goes on from; called at most now and then, so it may be slow. */
  readonly earlier: () => readonly Deed[];
  readonly later: Deed[];
  readonly length: number;
  /** Highest number of each device in the trail. */
  readonly heads: ReadonlyMap<string, number>;
  /** The last deed in order, none in an empty trail. */
  readonly last: Deed | undefined;
  /** Names that an `undone` in the trail takes back. */
  readonly undone: ReadonlySet<DeedId>;
}

const nothing = (): readonly Deed[] => [];

/** A trail with no deeds. */
export const emptyTrail = (): Trail => ({
  earlier: nothing,
  later: [],
  length: 0,
  heads: new Map(),
  last: undefined,
  undone: new Set(),
});

/** All deeds of a trail in their order. Read it at once and do not keep it: the list may be the one that grows. */
export const deedsOf = (trail: Trail): readonly Deed[] => {
  const earlier = trail.earlier();
  const later = trail.later.length === trail.length ? trail.later : trail.later.slice(0, trail.length);
  return earlier.length === 0 ? later : [...earlier, ...later];
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
  return { earlier: nothing, later, length: later.length, heads, last: later.at(-1), undone };
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
    earlier: trail.earlier,
    later,
    length: trail.length + 1,
    heads: new Map(trail.heads).set(deed.device, deed.seq),
    last: deed,
    undone: deed.act.kind === 'undone' ? new Set(trail.undone).add(deed.act.deed) : trail.undone,
  };
};
