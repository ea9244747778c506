import type { Loop } from './running-types.ts';
import type { Constraint, Step, StepId } from './step.ts';
import type { Web } from './web.ts';

/**
 * The steps that can never be done, because they are in a ring of constraints or come after one. Constraints about
 * unknown steps count for nothing. Linear, never recursive.
 */
export function heldUp(steps: Iterable<StepId>, web: Web): ReadonlySet<StepId> {
  const held = new Set(steps);
  const waiting = new Map<StepId, number>();
  const open: StepId[] = [];
  for (const step of held) {
    let n = 0;
    for (const constraint of web.into(step)) if (held.has(constraint.before)) n += 1;
    waiting.set(step, n);
    if (n === 0) open.push(step);
  }
  for (let step = open.pop(); step !== undefined; step = open.pop()) {
    held.delete(step);
    for (const { after } of web.out(step)) {
      const n = waiting.get(after);
      if (n === undefined) continue;
      waiting.set(after, n - 1);
      if (n === 1) open.push(after);
    }
  }
  return held;
}

/**
 * A ring of constraints among the steps that an arranging could not place. Walks backwards from any of them along
 * constraints from other held steps until it comes round; linear, never recursive.
 */
export function findLoop(held: ReadonlySet<StepId>, web: Web, steps: ReadonlyMap<StepId, Step>): Loop {
  const way: Constraint[] = [];
  const place = new Map<StepId, number>();
  const [start] = held;
  let at = start;
  while (at !== undefined && !place.has(at)) {
    place.set(at, way.length);
    const back: Constraint | undefined = web.into(at).find((constraint) => held.has(constraint.before));
    if (back === undefined) break;
    way.push(back);
    at = back.before;
  }
  const ring = way.slice(at === undefined ? 0 : (place.get(at) ?? 0)).reverse();
  return { ring, say: sayLoop(ring, steps) };
}

function sayLoop(ring: readonly Constraint[], steps: ReadonlyMap<StepId, Step>): string {
  const name = (id: StepId): string => `“${steps.get(id)?.say ?? id}”`;
  const lines = ring.map((c) => `${name(c.before)} comes before ${name(c.after)}: ${c.because} (${c.rule})`);
  const open = ring.filter((c) => c.waivable).length;
  const cure =
    open > 0
      ? 'Set one of these reasons aside, or change the description so that one of them no longer holds'
      : 'Change the description so that one of these no longer holds';
  return [
    `These ${ring.length} steps wait for each other in a ring, so none can come first.`,
    ...lines,
    `${cure}.`,
  ].join('\n');
}
