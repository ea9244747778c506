import type { Step, StepId } from '../step.ts';
import { concerns, type Open } from './closure.ts';
import { OPENED_AT_LEAST, TAKEN_OUT, UNPICKED_IN_A_MINUTE } from './paces.ts';
import type { Prepared, Sub } from './prepared.ts';
import { countOf } from './sides.ts';
import { covered } from './spans.ts';

/** Where things stand when it is found that something does not fit. */
export interface Now {
  /** What is done, all of it. */
  readonly done: ReadonlySet<StepId>;
  readonly sewn: (step: Step) => boolean;
  readonly own: ReadonlyMap<StepId, number>;
}

/** The part of a step that is done again. */
export function shareOf(open: Open, step: Step): number {
  const { sub, lines } = open;
  if (lines.length === 0) {
    const sides = concerns(sub, step, open.sides);
    return sides === 0 ? 0 : sub.times === 2 ? countOf(sides) / 2 : 1;
  }
  const trim = /^baste-trim(?:-(\d+))?$/.exec(step.action);
  let part = 0;
  for (const line of lines) {
    if (trim) part += covered(line.trims.get(Number(trim[1] ?? 1) - 1) ?? []);
    else if (step.final || step.action === 'elastic') part += covered(line.along);
    else if (step.action === 'cover' && line.cover) part += 1;
    else part += covered([...line.along, ...line.crossed]);
  }
  if (step.action === 'elastic') return part > 0 ? 1 : 0;
  return part / lines.length;
}

/** How much longer than reckoned the maker takes to unpick, from what she has unpicked so far. */
export function ownPace({ unpicked }: Prepared, { own }: Now): number {
  let took = 0;
  let reckoned = 0;
  for (const step of unpicked) {
    const minutes = own.get(step.id);
    if (minutes === undefined || step.minutes <= 0) continue;
    took += minutes;
    reckoned += step.minutes;
  }
  return reckoned > 0 && took > 0 ? took / reckoned : 1;
}

/** Steps whose stitches come out by themselves, or that put none in. */
const NO_STITCHES = new Set(['unbaste', 'untack', 'turn', 'elastic', 'thread', 'mark-buttons']);

/** Minutes to unpick, at the pace that is given; none where nothing holds. */
export function unpicking(open: Open, now: Now): number {
  const { sub, lines } = open;
  if (!open.unpick || sub.id.startsWith('outline-')) return 0;
  const holds = sub.steps.filter((step) => stitched(sub, step, now));
  if (holds.length === 0) return 0;
  if (lines.length > 0) {
    let minutes = 0;
    lines.forEach((_, n) => {
      const one = { ...open, lines: lines.slice(n, n + 1) };
      const long = holds.reduce((all, step) => all + shareOf(one, step) * sub.length, 0);
      if (long > 0) minutes += Math.max(OPENED_AT_LEAST.value, long / UNPICKED_IN_A_MINUTE.value);
    });
    return minutes;
  }
  const { work } = sub;
  // Gathering rows come out with the seam that holds them.
  if (work?.kind === 'gather') return 0;
  let minutes = 0;
  for (const step of holds) {
    const part = shareOf(open, step);
    const along =
      work && 'edge' in work ? sub.room.length({ piece: work.on, edge: work.edge }) * sub.times : 0;
    minutes +=
      part *
      (along > 0
        ? along / UNPICKED_IN_A_MINUTE.value
        : (step.again?.minutes ?? step.minutes) * TAKEN_OUT.value);
  }
  return minutes > 0 ? Math.max(OPENED_AT_LEAST.value, minutes) : 0;
}

function stitched(sub: Sub, step: Step, now: Now): boolean {
  const { station } = step.setUp;
  if (!now.sewn(step) || NO_STITCHES.has(step.action) || step.action === 'sample') return false;
  if (station !== 'machine' && station !== 'overlocker' && station !== 'hand') return false;
  return step.action !== 'baste' || !sub.steps.some((one) => one.action === 'unbaste' && now.sewn(one));
}
