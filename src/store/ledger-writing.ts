import type { Act, Deed, DeedId } from './deed.ts';
import { inOrder, placeOf } from './deed-order.ts';
import { deedsPast } from './ledger-reading.ts';
import type { OutfitEntry } from './ledger-schema.ts';
import { readFitting } from './read-fitting.ts';
import { readReckoned } from './reckoned.ts';
import type { Tx } from './transaction.ts';
import { Trouble } from './trouble.ts';

/** Where a deed lies in its store. */
export const keyOf = (deed: Deed): [string, string, number] => [deed.outfit, deed.device, deed.seq];

/** Refuses, with a `Trouble`, figures and what was seen at a try-on that no ledger would read again from a copy. */
export const refuseUnreadable = (acts: readonly Act[]): void => {
  const refuse = (what: string, field: string, expected: string): never => {
    throw new Trouble('failed', `${what}: ${field}, expected ${expected}.`);
  };
  for (const act of acts) {
    if (act.kind === 'reckoned') {
      const read = readReckoned(act);
      if (!read.ok) refuse('These figures do not go on a card', read.error.field, read.error.expected);
    } else if (act.kind === 'seen' || act.kind === 'let-be' || act.kind === 'reworked') {
      const read = readFitting(act);
      if (!read.ok) refuse('This cannot be kept', read.error.field, read.error.expected);
    }
  }
};

/** Whether what lies there is this deed. */
export const sameDeed = (a: Deed | undefined, b: Deed): boolean =>
  a !== undefined && a.at === b.at && a.place === b.place && JSON.stringify(a.act) === JSON.stringify(b.act);

/** The outfit's entry after some deeds more. */
export const entryWith = (
  entry: OutfitEntry | undefined,
  outfit: string,
  deeds: readonly Deed[],
): OutfitEntry => {
  let { begun, last, newest } = entry ?? { begun: Infinity, last: -Infinity, newest: -Infinity };
  for (const deed of deeds) {
    begun = Math.min(begun, deed.at);
    last = Math.max(last, deed.at);
    newest = Math.max(newest, placeOf(deed));
  }
  const count = deeds.length;
  return {
    outfit,
    deeds: (entry?.deeds ?? 0) + count,
    begun,
    last,
    newest,
    since: (entry?.since ?? 0) + count,
  };
};

/**
 * Puts deeds of one outfit among those that are there. Gives back those that were new, and the names of those that are
 * there already but say something else.
 */
export const mergeOutfit = async (tx: Tx<'readwrite'>, outfit: string, deeds: readonly Deed[]) => {
  const there = new Map((await deedsPast(tx, outfit, new Map())).map((deed) => [deed.id, deed]));
  const fresh: Deed[] = [];
  const conflicts: DeedId[] = [];
  for (const deed of inOrder(deeds)) {
    const same = there.get(deed.id);
    if (same === undefined) fresh.push(deed);
    else if (!sameDeed(same, deed)) conflicts.push(deed.id);
    there.set(deed.id, same ?? deed);
  }
  if (fresh.length > 0) {
    const entry = entryWith(await tx.objectStore('outfits').get(outfit), outfit, fresh);
    await Promise.all([
      ...fresh.map((deed) => tx.objectStore('deeds').add(deed)),
      tx.objectStore('outfits').put({ ...entry, since: entry.deeds }),
      // The new ones may belong before some that it holds.
      tx.objectStore('snapshots').delete(outfit),
    ]);
  }
  return { fresh, conflicts };
};
