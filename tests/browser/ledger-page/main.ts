import { readBackup, writeBackup } from '../../../src/store/backup.ts';
import { connection } from '../../../src/store/connection.ts';
import type { Act } from '../../../src/store/deed.ts';
import { type Ledger, type LedgerOptions, openLedger } from '../../../src/store/ledger.ts';
import { addUp, applyDeeds } from '../../../src/store/progress.ts';
import type { Progress } from '../../../src/store/progress-types.ts';
import { openSecondCopy } from '../../../src/store/second-copy.ts';
import type { Trouble } from '../../../src/store/trouble.ts';

/** A touch that counts one bead of a line. */
const tap = (item = 'line'): Act => ({ kind: 'tap', step: 'beads', item, add: 1 });

/** Beads counted in all. */
const beads = (progress: Progress): number =>
  [...progress.steps.values()].flatMap((step) => [...step.counts.values()]).reduce((sum, n) => sum + n, 0);

/** Kinds of the troubles told so far. */
const troubles: string[] = [];
const told = (trouble: Trouble): void => {
  troubles.push(trouble.kind);
};

const open = (options: LedgerOptions = {}): Promise<Ledger> => openLedger({ onTrouble: told, ...options });

/** What an attempt came to: its value, or the trouble in words. */
const outcome = async (attempt: Promise<unknown>): Promise<string> => {
  try {
    return `fine: ${JSON.stringify(await attempt)}`;
  } catch (cause) {
    return `${(cause as Trouble).kind}: ${(cause as Trouble).message}`;
  }
};

/** The database by its own interface, in the given version, with no manners: it yields to nobody. */
const rawOpen = (name: string, version?: number): Promise<IDBDatabase> =>
  new Promise((resolve, reject) => {
    const request = indexedDB.open(name, version);
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });

const parts = {
  open,
  openSecondCopy,
  connection,
  tap,
  beads,
  addUp,
  applyDeeds,
  readBackup,
  writeBackup,
  troubles,
  told,
  outcome,
  rawOpen,
};

declare global {
  var bench: typeof parts;
}
globalThis.bench = parts;
