import type { Constraint, StepId } from './step.ts';

/** Constraints as a web that can be walked both ways and added to. */
export interface Web {
  add(constraint: Constraint): void;
  out(step: StepId): readonly Constraint[];
  into(step: StepId): readonly Constraint[];
  /** Every step that comes after `step`, by whatever way; without `step` itself unless a loop leads back to it. */
  after(step: StepId): ReadonlySet<StepId>;
  /** Every step that comes before `step`, by whatever way. */
  before(step: StepId): ReadonlySet<StepId>;
  /** True where some way leads from one step to the other. */
  leads(from: StepId, to: StepId): boolean;
}

const none: readonly Constraint[] = [];

/** A web of these constraints. Walks are linear in what they reach, and never recursive. */
export function weave(constraints: Iterable<Constraint>): Web {
  const out = new Map<StepId, Constraint[]>();
  const into = new Map<StepId, Constraint[]>();
  const put = (map: Map<StepId, Constraint[]>, key: StepId, constraint: Constraint) => {
    const list = map.get(key);
    if (list) list.push(constraint);
    else map.set(key, [constraint]);
  };
  const add = (constraint: Constraint) => {
    put(out, constraint.before, constraint);
    put(into, constraint.after, constraint);
  };
  for (const constraint of constraints) add(constraint);

  const walk = (
    from: StepId,
    map: ReadonlyMap<StepId, readonly Constraint[]>,
    end: 'before' | 'after',
    goal?: StepId,
  ) => {
    const seen = new Set<StepId>();
    const open: StepId[] = [from];
    for (let step = open.pop(); step !== undefined; step = open.pop()) {
      for (const constraint of map.get(step) ?? none) {
        const next = constraint[end];
        if (seen.has(next)) continue;
        seen.add(next);
        if (next === goal) return seen;
        open.push(next);
      }
    }
    return seen;
  };
  return {
    add,
    out: (step) => out.get(step) ?? none,
    into: (step) => into.get(step) ?? none,
    after: (step) => walk(step, out, 'after'),
    before: (step) => walk(step, into, 'before'),
    leads: (from, to) => walk(from, out, 'after', to).has(to),
  };
}
