import type { AgainStep } from '../running-types.ts';
import type { Step } from '../step.ts';

/**
 * A step that is done again in part, together with the part that an earlier rework has opened and that is not sewn again
 * yet; `step` is as it stands in the order now. Nothing is left open because something else is opened too.
 */
export function withStillOpen(one: AgainStep, step: Step): AgainStep {
  const before = step.again;
  if (!before || before.only === '' || one.only === undefined) return one;
  const whole = Math.max(before.minutes, one.minutes);
  if (before.only === one.only) return { ...one, minutes: Math.max(step.minutes, one.minutes) };
  const { side, ...rest } = one;
  const minutes = Math.min(whole, step.minutes + one.minutes);
  const sides = new Set([before.only, one.only]);
  if (sides.has('only on the left') && sides.has('only on the right')) return { step: one.step, minutes };
  return {
    ...rest,
    only: `${before.only} and ${one.only.replace(/^only /, '')}`,
    ...(side !== undefined && side === before.side ? { side } : {}),
    minutes,
  };
}
