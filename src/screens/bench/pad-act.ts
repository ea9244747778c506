import type { Card, CountLine, Mark, MarkSet, Readout } from '../../order/card-types.ts';
import type { Act } from '../../store/deed.ts';
import type { StepProgress } from '../../store/progress-types.ts';
import { secondsLeft, writeDuration } from '../../ui/duration.ts';

/** What the pad would do now. */
export interface PadAct {
  readonly kind: 'mark' | 'tick' | 'count' | 'close-line' | 'start' | 'done' | 'go-on';
  readonly label: string;
  readonly detail: string;
  /** Deeds to write; empty for `done` and `go-on`, which need to know the next step. */
  readonly acts: readonly Act[];
  /** True where it may be done but is not yet due. */
  readonly early: boolean;
}

/** Nothing done yet. */
export const untouched: StepProgress = {
  items: new Set(),
  counts: new Map(),
  closed: new Set(),
  timers: new Map(),
};

/** A mark with its set and its place among all marks of the step. */
export interface MarkInHand {
  readonly set: MarkSet;
  readonly mark: Mark;
  /** One more than the marks of this set that come before. */
  readonly k: number;
}

type Of<K extends Readout['kind']> = Extract<Readout, { kind: K }>;

/** The first mark that is not set yet, set by set. */
export function markInHand(readout: Of<'marks'>, items: ReadonlySet<string>): MarkInHand | undefined {
  for (const set of readout.sets) {
    const index = set.marks.findIndex((mark) => !items.has(mark.item));
    const mark = set.marks[index];
    if (mark !== undefined) return { set, mark, k: index + 1 };
  }
  return undefined;
}

/** The first line that is not closed yet, with its number from 1. */
export function lineInHand(
  readout: Of<'count'>,
  closed: ReadonlySet<string>,
): { readonly line: CountLine; readonly k: number } | undefined {
  const index = readout.lines.findIndex((line) => !closed.has(line.item));
  const line = readout.lines[index];
  return line && { line, k: index + 1 };
}

/** How many the next touch counts: all that one touch sews, but not past the end of the line. */
export const nextAdd = (perTouch: number, counted: number, target: number): number =>
  counted < target ? Math.min(perTouch, target - counted) : 1;

const act = (
  kind: PadAct['kind'],
  label: string,
  acts: readonly Act[],
  more: { readonly detail?: string; readonly early?: boolean } = {},
): PadAct => ({ kind, label, acts, detail: more.detail ?? '', early: more.early ?? false });

const done = act('done', 'Done', []);

function countAct(step: string, readout: Of<'count'>, progress: StepProgress): PadAct {
  const found = lineInHand(readout, progress.closed);
  if (!found) return done;
  const { line } = found;
  const counted = progress.counts.get(line.item) ?? 0;
  if (counted >= line.target) {
    const over = counted - line.target;
    return act('close-line', 'Line done', [{ kind: 'line-closed', step, item: line.item, count: counted }], {
      detail: over > 0 ? `${over} over` : '',
    });
  }
  const add = nextAdd(readout.perTouch, counted, line.target);
  return act('count', `Count ${add}`, [{ kind: 'tap', step, item: line.item, add }]);
}

function timerAct(step: string, readout: Of<'timers'>, progress: StepProgress, now: number): PadAct {
  const next = readout.timers.find((timer) => !progress.timers.has(timer.item));
  if (next) {
    const acts: Act[] = [{ kind: 'timer-started', step, item: next.item, seconds: next.seconds }];
    return act('start', `Start ${writeDuration(next.seconds)}`, acts, { detail: next.name });
  }
  const left = Math.max(0, ...[...progress.timers.values()].map((timer) => secondsLeft(timer, now)));
  return left > 0 ? act('done', 'Done', [], { detail: 'a timer is still running', early: true }) : done;
}

/**
 * The one thing that comes next on this card: set a mark, tick one of a pair, count, close a line, start a timer, or,
 * when nothing is left, done. `now` in ms since 1970.
 */
export function padAct(card: Card, progress: StepProgress, now: number): PadAct {
  const { step, readout } = card;
  if (progress.doneAt !== undefined) return act('go-on', 'Go on', [], { detail: 'this step is done' });
  switch (readout.kind) {
    case 'none':
      return done;
    case 'ticks': {
      const next = readout.items.find(({ item }) => !progress.items.has(item));
      if (!next) return done;
      return act('tick', 'Tick', [{ kind: 'item-done', step, item: next.item }], { detail: next.name });
    }
    case 'marks': {
      const next = markInHand(readout, progress.items);
      if (!next) return done;
      const last = readout.sets.every((set) =>
        set.marks.every(({ item }) => item === next.mark.item || progress.items.has(item)),
      );
      const label = last ? 'Last mark set' : 'Mark set, next';
      return act('mark', label, [{ kind: 'item-done', step, item: next.mark.item }]);
    }
    case 'count':
      return countAct(step, readout, progress);
    case 'timers':
      return timerAct(step, readout, progress, now);
  }
}
