import type { Readout } from '../../order/card-types.ts';
import type { Act } from '../../store/deed.ts';
import type { StepProgress } from '../../store/progress-types.ts';
import { secondsLeft, writeCountdown } from '../../ui/duration.ts';

/** Timers side by side, computed from when each was started. `now` in ms since 1970. */
export function Timers(props: {
  readonly step: string;
  readonly readout: Extract<Readout, { kind: 'timers' }>;
  readonly timers: StepProgress['timers'];
  readonly now: number;
  readonly act: (...acts: readonly Act[]) => void;
}) {
  const { step, readout, timers, now, act } = props;
  const next = readout.timers.find(({ item }) => !timers.has(item));
  return (
    <ul class="readout timers">
      {readout.timers.map(({ item, name, seconds }) => {
        const running = timers.get(item);
        const left = running ? secondsLeft(running, now) : seconds;
        const state = !running ? 'waiting' : left > 0 ? 'running' : 'over';
        return (
          <li
            key={item}
            class={`timer ${state}${seconds >= 3600 ? ' long' : ''}`}
            data-timer={item}
            data-state={state}
          >
            <span class="figure timer-figure" data-part="figure">
              {writeCountdown(left)}
            </span>
            <span class="timer-words">
              <b>{name}</b>
              <span>
                {state === 'waiting' && (item === next?.item ? 'next' : '')}
                {state === 'running' && 'running'}
                {state === 'over' && 'time is up'}
              </span>
            </span>
            {running ? (
              <button type="button" class="plain" onClick={() => act({ kind: 'timer-stopped', step, item })}>
                {state === 'over' ? 'Again' : 'Stop'}
                <span class="unseen"> {name}</span>
              </button>
            ) : (
              <button
                type="button"
                class="plain"
                onClick={() => act({ kind: 'timer-started', step, item, seconds })}
              >
                Start
                <span class="unseen"> {name}</span>
              </button>
            )}
          </li>
        );
      })}
    </ul>
  );
}
