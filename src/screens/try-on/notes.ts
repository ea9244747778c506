import { causesLeft } from '../../fitting/asked.ts';
import type { Entry } from '../../fitting/entry.ts';
import { nm } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import type { Act, DeedId } from '../../store/deed.ts';
import type { Progress, Seen } from '../../store/progress-types.ts';
import { MOST_WORDS, readFitting } from '../../store/read-fitting.ts';
import { keepDraft, recallDraft, type Written } from '../describe/drafts.ts';
import { fieldLength } from '../describe/filled.ts';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { observationOf, unkept } from './cure-notes.ts';

/** The address of a page of the try-on: `tryHash(session, 'shirt', 'cure')`. */
export const tryHash = ({ id }: Pick<Session, 'id'>, ...at: readonly string[]): string =>
  writeHash({ screen: 'try', outfit: id, at });

/** Under this name the form about something seen keeps what is written in it. */
export const noteKey = (session: Pick<Session, 'id'>, garment: string, entry: string): string =>
  `${session.id}/try/${garment}/${entry}`;

/** Why words are too many for one note; undefined where they go in. */
export const wordsFault = ({ length }: string): string | undefined =>
  length <= MOST_WORDS
    ? undefined
    : `A note holds ${MOST_WORDS} letters, and these are ${length - MOST_WORDS} more. Put the rest in a second note.`;

/** What a form about something seen shows of a note that is kept already. */
export const noteWritten = (note: Seen, unit: ReadingUnit): Written => ({
  side: note.side,
  amount: note.amount === undefined ? '' : fieldLength(nm(note.amount), unit),
  sure: note.sure ?? '',
  out: (note.out ?? []).join(' '),
  words: note.words ?? '',
  photo: note.photo ?? '',
});

/** What was written in a note that is taken off stands in its form again, where nothing newer stands. */
export function layBack(session: Session, note: Seen): void {
  const key = noteKey(session, note.garment, note.entry);
  if (Object.keys(recallDraft(key)).length > 0) return;
  const unit = session.units.peek();
  keepDraft(key, { ...noteWritten(note, unit), ' rule': unit });
}

const replacedKey = ({ id }: Pick<Session, 'id'>): string => `${id}/try/ replaced`;

/** Remembers the note whose place the last one took, so that undo brings it back; none where it took no place. */
export function keepReplaced(session: Session, note: Seen | undefined): void {
  if (!note) {
    keepDraft(replacedKey(session), {});
    return;
  }
  const { deed: _deed, at: _at, state: _state, ...what } = note;
  keepDraft(replacedKey(session), { act: JSON.stringify({ kind: 'seen', ...what }), entry: note.entry });
}

/** The note whose place this one took, as it was written; undefined where it took none. */
function replacedBy(session: Session, note: Seen): Act | undefined {
  const { act, entry } = recallDraft(replacedKey(session));
  if (act === undefined || entry !== note.entry) return undefined;
  const read = readFitting(JSON.parse(act));
  return read.ok ? read.value : undefined;
}

/** Takes back the last note: what stood before it stands again, and what was typed in it is in its form. */
export async function takeBack(session: Session): Promise<void> {
  const last = (): Seen | undefined => {
    const progress = session.progress.peek();
    return noteCalled(progress, lastHere(progress)?.deed ?? '');
  };
  const shown = last();
  // It has its own name once it is in the ledger.
  if (shown && unkept(shown)) await session.settled();
  const note = last();
  const before = note && !unkept(note) ? replacedBy(session, note) : undefined;
  if (note && before) session.act({ kind: 'undone', deed: note.deed }, before);
  else {
    if (note) layBack(session, note);
    session.undo();
  }
  if (note) keepReplaced(session, undefined);
}

/** A note by the name of its deed. */
export const noteCalled = (progress: Pick<Progress, 'seen'>, deed: string): Seen | undefined =>
  progress.seen.find((note) => note.deed === deed);

/** Is there a cause behind it whose cure can be reckoned with what is known? */
export const canBeReckoned = (note: Seen, entry: Entry | undefined): boolean =>
  note.state === 'open' &&
  entry !== undefined &&
  causesLeft(entry, observationOf(note)).some(
    ({ wants }) =>
      wants.length > 0 &&
      wants.every((want) => want.kind === 'add' || want.bound === 'some' || note.amount !== undefined),
  );

/** The entries in which every word that is looked for stands: in what is seen, its place, or its causes. */
export function lookFor(entries: readonly Entry[], query: string): readonly Entry[] {
  const wanted = query
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter(Boolean);
  return entries.filter(({ seen, place, causes }) => {
    const all = [seen, place, ...causes.map(({ is }) => is)].join(' ').toLowerCase();
    return wanted.every((word) => all.includes(word));
  });
}

/** What one touch of undo takes back here; undefined where something else was done last. */
export function lastHere(progress: Progress): { readonly deed: DeedId; readonly say: string } | undefined {
  const { undo } = progress;
  if (undo?.kind === 'seen') return { deed: undo.deed, say: 'last note' };
  return undo?.kind === 'let-be' ? { deed: undo.deed, say: 'let it be' } : undefined;
}
