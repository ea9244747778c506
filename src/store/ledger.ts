import type { IDBPDatabase } from 'idb';
import { connection } from './connection.ts';
import type { Act, Deed, DeedId } from './deed.ts';
import { inOrder } from './deed-order.ts';
import { deedsPast, sumUp } from './ledger-reading.ts';
import { LEDGER_VERSION, type LedgerSchema, type OutfitEntry, upgradeLedger } from './ledger-schema.ts';
import { entryWith, keyOf, mergeOutfit, refuseUnreadable, sameDeed } from './ledger-writing.ts';
import type { Progress } from './progress-types.ts';
import { openSecondCopy } from './second-copy.ts';
import { takeSnapshot } from './snapshot.ts';
import { type Tx, within } from './transaction.ts';
import { Trouble, troubleOf } from './trouble.ts';

/** How to open a ledger. */
export interface LedgerOptions {
  /** Name of the database. */
  readonly name?: string;
  /** How long the browser may take to open the database before it is tried again, and then given up, ms. */
  readonly timeoutMs?: number;
  /** Told of trouble in words for the maker that passed by itself or has no promise to reject. */
  readonly onTrouble?: (trouble: Trouble) => void;
  /** Told of deeds that another tab has written down, for `applyDeeds`. */
  readonly onOthers?: (deeds: readonly Deed[]) => void;
  /** The device's clock, ms since 1970. */
  readonly now?: () => number;
  /** A snapshot is taken after so many deeds. */
  readonly snapshotEvery?: number;
}

/** What came of merging deeds into the ledger. */
export interface Merged {
  readonly added: number;
  /** There already, the same. */
  readonly already: number;
  /** There already under the same name, but different; those in the ledger stay as they are. */
  readonly conflicts: readonly DeedId[];
}

/** The ledger of this device. Everything that fails rejects with a `Trouble`. */
export interface Ledger {
  /** Name of this device, made once, by chance, and kept with the deeds; empty while a full device has no room for it. */
  readonly device: string;
  /** Writes acts down, all or none. Done when they lie on the disk as far as the browser can say. */
  readonly write: (outfit: string, acts: readonly Act[]) => Promise<readonly Deed[]>;
  /**
   * What the ledger of an outfit adds up to; empty for an outfit that it does not know. Deeds that `onOthers` told of
   * meanwhile may be in it or not: apply them again, which does no harm. A page that was hidden may have missed some;
   * load again when it is shown.
   */
  readonly load: (outfit: string) => Promise<Progress>;
  /** The outfits in the ledger, the one worked on last first. */
  readonly outfits: () => Promise<readonly OutfitEntry[]>;
  /** All deeds of an outfit in their order. */
  readonly deeds: (outfit: string) => Promise<readonly Deed[]>;
  /** Puts deeds of other devices, or of a backup, among those that are here, all or none. */
  readonly merge: (deeds: readonly Deed[]) => Promise<Merged>;
  readonly close: () => void;
}

type Numbers = LedgerSchema['device']['value'];

/** How long after opening the second copy is looked over, ms, if nothing is written before. */
const FILL_AFTER_MS = 2_000;

/** Deeds put into the second copy at a time when it must be made whole: none of the puts may take as long as a timeout. */
const FILL_BY = 1_000;

const ERASED =
  'The browser has thrown the ledger away while it was open. What is on the screen is no longer on this device; import the last backup.';

const RESTORED =
  'The browser had lost the ledger. It was put back from its second copy; save a backup when you can.';

/** Four random words of 16 bits in hexadecimal: two devices of one maker never meet. */
const newDevice = (): string =>
  Array.from(crypto.getRandomValues(new Uint16Array(4)), (word) => word.toString(16).padStart(4, '0')).join(
    '',
  );

/** Opens the ledger, making it when there is none. Rejects with a `Trouble` when the browser will not. */
export const openLedger = async (options: LedgerOptions = {}): Promise<Ledger> => {
  const { name = 'slipbaste', timeoutMs = 4_000, now = Date.now, snapshotEvery = 500 } = options;
  const onTrouble = options.onTrouble ?? (() => undefined);
  const { use, close } = connection<LedgerSchema>({
    name,
    version: LEDGER_VERSION,
    upgrade: upgradeLedger,
    timeoutMs,
    onTrouble,
  });
  const tabs = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(`${name} ledger`);
  const copy = openSecondCopy(name, timeoutMs);
  let closed = false;
  /** Deeds on their way, which the second copy may not have yet. */
  let underWay = 0;
  /** The looking over of the second copy, once it has begun. */
  let whole: Promise<void> | undefined;
  const tell = (deeds: readonly Deed[]): void => {
    if (deeds.length > 0 && !closed) tabs?.postMessage(deeds);
  };
  if (tabs !== undefined) tabs.onmessage = (event) => options.onOthers?.(event.data as readonly Deed[]);

  let device: string | undefined;
  /** This device's name and next number; a new name where there is none, for the numbers of an old one were given. */
  const numbers = async (tx: Tx<'readwrite'>): Promise<Numbers> =>
    (await tx.objectStore('device').get('this')) ?? { name: newDevice(), next: 0 };
  /** Takes a name for this device's own, when it is written down. Whether it is the one that it had. */
  const settle = (name: string): boolean => {
    const same = device === undefined || device === name;
    device = name;
    return same;
  };

  const writeIn = async (tx: Tx<'readwrite'>, outfit: string, acts: readonly Act[], at: number) => {
    const [mine, entry] = await Promise.all([numbers(tx), tx.objectStore('outfits').get(outfit)]);
    const newest = entry?.newest ?? -Infinity;
    const written = acts.map((act, i): Deed => {
      const seq = mine.next + i;
      const deed: Deed = { id: `${mine.name}-${seq}`, device: mine.name, seq, at, outfit, act };
      return newest > at ? { ...deed, place: newest + 1 } : deed;
    });
    return { mine, entry, written };
  };

  const snapshotting = new Set<string>();
  const takeOne = async (outfit: string): Promise<void> => {
    if (snapshotting.has(outfit)) return;
    snapshotting.add(outfit);
    try {
      await use((db) =>
        // Reading and writing in one transaction: no merge can come between and be left out for good.
        within(db, ['deeds', 'snapshots', 'outfits'], 'readwrite', async (tx) => {
          const [progress, entry] = await Promise.all([
            sumUp(tx, outfit),
            tx.objectStore('outfits').get(outfit),
          ]);
          if (entry === undefined || (progress.trail?.length ?? 0) < snapshotEvery) return;
          await Promise.all([
            tx.objectStore('snapshots').put(takeSnapshot(progress), outfit),
            tx.objectStore('outfits').put({ ...entry, since: 0 }),
          ]);
        }),
      );
      snapshotting.delete(outfit);
    } catch {
      // None is needed: the deeds are all there, and opening takes longer. What failed once is not tried again before
      // the next start, or a full device would say so at every tap.
    }
  };

  const write: Ledger['write'] = async (outfit, acts) => {
    if (acts.length === 0) return [];
    refuseUnreadable(acts);
    underWay += acts.length;
    const { written, since } = await writeDown(outfit, acts).finally(() => {
      underWay -= acts.length;
    });
    // A copy that was lost itself must hold the earlier deeds too before the maker is told that this one is safe.
    await lookOver();
    const [first] = written;
    if (first !== undefined && !settle(first.device)) void putBack(ERASED);
    tell(written);
    if (since >= snapshotEvery) void takeOne(outfit);
    return written;
  };

  /** Writes into the ledger and then into its second copy. */
  const writeDown = async (outfit: string, acts: readonly Act[]) => {
    const at = now();
    let tried: readonly Deed[] | undefined;
    let since = 0;
    const written = await use((db) =>
      within(db, ['deeds', 'outfits', 'device'], 'readwrite', async (tx) => {
        const before = tried?.[0];
        // The connection broke in the middle: it may have been written down all the same, and must not be twice.
        if (before !== undefined && sameDeed(await tx.objectStore('deeds').get(keyOf(before)), before))
          return tried ?? [];
        const { mine, entry, written: deeds } = await writeIn(tx, outfit, acts, at);
        tried = deeds;
        const next = entryWith(entry, outfit, deeds);
        since = next.since;
        await Promise.all([
          ...deeds.map((deed) => tx.objectStore('deeds').add(deed)),
          tx.objectStore('outfits').put(next),
          tx.objectStore('device').put({ name: mine.name, next: mine.next + deeds.length }, 'this'),
        ]);
        return deeds;
      }),
    );
    await (await copy)?.add(written);
    return { written, since };
  };

  const merge: Ledger['merge'] = async (deeds) => {
    const outfits = [...new Set(deeds.map((deed) => deed.outfit))];
    const {
      fresh,
      conflicts,
      name: mine,
    } = await use((db) =>
      within(db, ['deeds', 'snapshots', 'outfits', 'device'], 'readwrite', async (tx) => {
        const all: { fresh: Deed[]; conflicts: DeedId[] } = { fresh: [], conflicts: [] };
        for (const outfit of outfits) {
          const one = await mergeOutfit(
            tx,
            outfit,
            deeds.filter((deed) => deed.outfit === outfit),
          );
          for (const deed of one.fresh) all.fresh.push(deed);
          all.conflicts.push(...one.conflicts);
        }
        // Own deeds come back from a backup; their numbers must not be given again.
        const mine = await numbers(tx);
        let { next } = mine;
        for (const deed of all.fresh) if (deed.device === mine.name) next = Math.max(next, deed.seq + 1);
        await tx.objectStore('device').put({ name: mine.name, next }, 'this');
        return { ...all, name: mine.name };
      }),
    );
    await (await copy)?.add(fresh);
    if (!settle(mine)) void putBack(ERASED);
    tell(fresh);
    if (fresh.length >= snapshotEvery) for (const outfit of outfits) void takeOne(outfit);
    return { added: fresh.length, already: deeds.length - fresh.length - conflicts.length, conflicts };
  };

  const read = <T>(stores: ('deeds' | 'snapshots' | 'outfits')[], work: (tx: Tx<'readonly'>) => Promise<T>) =>
    use((db: IDBPDatabase<LedgerSchema>) => within(db, stores, 'readonly', work));

  const deeds: Ledger['deeds'] = async (outfit) =>
    inOrder(await read(['deeds'], (tx) => deedsPast(tx, outfit, new Map())));

  /** Puts deeds back that only the second copy has. Says so, or says `otherwise`, when it has none either. */
  const putBack = async (otherwise?: string): Promise<void> => {
    try {
      const kept = (await (await copy)?.all()) ?? [];
      const { added } = kept.length > 0 ? await merge(kept) : { added: 0 };
      if (added > 0) onTrouble(new Trouble('restored', RESTORED));
      else if (otherwise !== undefined) onTrouble(new Trouble('erased', otherwise));
    } catch (cause) {
      onTrouble(troubleOf(cause));
    }
  };

  /** Makes the second copy whole where deeds are missing from it. Only the first deed after opening waits for this. */
  const fillCopy = async (): Promise<void> => {
    const second = await copy;
    if (second === undefined || closed) return;
    try {
      const entries = await read(['outfits'], (tx) => tx.objectStore('outfits').getAll());
      const count = entries.reduce((sum, entry) => sum + entry.deeds, 0);
      const onTheirWay = underWay;
      if ((await second.count()) + onTheirWay >= count) return;
      for (const { outfit } of entries) {
        const all = await deeds(outfit);
        for (let from = 0; from < all.length; from += FILL_BY)
          await second.add(all.slice(from, from + FILL_BY));
      }
    } catch {
      // It is only a copy; the next start tries again.
    }
  };

  /** Looks the second copy over once for each opening. */
  const lookOver = (): Promise<void> => {
    whole ??= fillCopy();
    return whole;
  };

  const openDevice = async (): Promise<void> => {
    const there = await use((db) =>
      within(db, ['device'], 'readonly', (tx) => tx.objectStore('device').get('this')),
    );
    if (there !== undefined) {
      settle(there.name);
      // The card that is waited for comes first.
      setTimeout(() => void lookOver(), FILL_AFTER_MS);
      return;
    }
    try {
      const made = await use((db) =>
        within(db, ['device'], 'readwrite', async (tx) => {
          const mine = await numbers(tx);
          await tx.objectStore('device').put(mine, 'this');
          return mine;
        }),
      );
      settle(made.name);
    } catch (cause) {
      // A full device must still show what it has; the name is made with the first deed that finds room.
      const trouble = troubleOf(cause);
      if (trouble.kind !== 'full') throw trouble;
      onTrouble(trouble);
    }
    await putBack();
  };
  const shut = (): void => {
    closed = true;
    tabs?.close();
    void copy.then((second) => second?.close());
    close();
  };
  try {
    await openDevice();
  } catch (cause) {
    shut();
    throw cause;
  }

  return {
    get device() {
      return device ?? '';
    },
    write,
    merge,
    load: async (outfit) => {
      const progress = await read(['deeds', 'snapshots'], (tx) => sumUp(tx, outfit));
      if ((progress.trail?.length ?? 0) >= snapshotEvery) void takeOne(outfit);
      return progress;
    },
    deeds,
    outfits: async () => {
      const all = await read(['outfits'], (tx) => tx.objectStore('outfits').getAll());
      return all.sort((a, b) => b.last - a.last);
    },
    close: shut,
  };
};
