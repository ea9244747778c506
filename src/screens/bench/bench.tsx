/**
 * The bench: one card, and one pad for what comes next.
 *
 * What others may hold on to (tests, switches):
 * - card root: `[data-part="card"]` with `data-step` (the step's id), `data-station`, `data-readout` (kind of readout)
 * - instruction: the only `h1`
 * - pad: button `[data-part="pad"]`, named by its label: `Mark set, next`, `Last mark set`, `Tick`, `Count 1`,
 *   `Count 2`, `Line done`, `Start 12 s`, `Done`, `Go on` (a detail may follow). For a quarter of a second after it
 *   changed its meaning it is `aria-disabled`, so that a fast touch aimed at the old meaning is not taken as the new.
 * - undo: button `[data-part="undo"]`, named `Undo: mark 3`; disabled where there is nothing to take back
 * - figure in hand: `[data-part="figure"]`; in a count with `data-in-flight` until the ledger has the touch
 * - timers: `li[data-timer]` with `data-state` `waiting`, `running` or `over`
 * - `[data-part="why"]`, `[data-part="order"]`, `[data-part="aloud"]`, `[data-part="more"]`, `[data-part="home"]`
 * - `[data-part="wake"]` says whether the screen stays on; `[data-part="rest"]` until when to let it rest
 * - `[data-part="reckoned"]`: figures put on the card, see from-reckoner.tsx
 * - `[data-part="rework"]`: what a card puts right that undoes something or does it again
 * - `[data-part="does-not-fit"]`: on a card of a try-on, leads to what does not fit
 * - `[data-part="print-strip"]`: on a card with marks, opens their strips for printing
 * - `[data-part="middle"]`: what scrolls between the place and the tools; reached by Tab
 * - spoken changes: `[data-part="live"]`
 */
import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Card } from '../../order/card-types.ts';
import { now, useTicking } from '../../ui/clock.ts';
import { Drawing } from '../../ui/drawing.tsx';
import { secondsLeft, writeClock, writeCountdown } from '../../ui/duration.ts';
import { clicked, rang } from '../../ui/feedback.ts';
import { useNarrow } from '../../ui/narrow.ts';
import { Pad } from '../../ui/pad.tsx';
import { Sign } from '../../ui/signs.tsx';
import { canSpeak, sayAloud } from '../../ui/speak.ts';
import { keepAwake, wakeState } from '../../ui/wake.ts';
import { feedback, markingFor } from '../choices.ts';
import { HouseTrouble, trouble } from '../house.tsx';
import { reworkOf } from '../rework-steps.ts';
import type { Session } from '../session.ts';
import { Advice, Cautions } from './cautions.tsx';
import { DoesNotFit } from './does-not-fit.tsx';
import { EndMark } from './end-mark.tsx';
import { Finished, Stuck } from './finished.tsx';
import { FromReckoner, putOn } from './from-reckoner.tsx';
import { padAct } from './pad-act.ts';
import { ReadoutOf } from './readout.tsx';
import type { SheetProps } from './sheets.tsx';
import { undoName } from './undo-name.ts';
import { useBenchKeys, useSettling } from './use-pad.ts';
import { cardInWords, readoutInWords, soThat } from './words.ts';
import './bench.css';
import './narrow.css';

type OpenSheet = { readonly Sheet: ComponentType<SheetProps> };

/** The bench of one outfit. A newer version is offered elsewhere, so that nothing moves under the maker's hand. */
export function Bench({ session }: { readonly session: Session }) {
  const sheet = useSignal<OpenSheet | undefined>(undefined);
  const root = useRef<HTMLElement>(null);
  const letter = useRef<HTMLSpanElement>(null);
  const narrow = useNarrow(root, letter);
  const below = useSignal(false);
  const card = session.card.value;
  const progress = session.stepProgress.value;
  const undo = undoName(session.progress.value.undo, card);
  const marking = markingFor(session.units.value);
  const rest = session.resting.value;
  const rework = card && reworkOf(session.progress.value, card.step);
  const others = session.otherTimers.value;
  const timers = [...progress.timers.values(), ...others];
  const running = timers.filter((timer) => secondsLeft(timer, now.value) > 0).length;
  const pad = card && !session.finished.value ? padAct(card, progress, now.value) : undefined;
  const settling = useSettling(pad && `${card?.step} ${pad.kind}`);

  useTicking(running > 0 || rest !== undefined);
  useEffect(keepAwake, []);
  useRing(running, timers.length);
  useEffect(() => {
    const { progress: all, step, openStep } = session;
    const here = step.value;
    if (here !== undefined && all.value.open !== here) openStep(here);
  }, [session, session.step.value]);

  const press = (): void => {
    if (!pad || settling.peek()) return;
    clicked(feedback());
    if (pad.acts.length > 0) session.act(...pad.acts);
    else session.done();
  };
  const takeBack = (): void => {
    clicked(feedback());
    session.undo();
  };
  useBenchKeys(press, takeBack);

  const openSheet = async (name: 'WhySheet' | 'MoreSheet' | 'PrintStripSheet'): Promise<void> => {
    try {
      sheet.value = {
        Sheet:
          name === 'PrintStripSheet'
            ? (await import('./print-strip.tsx')).PrintStripSheet
            : (await import('./sheets.tsx'))[name],
      };
    } catch {
      trouble.value = 'A part of the app could not be read. The card stays workable; try it again later.';
    }
  };
  const Open = sheet.value?.Sheet;

  // After a touch elsewhere the pad has the focus again, so that a pedal that sends Space works the pad.
  useEffect(() => {
    const bench = root.current;
    const back = (event: MouseEvent): void => {
      const target = event.target instanceof Element ? event.target : undefined;
      if (event.detail === 0 || !target?.closest('button') || target.closest('dialog')) return;
      bench?.querySelector<HTMLElement>('[data-part="pad"]')?.focus({ preventScroll: true });
    };
    bench?.addEventListener('click', back);
    return () => bench?.removeEventListener('click', back);
  }, []);

  return (
    <main
      class={`bench${narrow.value ? ' narrow' : ''}${below.value ? ' more-below' : ''}`}
      ref={root}
      data-part="card"
      data-step={card?.step}
      data-station={card?.station}
      data-readout={card?.readout.kind}
    >
      <span class="one-letter" ref={letter} aria-hidden="true" />
      <header class="place">
        <a class="plain corner" href="#/" data-part="home">
          <Sign name="home" />
          <span>Outfits</span>
        </a>
        <p class="where">
          <b>{card ? card.garment : session.outfit.value?.name}</b>
          {card && (
            <span>
              card {card.k} of {card.n}
            </span>
          )}
          <span class="wake" data-part="wake">
            {wakeState.value === 'on' ? 'screen stays on' : 'screen may sleep'}
          </span>
        </p>
        <button
          type="button"
          class="plain corner"
          data-part="undo"
          disabled={undo === undefined}
          onClick={takeBack}
        >
          <span class="undo-word">
            <Sign name="undo" />
            Undo{undo !== undefined && <span class="unseen">:</span>}
          </span>
          {undo !== undefined && <b> {undo}</b>}
        </button>
      </header>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard too (WCAG 2.2, 2.1.1) */}
      <section class="middle" data-part="middle" aria-label="Card" tabIndex={0} key={card?.step}>
        {session.unkept.value !== undefined && (
          <p class="trouble" role="alert">
            Not kept yet: {session.unkept.value}{' '}
            <button type="button" class="plain" onClick={session.retry}>
              Try again
            </button>
          </p>
        )}
        <HouseTrouble />
        {others.length > 0 && (
          <ul class="other-timers" aria-label="Other timers">
            {others.slice(0, 2).map((timer) => {
              const left = secondsLeft(timer, now.value);
              return (
                <li key={timer.step + timer.item} class="other-timer">
                  <Sign name="timer" />
                  <b>{left > 0 ? writeCountdown(left) : 'time is up'}</b>
                  <span class="other-say">{timer.say}</span>
                </li>
              );
            })}
            {others.length > 2 && <li>and {others.length - 2} more</li>}
          </ul>
        )}
        {session.finished.value ? (
          <Finished session={session} />
        ) : card ? (
          <>
            <h1 class={card.say.length > 36 ? 'long' : undefined}>{card.say}</h1>
            {rework && (
              <p class="quiet" data-part="rework">
                {soThat(rework)}
              </p>
            )}
            {rest !== undefined && (
              <p class="rest" data-part="rest">
                <Sign name="waits" /> Let it rest until {writeClock(rest, now.value)}
              </p>
            )}
            <Cautions cautions={card.cautions} />
            <Settings settings={card.settings} />
            <Drawing pieces={card.drawing} />
            {card.station === 'try-on' && <DoesNotFit session={session} />}
            <ReadoutOf card={card} session={session} marking={marking} />
            <FromReckoner progress={session.progress.value} step={card.step} act={session.act} />
            {card.readout.kind === 'marks' && (
              <button
                type="button"
                class="plain print-strip"
                data-part="print-strip"
                onClick={() => openSheet('PrintStripSheet')}
              >
                Print a marking strip
              </button>
            )}
            <Advice advice={card.advice} waived={card.waived} />
          </>
        ) : (
          <Stuck session={session} />
        )}
        <EndMark below={below} />
      </section>
      <p class="unseen" aria-live="polite" data-part="live">
        {card && !session.finished.value && `${card.say}.`}
      </p>
      <p class="unseen" aria-live="polite">
        {card && !session.finished.value && readoutInWords(card, progress, marking, now.value)}
      </p>
      <nav class="tools" aria-label="About this card">
        <button
          type="button"
          class="plain"
          data-part="why"
          disabled={!card}
          onClick={() => openSheet('WhySheet')}
        >
          Why now
        </button>
        <a class="plain" data-part="order" href={`#/order/${encodeURIComponent(session.id)}`}>
          Order
        </a>
        <button
          type="button"
          class="plain"
          data-part="aloud"
          disabled={!card || !canSpeak()}
          onClick={() =>
            card &&
            sayAloud(
              cardInWords(
                card,
                progress,
                marking,
                now.value,
                putOn(session.progress.value, card.step),
                rework,
              ),
            )
          }
        >
          Read aloud
        </button>
        <button type="button" class="plain" data-part="more" onClick={() => openSheet('MoreSheet')}>
          More
        </button>
      </nav>
      {pad && (
        <Pad
          label={pad.label}
          detail={rest === undefined ? pad.detail : `resting until ${writeClock(rest, now.value)}`}
          quiet={pad.early || rest !== undefined}
          settling={settling.value}
          onPress={press}
        />
      )}
      {Open && (
        <Open
          session={session}
          onClose={() => {
            sheet.value = undefined;
          }}
        />
      )}
    </main>
  );
}

/** Rings when one of the timers in sight runs out; not for one that was taken away. */
function useRing(running: number, all: number): void {
  const before = useRef({ running, all });
  useEffect(() => {
    if (running < before.current.running && all >= before.current.all) rang(feedback());
    before.current = { running, all };
  }, [running, all]);
}

function Settings({ settings }: { readonly settings: Card['settings'] }) {
  if (settings.length === 0) return null;
  return (
    <dl class="settings" data-part="settings">
      {settings.map(({ name, figure }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{figure}</dd>
        </div>
      ))}
    </dl>
  );
}
