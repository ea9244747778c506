import { useRef } from 'preact/hooks';
import { checksFor } from '../../fitting/here.ts';
import type { Garment, Gate } from '../../outfit/outfit.ts';
import { type FormDraft, useDraft } from '../describe/drafts.ts';
import type { Session } from '../session.ts';

/** The try-on of a garment that is next in the order; the last one where all are done. */
export function gateNow(garment: Garment, done: readonly string[]): Gate | undefined {
  const isDone = ({ id }: Gate): boolean => done.some((step) => step.startsWith(`${garment.id}/${id}/`));
  return garment.gates.find((gate) => !isDone(gate)) ?? garment.gates.at(-1);
}

const FOLDED = ' folded';

/** What is looked at first, to tick off. It folds by itself once all of it is ticked. */
export function Checks({ session, garment }: { readonly session: Session; readonly garment: Garment }) {
  const ticks = useDraft(`${session.id}/try/${garment.id}/ ticks`);
  const summary = useRef<HTMLElement>(null);
  const gate = gateNow(garment, session.progress.value.done);
  const first = checksFor(garment).map(({ id, say }) => ({ id, say }));
  const own = (gate?.checks ?? []).map((say) => ({ id: `${gate?.id}: ${say}`, say }));
  const all = [...first, ...own];
  const written = ticks.written.value;
  const ticked = all.filter(({ id }) => written[id] === 'yes').length;
  if (all.length === 0) return null;
  const tick = (id: string, on: boolean): void => {
    ticks.write(id, on ? 'yes' : '');
    if (!on || ticked + 1 < all.length) return;
    summary.current?.focus({ preventScroll: true });
    ticks.write(FOLDED, 'yes');
  };
  return (
    <details
      class="checks"
      data-part="checks"
      open={written[FOLDED] !== 'yes'}
      onToggle={(event) => {
        const folded = event.currentTarget.open ? '' : 'yes';
        if ((ticks.written.peek()[FOLDED] ?? '') !== folded) ticks.write(FOLDED, folded);
      }}
    >
      <summary ref={summary}>
        <b>Look at first</b>
        <span role="status">{ticked === all.length ? 'all seen to' : `${ticked} of ${all.length}`}</span>
      </summary>
      <Ticks all={first} ticks={ticks} onTick={tick} />
      {own.length > 0 && <h2 class="gate-name">{gate?.name}</h2>}
      <Ticks all={own} ticks={ticks} onTick={tick} />
      {ticked > 0 && (
        <button
          type="button"
          class="plain"
          onClick={() => {
            ticks.clear();
            summary.current?.focus();
          }}
        >
          Begin the list again
        </button>
      )}
    </details>
  );
}

function Ticks(props: {
  readonly all: readonly { readonly id: string; readonly say: string }[];
  readonly ticks: FormDraft;
  readonly onTick: (id: string, on: boolean) => void;
}) {
  return (
    <ul class="tick-off">
      {props.all.map(({ id, say }) => (
        <li key={id} class="field-box">
          <label class="option">
            <input
              type="checkbox"
              checked={props.ticks.written.value[id] === 'yes'}
              onChange={(event) => props.onTick(id, event.currentTarget.checked)}
            />
            <span>{say}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}
