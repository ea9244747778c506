import { describe, expect, it } from 'vitest';
import { modelOf } from '../../src/fitting/least-work-model.ts';
import { leastFirst } from '../../src/fitting/least-work-search.ts';
import { panelled } from './panelled.ts';

/** The work that the cheapest took: parts looked at, linear programs, and times that minutes were asked for. */
function workOf(seed: number, behind: boolean) {
  const model = modelOf(panelled(12, 8, 4, seed, behind));
  let parts = 0;
  const stop = () => {
    parts += 1;
    return false;
  };
  const [best] = leastFirst(model, false, undefined, 'any', stop);
  return { minutes: best?.minutes, parts, ...model.work };
}

// Of many puzzles those that took longest once. Minutes are those that the plain search without any memory came to, in
// the seconds that it took; the limits are a tenth over what is needed now.
describe('how much is looked at for the least work', () => {
  it.each([
    [109, true, 209, 373, 1086, 929],
    [100, true, 256, 62, 176, 140],
    [140, true, 341, 36, 104, 122],
    [148, true, 181, 337, 987, 868],
    [104, false, 2009, 142, 507, 90],
    [105, false, 431, 719, 3045, 1190],
    [109, false, 1224, 537, 690, 547],
    [119, false, 508, 2431, 5416, 6488],
  ] as const)(
    'finds the cheapest of puzzle %i soon, a few panels behind it: %s',
    (seed, behind, minutes, parts, programs, asked) => {
      const work = workOf(seed, behind);
      expect(work.minutes).toBe(minutes);
      expect(work.parts).toBeLessThanOrEqual(parts);
      expect(work.programs).toBeLessThanOrEqual(programs);
      expect(work.asked).toBeLessThanOrEqual(asked);
    },
  );
});
