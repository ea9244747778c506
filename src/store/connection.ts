import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import { isLost, Trouble, troubleOf } from './trouble.ts';

/** How to open a database and whom to tell. */
export interface ConnectionOptions<S extends DBSchema> {
  readonly name: string;
  readonly version: number;
  /** Makes what is missing; `from` is the version found, 0 for none. Only called when versions differ. */
  readonly upgrade: (db: IDBPDatabase<S>, from: number) => void;
  /** How long one try of opening may take, ms. There are two tries. */
  readonly timeoutMs: number;
  /** Told of trouble as it comes up, also of trouble that passes. */
  readonly onTrouble: (trouble: Trouble) => void;
}

/** A connection that is made when needed, and once again when it breaks. */
export interface Connection<S extends DBSchema> {
  /**
   * Does a piece of work. When the connection turns out to be gone, it is made anew and the work is done once more, so
   * the work must bear being done twice. Rejects with {@link Trouble}.
   */
  readonly use: <T>(work: (db: IDBPDatabase<S>) => Promise<T>) => Promise<T>;
  readonly close: () => void;
}

const BLOCKED =
  'Slipbaste is open in another tab or window in an older version. Close the others; then this one goes on by itself.';
const STILL_BLOCKED =
  'Slipbaste is still open in another tab or window in an older version. Close the others, then reload this page.';
const SLOW =
  'The browser does not open the ledger. Close all tabs of Slipbaste, or restart the browser, then come back. Nothing is lost.';
const SUPERSEDED = 'A newer Slipbaste wants to open this ledger in another tab. Reload this page to go on.';

/** One opened or opening database, and whether the browser has cut it off. */
interface Seat<S extends DBSchema> {
  readonly db: Promise<IDBPDatabase<S>>;
  cut: boolean;
}

/** Makes a connection. Nothing is opened before the first piece of work. */
export const connection = <S extends DBSchema>(options: ConnectionOptions<S>): Connection<S> => {
  const { name, version, upgrade, timeoutMs, onTrouble } = options;
  let current: Seat<S> | undefined;

  /** One open with all its tries; settles after two time-outs at the latest. `leave` gives the seat up. */
  const open = (leave: (cut: boolean) => void): Promise<IDBPDatabase<S>> =>
    new Promise((resolve, reject) => {
      let settled = false;
      let blocked = false;
      const tryOnce = (): void => {
        let db: IDBPDatabase<S> | undefined;
        const opening = openDB<S>(name, version, {
          upgrade: (made, from) => upgrade(made, from),
          blocked: () => {
            blocked = true;
            if (!settled) onTrouble(new Trouble('blocked', BLOCKED));
          },
          blocking: (_current, wanted) => {
            // Holding on would hang the newer tab. A deletion (no version wanted) needs no words.
            leave(false);
            db?.close();
            if (wanted !== null) onTrouble(new Trouble('newer', SUPERSEDED));
          },
          terminated: () => leave(true),
        });
        opening.then(
          (opened) => {
            db = opened;
            clearTimeout(timer);
            // A try that comes home late must not hold the database open behind everyone's back.
            if (settled) opened.close();
            else resolve(opened);
            settled = true;
          },
          (cause) => {
            clearTimeout(timer);
            if (!settled) reject(troubleOf(cause));
            settled = true;
          },
        );
      };
      const giveUp = (): void => {
        if (settled) return;
        settled = true;
        reject(blocked ? new Trouble('blocked', STILL_BLOCKED) : new Trouble('slow', SLOW));
      };
      let timer = setTimeout(() => {
        timer = setTimeout(giveUp, timeoutMs);
        // Some browsers forget the first open after a start; a second one wakes them.
        if (!blocked) tryOnce();
      }, timeoutMs);
      tryOnce();
    });

  const seat = (): Seat<S> => {
    if (current !== undefined) return current;
    const leave = (cut: boolean): void => {
      taken.cut ||= cut;
      if (current === taken) current = undefined;
    };
    const taken: Seat<S> = { db: open(leave), cut: false };
    current = taken;
    taken.db.catch(() => leave(false));
    return taken;
  };

  const close = (left: Seat<S>): void => {
    if (current === left) current = undefined;
    left.db.then(
      (db) => db.close(),
      () => undefined,
    );
  };

  return {
    async use(work) {
      const first = seat();
      try {
        return await work(await first.db);
      } catch (cause) {
        if (!first.cut && !isLost(cause)) throw troubleOf(cause);
      }
      close(first);
      try {
        const done = await work(await seat().db);
        onTrouble(new Trouble('lost', 'The connection to the ledger broke and was made again.'));
        return done;
      } catch (cause) {
        throw troubleOf(cause);
      }
    },
    close: () => {
      if (current !== undefined) close(current);
    },
  };
};
