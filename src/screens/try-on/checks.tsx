import { useComputed, useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { checksFor } from '../../fitting/here.ts';
import type { Garment, Gate } from '../../outfit/outfit.ts';
import { look, now } from '../../ui/clock.ts';
import { useDraft, type Written } from '../describe/drafts.ts';
import type { Session } from '../session.ts';

/** The try-on of a garment that is next in the order; the last one where all are done. */
export function gateNow(garment: Garment, done: readonly string[]): Gate | undefined {
  const isDone = ({ id }: Gate): boolean => done.includes(`${garment.id}/${id}/fit`);
  return garment.gates.find((gate) => !isDone(gate)) ?? garment.gates.at(-1);
}

/** Work in a wardrobe goes on past midnight: a day ends at four in the morning. */
const dayOf = (at: number): string => new Date(at - 4 * 60 * 60 * 1000).toDateString();

/** Under these names the list keeps for which try-on it was ticked, and which line of it is in hand. */
const [FOR, AT] = [' for', ' at'];

/**
 * What is looked at first, one line at a time, to be read by whoever wears the thing; all of it unfolds to a list. What was
 * ticked counts for this try-on and this day.
 */
export function Checks({ session, garment }: { readonly session: Session; readonly garment: Garment }) {
  const ticks = useDraft(`${session.id}/try/${garment.id}/ ticks`);
  const summary = useRef<HTMLElement>(null);
  const listed = useSignal(false);
  useLayoutEffect(look, []);
  const today = useComputed(() => dayOf(now.value)).value;
  const { done, reworks } = session.progress.value;
  const gate = gateNow(garment, done);
  const own = (gate?.checks ?? []).map((say) => ({ id: `${gate?.id}: ${say}`, say }));
  const first = checksFor(garment).map(({ id, say }) => ({ id, say }));
  const all: readonly Line[] = [...first, ...own];
  const which = `${gate?.id} ${reworks.length} ${today}`;
  const written: Written = ticks.written.value[FOR] === which ? ticks.written.value : {};
  const isTicked = ({ id }: Line): boolean => written[id] === 'yes';
  const ticked = all.filter(isTicked).length;
  if (all.length === 0) return null;
  /** The first that is not ticked, from a line on and round to it again. */
  const from = (line: number, but?: Line): Line | undefined =>
    [...all.slice(line), ...all.slice(0, line)].find((one) => one !== but && !isTicked(one));
  const at = all.findIndex(({ id }) => id === written[AT]);
  const inHand = from(Math.max(0, at));
  const next = inHand && from(all.indexOf(inHand), inHand);
  const put = (more: Written): void => ticks.become({ ...written, [FOR]: which, ...more });
  return (
    <section class="checks" data-part="checks">
      <details
        onToggle={(event) => {
          listed.value = event.currentTarget.open;
        }}
      >
        <summary ref={summary}>
          <b>Look at first</b>
          <span role="status">{inHand ? `${ticked} of ${all.length}` : 'all seen to'}</span>
        </summary>
        <Ticks all={first} written={written} onTick={put} />
        {own.length > 0 && <h2 class="gate-name">{gate?.name}</h2>}
        <Ticks all={own} written={written} onTick={put} />
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
      {inHand && !listed.value && (
        <>
          <p class="check-now" role="status" data-part="check">
            {inHand.say}
          </p>
          <div class="choice">
            <button
              type="button"
              class="plain"
              data-part="check-so"
              onClick={() => {
                put({ [inHand.id]: 'yes', [AT]: next?.id ?? '' });
                // The last one takes its button away.
                if (!next) summary.current?.focus({ preventScroll: true });
              }}
            >
              It is so
            </button>
            {next && (
              <button type="button" class="plain" onClick={() => put({ [AT]: next.id })}>
                The next one
              </button>
            )}
          </div>
        </>
      )}
    </section>
  );
}

/** A line of what is looked at first. */
interface Line {
  readonly id: string;
  readonly say: string;
}

function Ticks(props: {
  readonly all: readonly Line[];
  readonly written: Written;
  readonly onTick: (ticked: Written) => void;
}) {
  const { all, written, onTick } = props;
  return (
    <ul class="tick-off">
      {all.map(({ id, say }) => (
        <li key={id} class="field-box">
          <label class="option">
            <input
              type="checkbox"
              checked={written[id] === 'yes'}
              onChange={(event) => onTick({ [id]: event.currentTarget.checked ? 'yes' : '' })}
            />
            <span>{say}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}
