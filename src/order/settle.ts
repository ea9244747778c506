import type { Constraint, Station, Step, StepId } from './step.ts';

/** What is better done shortly before it is needed: marks rub off, and pins bend, rust and prick. */
const SHORT_LIVED: ReadonlySet<Station> = new Set(['mark', 'pin']);

/**
 * Moves marking and pinning to the last sitting at the same set-up that still comes before what needs it. Every
 * constraint is kept, no changeover is added, and no try-on comes later. Linear in constraints and, for each step
 * moved, in sittings.
 */
export function settle(
  order: readonly StepId[],
  steps: ReadonlyMap<StepId, Step>,
  constraints: readonly Constraint[],
): readonly StepId[] {
  const sittings: StepId[][] = [];
  const setUps: string[] = [];
  const sittingOf = new Map<StepId, number>();
  for (const id of order) {
    const setUp = setUpOf(steps.get(id));
    if (setUps.at(-1) !== setUp) {
      setUps.push(setUp);
      sittings.push([]);
    }
    sittings.at(-1)?.push(id);
    sittingOf.set(id, sittings.length - 1);
  }
  const needs = new Map<StepId, StepId[]>();
  for (const { before, after } of constraints) {
    const list = needs.get(before);
    if (list) list.push(after);
    else needs.set(before, [after]);
  }

  for (const id of order.toReversed()) {
    const step = steps.get(id);
    if (!step || !SHORT_LIVED.has(step.setUp.station) || step.action === 'lines') continue;
    const here = sittingOf.get(id) ?? 0;
    const needed = Math.min(
      sittings.length,
      ...(needs.get(id) ?? []).map((next) => sittingOf.get(next) ?? 0),
    );
    let last = here;
    for (let s = here + 1; s < needed; s += 1) if (setUps[s] === setUps[here]) last = s;
    if (last === here) continue;
    sittings[here] = (sittings[here] ?? []).filter((other) => other !== id);
    sittings[last] = [id, ...(sittings[last] ?? [])];
    sittingOf.set(id, last);
  }
  return sittings.flat();
}

const setUpOf = (step: Step | undefined): string =>
  step ? `${step.setUp.station}|${step.setUp.thread}|${step.setUp.tool}` : '';
