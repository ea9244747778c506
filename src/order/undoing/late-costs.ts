import type { StepId } from '../step.ts';
import { closureOf } from './closure.ts';
import { type Prepared, undoingMinutes } from './undoing.ts';
import type { Alteration } from './undoing-types.ts';

/** Minutes by how many steps are done, from none to all. */
export type CostByPlace = Float64Array;

/**
 * What altering pieces costs with the first so many steps of the running order done, for every such number; one list of
 * costs for each list of alterations. What an alteration reaches with everything done is looked up first: only where one of
 * these steps is done can its cost change, so only there is it reckoned anew.
 */
export function costsByPlace(
  prepared: Prepared,
  alterations: readonly (readonly Alteration[])[],
  own?: ReadonlyMap<StepId, number>,
): readonly CostByPlace[] {
  const { sequence } = prepared.running;
  const reached = alterations.map((asked) => reachedBy(prepared, asked));
  const costs = alterations.map((): CostByPlace => new Float64Array(sequence.length + 1));
  const now = alterations.map(() => 0);
  const done = new Set<StepId>();
  sequence.forEach((step, i) => {
    done.add(step);
    alterations.forEach((asked, n) => {
      if (reached[n]?.has(step)) now[n] = undoingMinutes(prepared, asked, { done, ...(own ? { own } : {}) });
      const cost = costs[n];
      if (cost) cost[i + 1] = now[n] ?? 0;
    });
  });
  return costs;
}

/** Steps that an alteration may bear on: those of all that it would open, and of cuttings, gathers and try-ons. */
function reachedBy(prepared: Prepared, alterations: readonly Alteration[]): ReadonlySet<StepId> {
  const { open, altered } = closureOf(prepared, alterations, () => true);
  const steps = new Set<StepId>();
  const put = (all: readonly { readonly id: StepId }[]): void => {
    for (const { id } of all) steps.add(id);
  };
  for (const { steps: own } of open.keys()) put(own);
  for (const { subs } of altered.keys()) {
    for (const { steps: own, gate, work } of subs.values()) {
      if (gate || work?.kind === 'gather' || own[0]?.of.kind === 'piece') put(own);
    }
  }
  return steps;
}
