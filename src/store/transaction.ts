import type { IDBPDatabase, IDBPTransaction, StoreNames } from 'idb';
import type { LedgerSchema } from './ledger-schema.ts';

type Stores = StoreNames<LedgerSchema>[];

/** A transaction over some stores of the ledger. */
export type Tx<M extends IDBTransactionMode> = IDBPTransaction<LedgerSchema, Stores, M>;

/**
 * Does work in one transaction and gives its result back when the transaction is complete: not earlier, for a full
 * device shows itself only then. Rejects with why it was aborted. The work may wait for the database and for nothing
 * else, or the transaction ends under its hands.
 */
export const within = async <M extends 'readonly' | 'readwrite', T>(
  db: IDBPDatabase<LedgerSchema>,
  stores: Stores,
  mode: M,
  work: (tx: Tx<M>) => Promise<T>,
): Promise<T> => {
  const tx = db.transaction(stores, mode, { durability: 'strict' });
  const end = tx.done.then(
    () => undefined,
    (cause: unknown) => ({ cause }),
  );
  let result: T;
  try {
    result = await work(tx);
  } catch (cause) {
    try {
      tx.abort();
    } catch {
      // It was over already; then its own reason is the better one.
      const ended = await end;
      throw ended?.cause ?? cause;
    }
    await end;
    throw cause;
  }
  const ended = await end;
  if (ended !== undefined) throw ended.cause;
  return result;
};
