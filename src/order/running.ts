import { practice } from '../cloth/source.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Outfit } from '../outfit/outfit.ts';
import { arrange } from './arrange/arrange.ts';
import type { Task } from './arrange/graph.ts';
import { expand } from './expand/garment.ts';
import { findLoop, heldUp } from './loop.ts';
import { rules } from './rules/all.ts';
import { marksLive } from './rules/marks.ts';
import { doneAgain, reworked } from './rules/reworked.ts';
import { constraintsOf } from './rules/rule.ts';
import { tackTheShape } from './rules/tacking.ts';
import { tryOnsFirst } from './rules/tryons.ts';
import type { Loop, MarkConcern, Running, Standing } from './running-types.ts';
import { type Constraint, constraintKey, type Step, type StepId } from './step.ts';
import { weave } from './web.ts';

/** Nothing done, nothing added, nothing waived. */
export const fresh: Standing = { done: [], added: [], waived: new Set() };

/**
 * The order of making, derived from what the outfit is: steps from works and joins, constraints from the rules, then
 * an order with few changeovers that keeps every constraint. Steps done stay where they were done. A ring of
 * constraints is refused with every step and reason in it.
 */
export function runningOrder(outfit: Outfit, standing: Standing = fresh): Result<Running, Loop> {
  const steps = new Map<StepId, Step>();
  const constraints: Constraint[] = [];
  const waived: Constraint[] = [];
  const isWaived = (c: Constraint): boolean => c.waivable && standing.waived.has(constraintKey(c));
  const take = (found: Iterable<Constraint>) => {
    for (const c of found) (isWaived(c) ? waived : constraints).push(c);
  };

  const garments = outfit.garments.map((garment, place) => expand(outfit, garment, place));
  for (const made of garments) {
    for (const subject of made.subjects.values()) for (const step of subject.steps) steps.set(step.id, step);
    take(made.inner);
    for (const rule of rules) take(constraintsOf(rule, made));
  }
  const counted = new Set(standing.done);
  for (const made of garments) {
    const again = reworked(made, standing.reworks ?? [], counted);
    for (const step of again.steps) steps.set(step.id, step);
    take(again.constraints);
  }
  take(ownConstraints(standing, steps));

  // What follows asks for ways through the web, so a loop must be found before.
  const woven = weaveWithout(steps, constraints);
  if (!woven.ok) return woven;
  const web = woven.value;
  const concerns: MarkConcern[] = [];
  for (const made of garments) {
    take(tackTheShape(made, web, isWaived));
    take(tryOnsFirst(made, web, isWaived));
    const kept = marksLive(made, steps, web, isWaived);
    for (const step of kept.again) steps.set(step.id, step);
    take(kept.constraints);
    concerns.push(...kept.concerns);
  }
  for (const [id, step] of doneAgain(steps, standing.reworks ?? [])) steps.set(id, step);
  const arranged = arrangeOrLoop(steps, constraints, web);
  if (!arranged.ok) return arranged;

  const done = [...new Set(standing.done)].filter((id) => steps.has(id));
  const isDone = new Set(done);
  const sequence = [...done, ...arranged.value.filter((id) => !isDone.has(id))];
  const ready = new Set(
    sequence.filter((id) => !isDone.has(id) && web.into(id).every((c) => isDone.has(c.before))),
  );
  return good({
    steps,
    sequence,
    doneCount: done.length,
    ready,
    constraints,
    waived,
    concerns,
    changeovers: changeoversOf(sequence, steps),
  });
}

/**
 * A web of the constraints without a loop. Where there is one, the first preference in it gives way and is taken from
 * the list; a loop in which nothing gives way is refused. As often as there are preferences, at most.
 */
function weaveWithout(
  steps: ReadonlyMap<StepId, Step>,
  constraints: Constraint[],
): Result<ReturnType<typeof weave>, Loop> {
  for (;;) {
    const web = weave(constraints);
    const held = heldUp(steps.keys(), web);
    if (held.size === 0) return good(web);
    const loop = findLoop(held, web, steps);
    const given = loop.ring.find((constraint) => constraint.gives);
    if (!given) return bad(loop);
    constraints.splice(constraints.indexOf(given), 1);
  }
}

function* ownConstraints(standing: Standing, steps: ReadonlyMap<StepId, Step>): Iterable<Constraint> {
  for (const { before, after, because } of standing.added) {
    if (!steps.has(before) || !steps.has(after)) continue;
    yield { before, after, because, rule: 'your own reason', source: practice, waivable: true };
  }
}

function arrangeOrLoop(
  steps: ReadonlyMap<StepId, Step>,
  constraints: readonly Constraint[],
  web: ReturnType<typeof weave>,
): Result<readonly StepId[], Loop> {
  const tasks = [...steps.values()].map(taskOf);
  const arranged = arrange(tasks, constraints);
  if (arranged.ok) return good(arranged.order.map((task) => task.id));
  return bad(findLoop(new Set(arranged.held.map((task) => task.id)), web, steps));
}

/** What arranging needs to know of a step. */
export const taskOf = (step: Step): Task => ({
  id: step.id,
  setUp: step.setUp,
  garment: step.garment,
  gate: step.setUp.station === 'try-on' && step.of.kind === 'gate',
  soon:
    step.setUp.station === 'pin' ||
    (step.setUp.station === 'mark' && step.of.kind !== 'piece') ||
    step.action === 'tack' ||
    step.action === 'sample',
});

/** How often the set-up changes along a sequence of steps. */
export function changeoversOf(sequence: readonly StepId[], steps: ReadonlyMap<StepId, Step>): number {
  let changes = 0;
  for (let i = 1; i < sequence.length; i += 1) {
    const a = steps.get(sequence[i - 1] ?? '')?.setUp;
    const b = steps.get(sequence[i] ?? '')?.setUp;
    if (a && b && (a.station !== b.station || a.thread !== b.thread || a.tool !== b.tool)) changes += 1;
  }
  return changes;
}

export { type Explained, explain } from './explain.ts';
