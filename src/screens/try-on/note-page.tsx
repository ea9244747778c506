import { useSignal } from '@preact/signals';
import { useId, useRef } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import type { Entry } from '../../fitting/entry.ts';
import type { Seen } from '../../store/progress-types.ts';
import { Sign } from '../../ui/signs.tsx';
import { markingFor } from '../choices.ts';
import { useFilled } from '../describe/filled.ts';
import { Head } from '../describe/head.tsx';
import { AmountBox, readAmount } from './amount-box.tsx';
import { Causes } from './causes.tsx';
import type { TriedProps } from './garment-page.tsx';
import { keepReplaced, noteKey, noteWritten, tryHash, wordsFault } from './notes.ts';
import { photoFault } from './photo.ts';
import { PhotoBox } from './photo-box.tsx';

const SIDES = [
  ['both', 'Both'],
  ['left', 'Left'],
  ['right', 'Right'],
] as const;

/** Something that is seen: how much, on which side, what is behind it, in the maker's own words, and how it looks. */
export function NotePage(
  props: TriedProps & {
    readonly entry: Entry;
    readonly note: Seen | undefined;
    /** Looked at from the page of the cure, which it leads back to. */
    readonly toCure: boolean;
  },
) {
  const { session, garment, entry, note, toCure } = props;
  const marking = markingFor(session.units.value);
  const { unit } = marking;
  const stands = note ? noteWritten(note, unit) : { side: 'both' };
  const key = note ? `${session.id}/try/kept/${note.deed}` : noteKey(session, garment.id, entry.id);
  const { text, write, clear } = useFilled(key, stands, unit, ['amount']);
  const form = useRef<HTMLFormElement>(null);
  const asked = useSignal(false);
  const sideId = useId();
  const wordsId = useId();
  const { amount, fault } = readAmount(text('amount'), unit);
  const side = SIDES.find(([id]) => id === text('side'))?.[0] ?? 'both';
  const out = text('out').split(' ').filter(Boolean);
  const back = tryHash(session, garment.id, ...(toCure ? ['cure'] : []));
  const up = [{ say: toCure ? 'How to put it right' : garment.name, href: back }];
  const [words, photo] = [text('words').trim(), text('photo')];
  const long = wordsFault(words);

  const save = (): void => {
    asked.value = true;
    const wrong =
      fault !== undefined
        ? '[data-field="amount"] input'
        : long !== undefined
          ? '[data-field="words"] textarea'
          : photoFault(photo) !== undefined
            ? '[data-part="photo"] input'
            : undefined;
    if (wrong !== undefined) {
      form.current?.querySelector<HTMLElement>(wrong)?.focus();
      return;
    }
    const sure = text('sure');
    session.act(
      {
        kind: 'seen',
        garment: garment.id,
        entry: entry.id,
        side,
        ...(amount === undefined ? {} : { amount }),
        ...(sure === '' ? {} : { sure }),
        ...(out.length === 0 ? {} : { out }),
        ...(words === '' ? {} : { words }),
        ...(photo === '' ? {} : { photo }),
      },
      ...(note ? [{ kind: 'undone', deed: note.deed } as const] : []),
    );
    keepReplaced(session, note);
    clear();
    location.hash = back;
  };

  return (
    <main class="page try" data-part="note" data-entry={entry.id}>
      <Head session={session} up={up} title={entry.seen} />
      <form
        ref={form}
        noValidate
        class="note-form"
        aria-label={entry.seen}
        onSubmit={(event) => {
          event.preventDefault();
          save();
        }}
      >
        {entry.asks !== undefined && (
          <AmountBox
            label={entry.asks}
            text={text('amount')}
            fault={asked.value ? fault : undefined}
            marking={marking}
            onText={(now) => write('amount', now)}
          />
        )}
        <fieldset class="field-box one-of" data-field="side">
          <legend>On which side of the wearer</legend>
          <div class="options sides">
            {SIDES.map(([id, label]) => (
              <label key={id} class="option">
                <input
                  type="radio"
                  name={sideId}
                  value={id}
                  checked={side === id}
                  onChange={() => write('side', id)}
                />
                <span>{label}</span>
              </label>
            ))}
          </div>
        </fieldset>
        <Causes
          entry={entry}
          tested={{ sure: text('sure'), out }}
          onTested={(tested) => {
            write('sure', tested.sure);
            write('out', tested.out.join(' '));
          }}
        />
        <div class="field-box" data-field="words">
          <label for={wordsId}>In your own words</label>
          <textarea
            id={wordsId}
            class="field lines"
            rows={2}
            value={text('words')}
            aria-invalid={long !== undefined}
            {...(long === undefined ? {} : { 'aria-describedby': `${wordsId}-fault` })}
            onInput={(event) => write('words', event.currentTarget.value)}
          />
          {long !== undefined && (
            <p class="fault" id={`${wordsId}-fault`} role="alert" data-part="fault">
              <Sign name="caution" />
              <span>{long}</span>
            </p>
          )}
        </div>
        <PhotoBox photo={photo} what={entry.seen} onPhoto={(photo) => write('photo', photo)} />
        <cite class="quiet">{writeSource(entry.source)}</cite>
        <div class="try-foot">
          <button type="submit" class="main" data-part="note-it">
            {note ? 'Keep the changes' : 'Note it'}
          </button>
        </div>
      </form>
    </main>
  );
}
