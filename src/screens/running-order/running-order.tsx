/**
 * The whole order of making, sitting by sitting: what is ready, what waits for what, and why.
 *
 * What others may hold on to: `main[data-part="running-order"]`; `li[data-step]` with `data-state` `ready`, `waits`,
 * `rests`, `open` or `done`; in a ready one the button `Work on this`; in every one the button `Why`;
 * `[data-part="concern"]`, `[data-part="loop"]`, `[data-part="done-steps"]`, `[data-part="undo"]`; in a step that undoes
 * something or does it again `[data-part="rework"]`; `[data-part="late"]` with what finding out late costs.
 */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import type { MarkConcern } from '../../order/running-types.ts';
import { constraintKey, type Step, type StepId } from '../../order/step.ts';
import { now } from '../../ui/clock.ts';
import { writeClock, writeDuration } from '../../ui/duration.ts';
import { Sign } from '../../ui/signs.tsx';
import { Stuck } from '../bench/finished.tsx';
import { WhySheet } from '../bench/sheets.tsx';
import { undoName } from '../bench/undo-name.ts';
import { HouseNotice, HouseTrouble } from '../house.tsx';
import { restUntil } from '../next-step.ts';
import { reworkOf, undoSteps } from '../rework-steps.ts';
import { go, writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { LateHere } from './late-here.tsx';
import { sittings, writeSetUp } from './sittings.ts';
import './running-order.css';

/** The running order of one outfit. */
export default function RunningOrder({ session }: { readonly session: Session }) {
  const why = useSignal<StepId | undefined>(undefined);
  const running = session.running.value;
  const progress = session.progress.value;
  const loop = session.loop.value;
  const undo = undoName(progress.undo, session.card.value);
  const groups = useMemo(
    () => running && sittings(running, running.sequence.slice(running.doneCount)),
    [running],
  );
  const garments = new Map(session.outfit.value?.garments.map((garment) => [garment.id, garment.name]));
  const pick = (step: StepId): void => {
    session.openStep(step);
    go({ screen: 'bench', outfit: session.id });
  };
  return (
    <main class="page" data-part="running-order">
      <nav class="choice" aria-label="Where to go">
        <a class="plain" href="#/">
          Outfits
        </a>
        <a class="main" href={writeHash({ screen: 'bench', outfit: session.id })}>
          To the bench
        </a>
        <a class="plain" href={writeHash({ screen: 'outfit', outfit: session.id, at: [] })}>
          Description
        </a>
        <button
          type="button"
          class="plain"
          data-part="undo"
          disabled={undo === undefined}
          onClick={session.undo}
        >
          <Sign name="undo" />
          {undo === undefined ? 'Undo' : `Undo: ${undo}`}
        </button>
      </nav>
      <h1>{session.outfit.value?.name ?? 'Running order'}</h1>
      <HouseTrouble />
      {session.unkept.value !== undefined && (
        <p class="notice" role="alert">
          <span>Not kept yet: {session.unkept.value}</span>
        </p>
      )}
      {loop && (
        <section class="loop" data-part="loop">
          <h2>The order runs in a ring</h2>
          <p class="ring">{loop.say}</p>
          <ul class="reasons">
            {loop.ring.map((link) => (
              <li key={constraintKey(link)}>
                <p>{link.because}</p>
                <cite>{writeSource(link.source)}</cite>
                {link.waivable && (
                  <button
                    type="button"
                    class="plain"
                    onClick={() => session.act({ kind: 'reason-waived', key: constraintKey(link) })}
                  >
                    Waive this reason
                  </button>
                )}
              </li>
            ))}
          </ul>
        </section>
      )}
      {!loop && (!running || running.sequence.length === 0) && <Stuck session={session} />}
      {running && running.sequence.length > 0 && (
        <>
          <p>
            {running.doneCount} of {running.sequence.length} steps done, {running.ready.size} ready.{' '}
            {running.changeovers} changes of place, thread or needle in the whole.
          </p>
          {running.concerns.map((concern) => (
            <Concern key={concern.mark + concern.needed} concern={concern} session={session} />
          ))}
          <LateHere session={session} />
          {running.doneCount > 0 && (
            <details data-part="done-steps">
              <summary>
                {running.doneCount} {running.doneCount === 1 ? 'step' : 'steps'} done
              </summary>
              <ol class="steps">
                {running.sequence.slice(0, running.doneCount).map((id) => (
                  <li key={id} data-step={id} data-state="done">
                    <Sign name="done" /> {running.steps.get(id)?.say ?? id}
                  </li>
                ))}
              </ol>
            </details>
          )}
          {groups?.map((group, i) => (
            // A sitting has no name of its own; its first step names it.
            <section key={group.steps[0]?.id ?? i} class="sitting">
              <h2>
                {writeSetUp(group.setUp)}
                <span class="quiet"> about {writeDuration(group.minutes * 60)}</span>
              </h2>
              <ol class="steps">
                {group.steps.map((step) => (
                  <StepLine
                    key={step.id}
                    step={step}
                    garment={garments.get(step.garment) ?? step.garment}
                    session={session}
                    onPick={pick}
                    onWhy={() => {
                      why.value = step.id;
                    }}
                  />
                ))}
              </ol>
            </section>
          ))}
        </>
      )}
      <HouseNotice />
      {why.value !== undefined && (
        <WhySheet
          session={session}
          step={why.value}
          onClose={() => {
            why.value = undefined;
          }}
        />
      )}
    </main>
  );
}

function StepLine(props: {
  readonly step: Step;
  readonly garment: string;
  readonly session: Session;
  readonly onPick: (step: StepId) => void;
  readonly onWhy: () => void;
}) {
  const { step, garment, session, onPick, onWhy } = props;
  const running = session.running.value;
  if (!running) return null;
  const ready = running.ready.has(step.id);
  const rest = ready ? restUntil(running, session.progress.value, step.id, now.value) : undefined;
  const open = session.step.value === step.id;
  const rework = reworkOf(session.progress.value, step.id);
  const undoes = rework !== undefined && undoSteps([rework]).has(step.id);
  const state = open ? 'open' : rest !== undefined ? 'rests' : ready ? 'ready' : 'waits';
  return (
    <li class={`step-line ${state}`} data-step={step.id} data-state={state}>
      <div>
        <p class="step-say">{step.say}</p>
        <p class="step-state">
          <Sign name={state === 'waits' || state === 'rests' ? 'waits' : 'ready'} />
          {state === 'open' && 'on the bench'}
          {state === 'ready' && 'ready'}
          {state === 'rests' && `rests until ${writeClock(rest ?? 0, now.value)}`}
          {state === 'waits' && 'waits'}
          <span class="quiet">, {garment}</span>
        </p>
        {rework && (
          <p class="step-rework" data-part="rework">
            <b>{undoes ? 'Undo' : 'Again'}</b> <span>{rework.say}</span>
          </p>
        )}
      </div>
      <div class="choice">
        {ready && (
          <button type="button" class="plain" onClick={() => onPick(step.id)}>
            Work on this<span class="unseen">: {step.say}</span>
          </button>
        )}
        <button type="button" class="plain" onClick={onWhy}>
          Why<span class="unseen">: {step.say}</span>
        </button>
      </div>
    </li>
  );
}

function Concern({ concern, session }: { readonly concern: MarkConcern; readonly session: Session }) {
  const again = session.running.value?.steps.get(concern.again)?.say;
  return (
    <section class="concern" data-part="concern">
      <h2>
        <Sign name="caution" /> A mark would not live
      </h2>
      <p>{concern.say}</p>
      <p>The order therefore marks again: {again ?? 'after it'}.</p>
      {concern.otherMarkers.length > 0 && (
        <div class="choice">
          {concern.otherMarkers.map(({ id, name }) => (
            <button
              key={id}
              type="button"
              class="plain"
              onClick={() =>
                session.act({
                  kind: 'described',
                  at: concern.at,
                  was: session.described(concern.at),
                  now: id,
                })
              }
            >
              Mark with {name} instead
            </button>
          ))}
        </div>
      )}
    </section>
  );
}
