import type { AgainStep } from '../running-types.ts';
import type { Step } from '../step.ts';

const ONE_SIDE = /(?:^| )on the (?:left|right)$/;

/** The parts in words, each once; what is on the left and also on the right is in one. */
function together(...only: readonly string[]): readonly string[] {
  const parts = [...new Set(only.flatMap((words) => words.replace(/^only /, '').split('; ')))];
  const base = (part: string): string => part.replace(ONE_SIDE, '');
  const whole = (part: string): boolean =>
    parts.includes(base(part)) || parts.some((other) => other !== part && base(other) === base(part));
  return [...new Set(parts.map((part) => (whole(part) ? base(part) : part)))];
}

/**
 * A step that is done again in part, together with the part that an earlier rework has opened and that is not sewn again
 * yet; `step` is as it stands in the order now. Nothing is left open because something else is opened too.
 */
export function withStillOpen(one: AgainStep, step: Step): AgainStep {
  const before = step.again;
  if (!before || before.only === '' || one.only === undefined) return one;
  const parts = together(before.only, one.only);
  const same = before.only === one.only;
  const minutes = same
    ? Math.max(step.minutes, one.minutes)
    : Math.min(Math.max(before.minutes, one.minutes), step.minutes + one.minutes);
  return {
    step: one.step,
    // Where nothing is left to say, both sides of it are open.
    ...(parts.includes('') ? {} : { only: `only ${parts.join('; ')}` }),
    ...(one.side !== undefined && one.side === before.side ? { side: one.side } : {}),
    minutes,
  };
}
