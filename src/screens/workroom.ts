import { signal } from '@preact/signals';
import type { Act, Deed } from '../store/deed.ts';
import { type Ledger, openLedger } from '../store/ledger.ts';
import { look, now } from '../ui/clock.ts';
import { lastOutfit } from './choices.ts';
import { trouble } from './house.tsx';
import type * as Rooms from './rooms.ts';
import { readHash, writeHash } from './route.ts';
import { type Session, startSession } from './session.ts';
import { keepWarm, mayBeWarm, warmCard } from './warm-card.ts';

/** The rooms that a session passes through, fetched when they are first wanted. */
export const rooms = (): Promise<typeof Rooms> => import('./rooms.ts');

/** The outfit in work; undefined until it is loaded. */
export const session = signal<Session | undefined>(undefined);

const words = (error: unknown): string => (error instanceof Error ? error.message : String(error));

const afterPaint = (work: () => void): void => {
  requestAnimationFrame(() => setTimeout(work, 0));
};

/** Settles once the page has been drawn and is idle, or after a second and a half at the latest. */
const atLeisure = (): Promise<void> =>
  new Promise((resolve) => {
    afterPaint(() => {
      if (typeof requestIdleCallback === 'function') requestIdleCallback(() => resolve(), { timeout: 1500 });
      else setTimeout(resolve, 200);
    });
  });

let opening: Promise<Ledger> | undefined;

/** The ledger of this device, opened once; opened anew after a failure. Rejects with words for the maker. */
export function ledger(): Promise<Ledger> {
  opening ??= openLedger({
    onTrouble: (found) => {
      trouble.value = found.message;
    },
    onOthers: (deeds) => session.value?.hear(deeds),
  }).catch((error: unknown) => {
    opening = undefined;
    trouble.value = words(error);
    throw error;
  });
  return opening;
}

/** Goes to the bench of the outfit worked on last by the ledger, if the maker has gone nowhere meanwhile. */
export async function comeBack(): Promise<void> {
  const [last] = await (await ledger()).outfits();
  if (last === undefined || readHash(location.hash) !== undefined) return;
  location.replace(writeHash({ screen: 'bench', outfit: last.outfit }));
}

let wanted = '';
let takingUp = false;
let askedToKeep = false;

/** Asks the browser to keep the work, once there is some. */
async function keepWork(): Promise<void> {
  if (askedToKeep) return;
  askedToKeep = true;
  const { askToKeep } = await import('../store/keeping.ts');
  await askToKeep();
}

/** Puts an outfit in work, unless it is already, or is being taken up. */
export async function takeUp(outfit: string): Promise<void> {
  if (wanted === outfit && (session.value?.id === outfit || takingUp)) return;
  wanted = outfit;
  takingUp = true;
  try {
    await load(outfit);
  } finally {
    if (wanted === outfit) takingUp = false;
  }
}

async function load(outfit: string): Promise<void> {
  const early = mayBeWarm(outfit) ? undefined : rooms();
  const open = await ledger();
  const progress = await open.load(outfit);
  const warm = warmCard(progress);
  // With a card to show, the order is derived when the maker has had time to touch it.
  const furnished = warm ? atLeisure().then(rooms) : (early ?? rooms());
  const found = warm ? furnished : await furnished;
  if (wanted !== outfit) return;
  session.value?.close();
  if (progress.description !== undefined) lastOutfit.value = outfit;
  session.value = startSession(progress, {
    rooms: found,
    warm,
    worked: keepWarm,
    ledger: {
      async write(id, acts) {
        const deeds = await open.write(id, acts);
        if (acts.some((act) => act.kind !== 'step-opened')) void keepWork();
        return deeds;
      },
    },
    now: Date.now,
    seen: () => now.value,
    afterPaint,
  });
}

/**
 * Writes deeds of an outfit from a screen that is not its own; the outfit in work sees them at once, if it is that one.
 * Settles when the ledger has them; rejects with words for the maker.
 */
export async function writeDown(outfit: string, acts: readonly Act[]): Promise<readonly Deed[]> {
  const deeds = await (await ledger()).write(outfit, acts);
  if (session.value?.id === outfit) session.value.hear(deeds);
  void keepWork();
  return deeds;
}

/** Begins an outfit from its description, which must have been read before; one that was begun stays as it is. */
export async function begin(id: string, description: unknown): Promise<void> {
  const open = await ledger();
  const there = await open.outfits();
  if (there.some((entry) => entry.outfit === id)) return;
  await open.write(id, [{ kind: 'outfit-begun', description }]);
}

document.addEventListener('visibilitychange', look);
