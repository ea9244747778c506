import { wrap } from 'idb';
import type { Deed } from './deed.ts';

/**
 * A second copy of all deeds, in a storage bucket of its own and so in files of its own. It is there because a browser
 * that is killed in the middle of a write can leave a file that it will not read again, and then begins a new one
 * without a word: all is gone, whatever the durability. Two files are not torn by one kill, for the second is written
 * when the first is complete. Browsers without storage buckets go without.
 */
export interface SecondCopy {
  /** Puts deeds down. Never rejects: a copy that fails is left alone until the next start, which makes it whole. */
  readonly add: (deeds: readonly Deed[]) => Promise<void>;
  /** How many deeds it has. */
  readonly count: () => Promise<number>;
  readonly all: () => Promise<readonly Deed[]>;
  readonly close: () => void;
}

/** The part of the Storage Buckets API (WICG draft) that is used; the page's library does not know it yet. */
interface Buckets {
  readonly open: (
    name: string,
    options: { readonly durability: 'strict'; readonly persisted: boolean },
  ) => Promise<{ readonly indexedDB: IDBFactory }>;
}

const bucketsOf = (navigator: Navigator & { readonly storageBuckets?: Buckets }): Buckets | undefined =>
  navigator.storageBuckets;

interface Opened {
  readonly db: IDBDatabase;
  /** Held on to: once it is collected as garbage, its database answers no more. */
  readonly bucket: unknown;
}

const openDatabase = async (name: string): Promise<Opened | undefined> => {
  const bucket = await bucketsOf(navigator)?.open('second-copy', { durability: 'strict', persisted: true });
  if (bucket === undefined) return undefined;
  return new Promise((resolve, reject) => {
    const request = bucket.indexedDB.open(name, 1);
    request.onupgradeneeded = () => {
      request.result.createObjectStore('deeds', { keyPath: ['outfit', 'device', 'seq'] });
    };
    request.onsuccess = () => resolve({ db: request.result, bucket });
    request.onerror = () => reject(request.error);
    request.onblocked = () => reject(new DOMException('blocked', 'AbortError'));
  });
};

/** What a promise comes to, or nothing when it fails or does not settle in time. */
const inTime = async <T>(work: Promise<T>, timeoutMs: number): Promise<T | undefined> => {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const late = new Promise<undefined>((done) => {
    timer = setTimeout(() => done(undefined), timeoutMs);
  });
  try {
    return await Promise.race([work, late]);
  } catch {
    return undefined;
  } finally {
    clearTimeout(timer);
  }
};

/**
 * Opens the second copy of the ledger `name`; nothing where the browser cannot, or does not answer within `timeoutMs`.
 * Never rejects.
 */
export const openSecondCopy = async (name: string, timeoutMs: number): Promise<SecondCopy | undefined> => {
  const opening = openDatabase(name);
  const opened = await inTime(opening, timeoutMs);
  if (opened === undefined) {
    opening.then(
      (late) => late?.db.close(),
      () => undefined,
    );
    return undefined;
  }
  const held: { readonly bucket: unknown; whole: boolean } = { bucket: opened.bucket, whole: true };
  const db = wrap(opened.db);
  db.addEventListener('close', () => {
    held.whole = false;
  });
  db.addEventListener('versionchange', () => {
    held.whole = false;
    db.close();
  });
  /** Work that a deed may wait for: it settles in any case, and is not tried again after it failed once. */
  const attempt = async <T>(work: () => Promise<T>): Promise<T | undefined> => {
    if (!held.whole) return undefined;
    const done = await inTime(work(), timeoutMs);
    if (done === undefined) held.whole = false;
    return done;
  };
  return {
    add: async (deeds) => {
      await attempt(async () => {
        const tx = db.transaction('deeds', 'readwrite', { durability: 'strict' });
        const puts = deeds.map((deed) => tx.objectStore('deeds').put(deed));
        await Promise.all([...puts, tx.done]);
        return true;
      });
    },
    count: async () => (await attempt(() => db.count('deeds'))) ?? 0,
    all: async () => (await attempt(() => db.getAll('deeds') as Promise<Deed[]>)) ?? [],
    close: () => db.close(),
  };
};
