import type { DBSchema, IDBPDatabase } from 'idb';
import type { Deed } from './deed.ts';

/** What the ledger keeps of one outfit beside its deeds. */
export interface OutfitEntry {
  readonly outfit: string;
  /** How many deeds it has. */
  readonly deeds: number;
  /** Clock readings of its first deed and its last, ms since 1970. */
  readonly begun: number;
  readonly last: number;
  /** Place of the last deed in order; later ones are put after it. */
  readonly newest: number;
  /** Deeds since the last snapshot. */
  readonly since: number;
}

/** The stores of the ledger's database. */
export interface LedgerSchema extends DBSchema {
  /** Deeds by outfit, device and number, never changed. */
  deeds: { key: [string, string, number]; value: Deed };
  /** One snapshot an outfit; each can be thrown away. */
  snapshots: { key: string; value: unknown };
  outfits: { key: string; value: OutfitEntry };
  /** One entry, `this`: the name of this device and the number of its next deed. */
  device: { key: string; value: { readonly name: string; readonly next: number } };
}

/** Version of the database, counted up when its stores change. */
export const LEDGER_VERSION = 1;

/** Makes the stores that are missing. */
export const upgradeLedger = (db: IDBPDatabase<LedgerSchema>, from: number): void => {
  if (from < 1) {
    db.createObjectStore('deeds', { keyPath: ['outfit', 'device', 'seq'] });
    db.createObjectStore('snapshots');
    db.createObjectStore('outfits', { keyPath: 'outfit' });
    db.createObjectStore('device');
  }
};
