import { cardFor } from '../../src/order/card.ts';
import type { Card } from '../../src/order/card-types.ts';
import { fresh, runningOrder } from '../../src/order/running.ts';
import type { Running, Standing } from '../../src/order/running-types.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { writeBackup } from '../../src/store/backup.ts';
import type { Act, Deed } from '../../src/store/deed.ts';
import { demo, demoData, type demos } from '../outfit/demo-files.ts';

/** The demonstrations, named as their buttons are. */
export const NAMES = {
  'harbour-clockmaker': 'Harbour Clockmaker',
  'plain-shirt': 'plain shirt',
  'glasshouse-astronomer': 'Glasshouse Astronomer',
} as const;

/** The order of a demonstration, worked out here and not in the browser. Throws where it runs in a ring. */
export function orderOf(outfit: Outfit, standing: Partial<Standing> = {}): Running {
  const found = runningOrder(outfit, { ...fresh, ...standing });
  if (!found.ok) throw new Error(found.error.say);
  return found.value;
}

/** A card of a demonstration, worked out here and not in the browser. */
export function cardOf(outfit: Outfit, running: Running, step: string | undefined): Card {
  const card = step === undefined ? undefined : cardFor(outfit, running, step);
  if (!card) throw new Error(`There is no card ${step}.`);
  return card;
}

/** The first step of the order, past `after`, that has this kind of readout, and the steps before it. */
export function firstWith(
  outfit: Outfit,
  kind: Card['readout']['kind'],
  after?: string,
): { readonly step: string; readonly before: readonly string[]; readonly card: Card } {
  const running = orderOf(outfit);
  const from = after === undefined ? 0 : running.sequence.indexOf(after) + 1;
  const index = running.sequence.findIndex(
    (id, i) => i >= from && cardOf(outfit, running, id).readout.kind === kind,
  );
  const step = running.sequence[index];
  if (step === undefined) throw new Error(`No card has a readout of kind ${kind}.`);
  return { step, before: running.sequence.slice(0, index), card: cardOf(outfit, running, step) };
}

const DEVICE = 'aaaa0000bbbb1111';
/** A morning before any test is run. */
const MORNING = Date.UTC(2026, 0, 10, 8);

/** A saved copy as another device would have made it: the demonstration begun, then these acts, a minute apart. */
export async function savedCopy(
  name: (typeof demos)[number],
  acts: readonly Act[],
  every = 60_000,
): Promise<{ name: string; mimeType: string; buffer: Buffer }> {
  const outfit = demo(name).id;
  const all: Act[] = [{ kind: 'outfit-begun', description: demoData(name) }, ...acts];
  const deeds = all.map(
    (act, seq): Deed => ({
      id: `${DEVICE}-${seq}`,
      device: DEVICE,
      seq,
      at: MORNING + seq * every,
      outfit,
      act,
    }),
  );
  const blob = await writeBackup(outfit, deeds);
  return {
    name: 'copy.slipbaste',
    mimeType: 'application/gzip',
    buffer: Buffer.from(await blob.arrayBuffer()),
  };
}

/** All these steps done, and another opened. */
export const worked = (done: readonly string[], open?: string): Act[] => [
  ...done.map((step): Act => ({ kind: 'step-done', step })),
  ...(open === undefined ? [] : [{ kind: 'step-opened', step: open } as const]),
];
