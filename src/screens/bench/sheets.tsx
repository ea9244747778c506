import { useSignal } from '@preact/signals';
import { writeSource } from '../../cloth/source.ts';
import type { Reason } from '../../order/card-types.ts';
import type { StepId } from '../../order/step.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { ChoicesPanel, KeysPanel } from '../choices-panel.tsx';
import { HouseNotice } from '../house.tsx';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { DoesNotFit } from './does-not-fit.tsx';
import { PutElsewhere } from './put-elsewhere.tsx';
import './sheets.css';

/** What every sheet over the bench or the order gets. */
export interface SheetProps {
  readonly session: Session;
  readonly onClose: () => void;
  /** The step it is about; the open one where none is given. */
  readonly step?: StepId;
}

function Reasons(props: {
  readonly title: string;
  readonly none: string;
  readonly reasons: readonly Reason[];
  readonly session: Session;
}) {
  const { title, none, reasons, session } = props;
  return (
    <section>
      <h3>{title}</h3>
      {reasons.length === 0 && <p class="quiet">{none}</p>}
      <ul class="reasons">
        {reasons.map((reason) => (
          <li key={reason.step + reason.because}>
            <b>{reason.say}</b>
            <p>{reason.because}</p>
            <cite>{writeSource(reason.source)}</cite>
            {reason.waive !== '' && (
              <button
                type="button"
                class="plain"
                onClick={() => session.act({ kind: 'reason-waived', key: reason.waive })}
              >
                Waive this reason
              </button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Why this step now, what still has to come first, and what waits for it; with the maker's own say in it. */
export function WhySheet({ session, onClose, step = session.step.value }: SheetProps) {
  const why = step === undefined ? undefined : session.why(step);
  if (step === undefined || !why) return null;
  return (
    <Sheet title={session.running.value?.steps.get(step)?.say ?? 'Why now'} onClose={onClose}>
      <Reasons
        title="Still to come first"
        none="Nothing. It can be done now."
        reasons={why.notYet}
        session={session}
      />
      <Reasons
        title="Had to come first, and is done"
        none="Nothing had to come first."
        reasons={why.now}
        session={session}
      />
      <Reasons title="Waits for this" none="Nothing waits for it." reasons={why.waits} session={session} />
      <AddReason session={session} step={step} />
    </Sheet>
  );
}

function AddReason({ session, step }: { readonly session: Session; readonly step: StepId }) {
  const side = useSignal<'before' | 'after'>('after');
  const other = useSignal('');
  const because = useSignal('');
  const running = session.running.value;
  if (!running) return null;
  const rest = running.sequence.slice(running.doneCount).filter((one) => one !== step);
  const add = (event: Event): void => {
    event.preventDefault();
    if (other.value === '') return;
    const [before, after] = side.value === 'after' ? [other.value, step] : [step, other.value];
    session.act({ kind: 'reason-added', before, after, because: because.value.trim() || 'you said so' });
    other.value = '';
    because.value = '';
  };
  return (
    <form class="add-reason" onSubmit={add}>
      <h3>Add a reason of your own</h3>
      <label>
        This step goes
        <select
          class="field"
          value={side.value}
          onChange={(event) => {
            side.value = event.currentTarget.value === 'before' ? 'before' : 'after';
          }}
        >
          <option value="after">after</option>
          <option value="before">before</option>
        </select>
      </label>
      <label>
        which step
        <select
          class="field"
          value={other.value}
          onChange={(event) => {
            other.value = event.currentTarget.value;
          }}
        >
          <option value="">choose one</option>
          {rest.map((one) => (
            <option key={one} value={one}>
              {running.steps.get(one)?.say ?? one}
            </option>
          ))}
        </select>
      </label>
      <label>
        because
        <input
          class="field"
          value={because.value}
          onInput={(event) => {
            because.value = event.currentTarget.value;
          }}
        />
      </label>
      <button type="submit" class="plain" disabled={other.value === ''}>
        Add the reason
      </button>
    </form>
  );
}

/** Notes on this card, the choices of the bench and the keys that work it. */
export function MoreSheet({ session, onClose }: SheetProps) {
  const text = useSignal('');
  const step = session.step.value;
  const garment = step === undefined ? undefined : session.running.value?.steps.get(step)?.garment;
  const notes = session.progress.value.notes.filter((note) => note.step === step);
  const add = (event: Event): void => {
    event.preventDefault();
    if (step === undefined || text.value.trim() === '') return;
    session.act({ kind: 'note', step, text: text.value.trim() });
    text.value = '';
  };
  return (
    <Sheet title="More" onClose={onClose}>
      {step !== undefined && (
        <form class="add-reason" onSubmit={add}>
          <h3>Notes on this card</h3>
          <ul class="reasons">
            {notes.map((note) => (
              <li key={note.at + note.text}>{note.text}</li>
            ))}
          </ul>
          <label>
            A note
            <textarea
              class="field"
              rows={2}
              value={text.value}
              onInput={(event) => {
                text.value = event.currentTarget.value;
              }}
            />
          </label>
          <button type="submit" class="plain">
            Keep the note
          </button>
        </form>
      )}
      <PutElsewhere session={session} />
      <div class="add-reason">
        <DoesNotFit session={session} />
        <a
          class="plain"
          data-part="description"
          href={writeHash({
            screen: 'outfit',
            outfit: session.id,
            at: garment === undefined ? [] : ['garment', garment],
          })}
        >
          Change the description
        </a>
      </div>
      <ChoicesPanel />
      <KeysPanel />
      <HouseNotice />
    </Sheet>
  );
}
