import type { Readout } from '../../order/card-types.ts';
import type { Act } from '../../store/deed.ts';
import type { StepProgress } from '../../store/progress-types.ts';
import { lineInHand, nextAdd } from './pad-act.ts';

/** Beads a minute while counting, pauses left out; undefined until there is a quarter of a minute to go by. */
export function pace(progress: StepProgress): number | undefined {
  const { countedMs = 0, countedThen = 0 } = progress;
  return countedMs < 15_000 ? undefined : (countedThen * 60_000) / countedMs;
}

/** A count with its target, line after line. The figure is hollow-underlined until the ledger has the touch. */
export function Count(props: {
  readonly step: string;
  readonly readout: Extract<Readout, { kind: 'count' }>;
  readonly progress: StepProgress;
  readonly inFlight: boolean;
  readonly act: (...acts: readonly Act[]) => void;
}) {
  const { step, readout, progress, inFlight, act } = props;
  const found = lineInHand(readout, progress.closed);
  const total = [...progress.counts.values()].reduce((sum, n) => sum + n, 0);
  const target = readout.lines.reduce((sum, line) => sum + line.target, 0);
  const rate = pace(progress);
  const line = found?.line;
  const counted = line ? (progress.counts.get(line.item) ?? 0) : total;
  const over = line ? counted - line.target : 0;
  return (
    <div class="readout">
      <div class="mark-now">
        <span
          class={inFlight ? 'figure count-figure in-flight' : 'figure count-figure'}
          data-part="figure"
          data-in-flight={inFlight}
        >
          {counted}
        </span>
        <p class="mark-words">
          <b>
            of {line ? line.target : target} {readout.of}
          </b>
          <span>{found ? `line ${found.k} of ${readout.lines.length}` : 'all lines done'}</span>
        </p>
      </div>
      {line && (
        <progress class="string" value={Math.min(counted, line.target)} max={Math.max(1, line.target)}>
          {counted} of {line.target}
        </progress>
      )}
      {over > 0 && <p class="readout-line">{over} over the target</p>}
      {line && <p class="readout-line">{line.name}</p>}
      <p class="quiet">
        {total} of {target} in all
        {rate !== undefined && ` \u00b7 ${Math.round(rate)} a minute`}
        {readout.perTouch === 2 && ' \u00b7 two at a time'}
      </p>
      {line && counted > 0 && (
        <div class="choice">
          {counted < line.target ? (
            <button
              type="button"
              class="plain"
              onClick={() => act({ kind: 'line-closed', step, item: line.item, count: counted })}
            >
              End line at {counted}
            </button>
          ) : (
            <button
              type="button"
              class="plain"
              onClick={() =>
                act({ kind: 'tap', step, item: line.item, add: nextAdd(1, counted, line.target) })
              }
            >
              One more
            </button>
          )}
        </div>
      )}
    </div>
  );
}
