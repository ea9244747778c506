import type { Running } from '../../order/running-types.ts';
import type { SetUp, Step, StepId } from '../../order/step.ts';

/** Steps in a row that need the same set-up: nothing has to be changed between them. */
export interface Sitting {
  readonly setUp: SetUp;
  readonly steps: readonly Step[];
  /** Minutes by estimate. */
  readonly minutes: number;
}

const same = (a: SetUp, b: SetUp): boolean =>
  a.station === b.station && a.thread === b.thread && a.tool === b.tool;

/** The steps of a running order, in its order, as sittings. Steps that the order does not know are left out. */
export function sittings(running: Pick<Running, 'steps'>, sequence: readonly StepId[]): Sitting[] {
  const found: { setUp: SetUp; steps: Step[]; minutes: number }[] = [];
  for (const id of sequence) {
    const step = running.steps.get(id);
    if (!step) continue;
    const last = found[found.length - 1];
    if (last && same(last.setUp, step.setUp)) {
      last.steps.push(step);
      last.minutes += step.minutes;
    } else {
      found.push({ setUp: step.setUp, steps: [step], minutes: step.minutes });
    }
  }
  return found;
}

const stations: Readonly<Record<SetUp['station'], string>> = {
  cut: 'Cutting table',
  mark: 'Marking',
  pin: 'Pinning',
  machine: 'Machine',
  overlocker: 'Overlocker',
  iron: 'Iron',
  hand: 'By hand',
  'try-on': 'Try on',
};

/** A set-up as a heading: `Machine, red thread, zip foot`. */
export const writeSetUp = ({ station, thread, tool }: SetUp): string =>
  [stations[station], thread && `${thread} thread`, tool].filter((part) => part !== '').join(', ');
