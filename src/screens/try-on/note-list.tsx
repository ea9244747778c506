import { entryCalled } from '../../fitting/entries/all.ts';
import { nm } from '../../length/length.ts';
import { writeLength } from '../../length/writing.ts';
import type { Garment } from '../../outfit/outfit.ts';
import type { Seen } from '../../store/progress-types.ts';
import { markingFor } from '../choices.ts';
import { focusOn } from '../describe/focus-on.ts';
import type { Session } from '../session.ts';
import { causeOf, seenWords, unkept } from './cure-notes.ts';
import { keepReplaced, layBack, tryHash } from './notes.ts';

const STATES: Readonly<Record<Seen['state'], string>> = {
  open: '',
  cured: 'cured',
  'let be': 'may stay as it is',
};

/** What was seen of a garment so far, the last first: what is open, then what is settled. */
export function NoteList(props: {
  readonly session: Session;
  readonly garment: Garment;
  /** Headed by the garment's name. */
  readonly named?: boolean;
}) {
  const { session, garment, named = false } = props;
  const notes = session.progress.value.seen.filter((note) => note.garment === garment.id).toReversed();
  const [open, settled] = [
    notes.filter(({ state }) => state === 'open'),
    notes.filter(({ state }) => state !== 'open'),
  ];
  if (notes.length === 0) return null;
  return (
    <section data-part="noted">
      <h2>{named ? garment.name : 'Seen so far'}</h2>
      <ul class="notes">
        {open.map((note) => (
          <Note key={note.deed} session={session} note={note} />
        ))}
      </ul>
      {settled.length > 0 && (
        <details>
          <summary>{settled.length} settled</summary>
          <ul class="notes">
            {settled.map((note) => (
              <Note key={note.deed} session={session} note={note} />
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}

function Note({ session, note }: { readonly session: Session; readonly note: Seen }) {
  const entry = entryCalled(note.entry);
  const said = seenWords(note, entry);
  const marking = markingFor(session.units.value);
  const told = [
    note.amount !== undefined
      ? writeLength(nm(note.amount), marking).text
      : entry?.asks !== undefined && note.state === 'open'
        ? 'not measured yet'
        : '',
    STATES[note.state],
    note.sure === undefined ? '' : `because ${causeOf(entry, note.sure)?.is ?? 'of what a test showed'}`,
  ].filter(Boolean);
  const inLedger = !unkept(note);
  return (
    <li class="noted" data-note={note.entry} data-state={note.state}>
      <div class="noted-head">
        {note.photo !== undefined && <img src={note.photo} alt={`As it was: ${said}`} />}
        <div>
          <b>{said}</b>
          {told.length > 0 && <p>{told.join(', ')}</p>}
          {entry && note.words !== undefined && note.words !== '' && <p class="quiet">“{note.words}”</p>}
        </div>
      </div>
      <div class="choice">
        {note.state === 'open' && inLedger && entry && (
          <a class="plain" href={tryHash(session, note.garment, 'kept', note.deed)}>
            Look again<span class="unseen">: {said}</span>
          </a>
        )}
        {note.state === 'open' && (
          <button
            type="button"
            class="plain"
            disabled={!inLedger}
            onClick={() => {
              session.act({ kind: 'let-be', seen: note.deed });
              focusOn();
            }}
          >
            Let it be<span class="unseen">: {said}</span>
          </button>
        )}
        {note.state !== 'cured' && (
          <button
            type="button"
            class="plain"
            disabled={!inLedger}
            onClick={() => {
              layBack(session, note);
              keepReplaced(session, undefined);
              session.act({ kind: 'undone', deed: note.deed });
              focusOn();
            }}
          >
            Take off<span class="unseen">: {said}</span>
          </button>
        )}
      </div>
    </li>
  );
}
