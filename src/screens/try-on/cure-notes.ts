import type { Cause, Entry } from '../../fitting/entry.ts';
import type { Observation } from '../../fitting/observation.ts';
import { nm } from '../../length/length.ts';
import type { Rework } from '../../order/running-types.ts';
import { undoId } from '../../order/step.ts';
import type { Progress, Seen } from '../../store/progress-types.ts';

/** What was seen in a garment and still asks for something. */
export const openNotes = (progress: Pick<Progress, 'seen'>, garment: string): readonly Seen[] =>
  progress.seen.filter((note) => note.garment === garment && note.state === 'open');

/** A note as it is reckoned with. */
export const observationOf = (note: Seen): Observation => ({
  id: note.deed,
  garment: note.garment,
  entry: note.entry,
  side: note.side,
  ...(note.amount === undefined ? {} : { amount: nm(note.amount) }),
  ...(note.sure === undefined ? {} : { sure: note.sure }),
  out: note.out ?? [],
});

/** Not yet in the ledger: its name is not the one that it will have. */
export const unkept = (note: Pick<Seen, 'deed'>): boolean => note.deed.startsWith('~');

/** A name for the rework of these notes that no other rework has: letters, digits and hyphens. */
export function reworkName(notes: readonly Pick<Seen, 'deed'>[], reworks: readonly { id: string }[]): string {
  const base = `r-${notes.at(-1)?.deed ?? 'none'}`.replaceAll(/[^A-Za-z0-9-]/g, '');
  const taken = new Set(reworks.map(({ id }) => id));
  let name = base;
  for (let n = 2; taken.has(name); n += 1) name = `${base}-${n}`;
  return name;
}

/** What was seen, in words; a note from a newer version says what the maker wrote. */
export function seenWords(note: Seen | undefined, entry: Entry | undefined): string {
  const side = note === undefined || note.side === 'both' ? '' : ` (${note.side} side)`;
  return `${entry?.seen ?? note?.words ?? 'Something that this version does not know'}${side}`;
}

/** A cause by its id. */
export const causeOf = (entry: Entry | undefined, cause: string): Cause | undefined =>
  entry?.causes.find(({ id }) => id === cause);

/** The latest rework of a garment of which something is still to be done. */
export function inHand(progress: Pick<Progress, 'reworks' | 'done'>, garment: string): Rework | undefined {
  const done = new Set(progress.done);
  return progress.reworks.findLast(
    (rework) =>
      rework.undo.some((step) => step.garment === garment && !done.has(undoId(rework.id, step))) ||
      rework.again.some(({ step }) => step.startsWith(`${garment}/`) && !done.has(step)),
  );
}
