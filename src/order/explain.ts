import type { Reason } from './card-types.ts';
import type { Running } from './running-types.ts';
import { type Constraint, constraintKey, type StepId } from './step.ts';
import { weave } from './web.ts';

/** Why a step stands where it does. */
export interface Explained {
  /** What had to come first, and is done. */
  readonly now: readonly Reason[];
  /** What still has to come first. */
  readonly notYet: readonly Reason[];
  /** What waits for this step. */
  readonly waits: readonly Reason[];
}

/**
 * Why now, why not yet, and what waits for this. Only the nearest reasons: where one of them follows from another by
 * way of other steps, the further one is left out. One reason for each pair of steps and rule.
 */
export function explain(running: Running, step: StepId): Explained {
  const web = weave(running.constraints);
  const done = new Set(running.sequence.slice(0, running.doneCount));
  const before = nearest(
    web.into(step),
    (c) => c.before,
    (a, b) => web.leads(a, b),
  );
  const after = nearest(
    web.out(step),
    (c) => c.after,
    (a, b) => web.leads(b, a),
  );
  const reason = (c: Constraint, other: StepId): Reason => ({
    step: other,
    say: running.steps.get(other)?.say ?? other,
    because: c.because,
    source: c.source,
    waive: c.waivable ? constraintKey(c) : '',
  });
  return {
    now: before.filter((c) => done.has(c.before)).map((c) => reason(c, c.before)),
    notYet: before.filter((c) => !done.has(c.before)).map((c) => reason(c, c.before)),
    waits: after.filter((c) => !done.has(c.after)).map((c) => reason(c, c.after)),
  };
}

/** Constraints whose other end is not reached through the other end of a nearer one. */
function nearest(
  all: readonly Constraint[],
  end: (c: Constraint) => StepId,
  leads: (far: StepId, near: StepId) => boolean,
): readonly Constraint[] {
  const ends = [...new Set(all.map(end))];
  const kept = new Set(ends.filter((far) => !ends.some((near) => near !== far && leads(far, near))));
  const seen = new Set<string>();
  return all.filter((c) => {
    const key = `${end(c)} ${c.rule}`;
    if (!kept.has(end(c)) || seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}
