import type { Loop } from './running-types.ts';
import type { Constraint, Step, StepId } from './step.ts';
import type { Web } from './web.ts';

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
