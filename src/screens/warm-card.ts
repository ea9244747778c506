import type { Card } from '../order/card-types.ts';
import type { Progress } from '../store/progress-types.ts';
import { keep, recall } from '../ui/safe-storage.ts';

/**
 * The open card as it was last worked out, kept so that a cold start can show it, and count on it, before the order is
 * derived anew. It is only a copy: it is used for as long as nothing has changed that it was worked out from, and the
 * derived card takes its place as soon as there is one.
 */
export interface WarmCard {
  readonly card: Card;
  readonly units: 'in' | 'mm';
}

/** Which build wrote it: a newer one may make other cards. The address of a built file carries its hash. */
const BUILD = import.meta.url;

/** What a card is worked out from, in few letters. */
function basisOf(progress: Progress): string {
  const text = JSON.stringify([progress.description, progress.reworks]);
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  const waived = [...progress.waived].join();
  const added = JSON.stringify(progress.added);
  return [BUILD, progress.done.length, progress.done.at(-1) ?? '', added, waived, text.length, hash].join(
    '|',
  );
}

const name = (outfit: string): string => `card.${outfit}`;

/** Keeps the open card; silently not, where the storage is full or closed. */
export function keepWarm(progress: Progress, warm: WarmCard): void {
  keep(name(progress.outfit), JSON.stringify({ basis: basisOf(progress), ...warm }));
}

/** True where a card of this outfit is kept, of use or not. */
export const mayBeWarm = (outfit: string): boolean => recall(name(outfit)) !== undefined;

/** The kept card of an outfit, if it is the open one and everything it was worked out from is as it was. */
export function warmCard(progress: Progress): WarmCard | undefined {
  const kept = recall(name(progress.outfit));
  if (kept === undefined || progress.open === undefined) return undefined;
  try {
    const { basis, card, units } = JSON.parse(kept) as WarmCard & { readonly basis: string };
    return basis === basisOf(progress) && card.step === progress.open ? { card, units } : undefined;
  } catch {
    return undefined;
  }
}
