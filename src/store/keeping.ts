/** Whether the browser has promised not to clear the ledger away by itself, and that in words for the maker. */
export interface Keeping {
  readonly state: 'kept' | 'not kept' | 'unknown';
  readonly words: string;
}

const KEPT: Keeping = {
  state: 'kept',
  words:
    'The browser keeps your work until you clear it. A backup is still the only copy outside this device.',
};
const NOT_KEPT: Keeping = {
  state: 'not kept',
  words:
    'The browser may clear your work when room is short or after days without a visit. Install Slipbaste on the home screen, and save a backup often.',
};
const UNKNOWN: Keeping = {
  state: 'unknown',
  words: 'This browser does not say whether it keeps your work. Save a backup often.',
};

/** What is used of the browser; given by tests. */
export interface KeepingSources {
  readonly storage?: Pick<StorageManager, 'persist' | 'persisted'> | undefined;
  readonly notes?: Pick<Storage, 'getItem' | 'setItem'> | undefined;
}

const ASKED = 'slipbaste asked to keep';
const WORKED = 'slipbaste has work';

/** The browser's own, each missing in some browser or private window. */
const sources = (): KeepingSources => {
  try {
    return { storage: globalThis.navigator?.storage, notes: globalThis.localStorage };
  } catch {
    return { storage: globalThis.navigator?.storage };
  }
};

const read = (notes: KeepingSources['notes'], name: string): string | null => {
  try {
    return notes?.getItem(name) ?? null;
  } catch {
    return null;
  }
};

const remember = (notes: KeepingSources['notes'], name: string): void => {
  try {
    notes?.setItem(name, '1');
  } catch {
    // Without it the browser is asked once more next time, which does no harm.
  }
};

/** Whether the work is kept, as far as the browser says, without asking it for anything. Never rejects. */
export const keepingNow = async ({ storage } = sources()): Promise<Keeping> => {
  try {
    if (typeof storage?.persisted !== 'function') return UNKNOWN;
    return (await storage.persisted()) ? KEPT : NOT_KEPT;
  } catch {
    return UNKNOWN;
  }
};

/**
 * Asks the browser to keep the work; call it at the first real deed, when the maker has something to lose. Asked once:
 * an answer of no is remembered, for some browsers put the question to the maker each time. Never rejects.
 */
export const askToKeep = async (from: KeepingSources = sources()): Promise<Keeping> => {
  const { storage, notes } = from;
  remember(notes, WORKED);
  const now = await keepingNow(from);
  if (now.state === 'kept' || typeof storage?.persist !== 'function' || read(notes, ASKED) !== null)
    return now;
  try {
    const granted = await storage.persist();
    remember(notes, ASKED);
    return granted ? KEPT : NOT_KEPT;
  } catch {
    return now;
  }
};

/**
 * Words for the maker when there was work on this device and the ledger is empty now; nothing when all is as it should
 * be. `outfits` is how many the ledger has.
 */
export const missingWork = (outfits: number, { notes } = sources()): string | undefined =>
  outfits === 0 && read(notes, WORKED) !== null
    ? 'There was work on this device, and the browser no longer has it. Import your last backup to go on.'
    : undefined;
