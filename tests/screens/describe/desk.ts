import shirtFile from '../../../demo-data/plain-shirt.json' with { type: 'json' };
import { newOutfit } from '../../../src/outfit/changing/new-outfit.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import * as rooms from '../../../src/screens/rooms.ts';
import { type Session, startSession } from '../../../src/screens/session.ts';
import type { Act } from '../../../src/store/deed.ts';
import { addUp } from '../../../src/store/progress.ts';
import { memoryLedger } from '../fixture.ts';

/** An outfit in work with the real rooms behind it, and a ledger in memory. */
export interface Desk {
  readonly session: Session;
  /** What was written to the ledger since the outfit was begun. */
  readonly acts: () => readonly Act[];
  /** The outfit as it is read from what lies in the ledger. */
  readonly outfit: () => Outfit;
}

const readRight = (raw: unknown): Outfit => {
  const read = rooms.readOutfit(raw);
  if (!read.ok) throw new Error(read.error.map((one) => one.wrong).join('; '));
  return read.value;
};

/** The demonstration shirt, made without units. */
export const shirt: Outfit = readRight(shirtFile);

/** An outfit with nothing in it yet. */
export const empty: Outfit = newOutfit({
  id: 'lamplighter',
  name: 'The lamplighter',
  date: '2027-02-13',
  event: 'A parade',
  units: 'in',
});

const desks: Session[] = [];

/** Puts an outfit in work, with these acts done already. */
export function desk(outfit: Outfit, ...before: readonly Act[]): Desk {
  let time = 1_000;
  const now = (): number => {
    time += 1;
    return time;
  };
  const memory = memoryLedger(now);
  memory.put(outfit.id, [{ kind: 'outfit-begun', description: writeOutfit(outfit) }, ...before]);
  const begun = memory.deeds.length;
  const session = startSession(addUp(memory.deeds, outfit.id), {
    ledger: memory.ledger,
    rooms,
    now,
    seen: now,
    afterPaint: (work) => work(),
  });
  desks.push(session);
  return {
    session,
    acts: () => memory.deeds.slice(begun).map((deed) => deed.act),
    outfit: () => readRight(session.progress.value.description),
  };
}

/** Ends what {@link desk} began; call it after each test. */
export function clearDesks(): void {
  for (const session of desks.splice(0)) session.close();
  localStorage.clear();
  location.hash = '';
}
