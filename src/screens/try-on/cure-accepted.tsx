import type { Rework } from '../../order/running-types.ts';
import { Sign } from '../../ui/signs.tsx';
import { undoName } from '../bench/undo-name.ts';
import { Head } from '../describe/head.tsx';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { firstStep } from './cure-accept.ts';
import { writeMinutes } from './cure-words.ts';

/** A cure is on the cards: what comes first, and the way to it. */
export function CureAccepted(props: {
  readonly session: Session;
  readonly rework: Rework;
  readonly name: string;
  /** How many notes of this garment are still open. */
  readonly open: number;
  readonly back: string;
  /** Shows what can be done about them. */
  readonly onward: () => void;
}) {
  const { session, rework, name, open, back, onward } = props;
  const { done, undo } = session.progress.value;
  const first = firstStep(rework, done);
  const step = first === undefined ? undefined : session.running.value?.steps.get(first);
  const over = new Set(done);
  const rest = rework.again.filter((one) => !over.has(one.step)).length;
  const minutes = [...rework.undo, ...rework.again].reduce((sum, one) => sum + one.minutes, 0);
  const what = undo?.kind === 'reworked' ? undoName(undo, session.card.value) : undefined;
  return (
    <main class="page cure" data-part="cure-accepted">
      <Head session={session} up={[{ say: name, href: back }]} title="Put on the cards" />
      <p class="cure-which">{rework.say}</p>
      {step ? (
        <section>
          <h2>This comes first</h2>
          <p class="cure-headline" data-part="cure-first">
            {step.say}
          </p>
          <p>
            {rework.undo.length} to undo and cut, {rest} to do again, about {writeMinutes(minutes)} in all.
          </p>
        </section>
      ) : (
        <p>The pattern is changed; no card has to be done again for it.</p>
      )}
      <a
        class="main cure-bench"
        data-part="to-first"
        href={writeHash({ screen: 'bench', outfit: session.id })}
        onClick={() => {
          if (first !== undefined && step) session.openStep(first);
        }}
      >
        To the bench
      </a>
      <div class="choice">
        {what !== undefined && (
          <button type="button" class="plain" data-part="undo" onClick={session.undo}>
            <Sign name="undo" />
            <span>Undo: {what}</span>
          </button>
        )}
        {open > 0 && (
          <button type="button" class="plain" onClick={onward}>
            {open === 1 ? 'One thing is' : `${open} things are`} still open
          </button>
        )}
      </div>
    </main>
  );
}
