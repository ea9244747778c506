import type { Deed } from './deed.ts';
import { inOrder } from './deed-order.ts';
import { addUp, applyDeeds } from './progress.ts';
import type { Progress } from './progress-types.ts';
import { restoreSnapshot } from './snapshot.ts';
import type { Tx } from './transaction.ts';

/** Deeds of an outfit that are past the heads: those of each device above its number, and all of unknown devices. */
export const deedsPast = async (
  tx: Tx<'readonly'> | Tx<'readwrite'>,
  outfit: string,
  heads: ReadonlyMap<string, number>,
): Promise<Deed[]> => {
  const store = tx.objectStore('deeds');
  let from: IDBValidKey[] = [outfit];
  const parts: Promise<Deed[]>[] = [];
  for (const device of [...heads.keys()].sort()) {
    parts.push(store.getAll(IDBKeyRange.bound(from, [outfit, device], true, true)));
    from = [outfit, device, heads.get(device) ?? -1];
  }
  // An array sorts after every string, so this is past every device.
  parts.push(store.getAll(IDBKeyRange.bound(from, [outfit, []], true, true)));
  return (await Promise.all(parts)).flat();
};

/** What an outfit adds up to, as a transaction sees it: the snapshot, if it is any good, and the deeds past it. */
export const sumUp = async (tx: Tx<'readonly'> | Tx<'readwrite'>, outfit: string): Promise<Progress> => {
  const snapshot = restoreSnapshot(await tx.objectStore('snapshots').get(outfit), outfit);
  const past = await deedsPast(
    tx,
    outfit,
    snapshot.ok ? (snapshot.value.trail?.heads ?? new Map()) : new Map(),
  );
  return snapshot.ok ? applyDeeds(snapshot.value, inOrder(past)) : addUp(past, outfit);
};
