import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AGAIN_AT_LEAST, CUT_ANEW, LINES_ANEW } from '../../../src/order/undoing/paces.ts';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import { anyAlterations } from './any-garment.ts';
import { anew, demo, prepared } from './demo.ts';

const { outfit, running, prepared: looked } = prepared(demo('harbour-clockmaker'));
const named = { done: running.sequence, id: 'r1', say: '' };

describe('what an alteration comes to', () => {
  it('is a minute at least for a step that is done again in part, and never more than all of it', () => {
    let short = 0;
    fc.assert(
      fc.property(anyAlterations(outfit), (alterations) => {
        for (const { step, minutes, only } of undoing(looked, alterations, named).rework.again) {
          const whole = running.steps.get(step)?.minutes ?? 0;
          expect(minutes, step).toBeLessThanOrEqual(whole);
          expect(minutes, step).toBeGreaterThanOrEqual(Math.min(whole, AGAIN_AT_LEAST.value));
          if (only !== undefined && minutes === AGAIN_AT_LEAST.value) short += 1;
        }
      }),
      { seed: 5, numRuns: 60 },
    );
    expect(short).toBeGreaterThan(0);
  });

  it('is so much more for cutting and marking again as the maker took longer than reckoned', () => {
    const minutes = (own?: ReadonlyMap<string, number>): readonly (number | undefined)[] => {
      const { undo } = undoing(looked, [anew('shirt', 'centre-front')], {
        ...named,
        ...(own ? { own } : {}),
      }).rework;
      return ['cut-anew', 'lines-anew'].map((action) => undo.find((one) => one.action === action)?.minutes);
    };
    // A left and a right.
    expect(minutes()).toEqual([2 * CUT_ANEW.value, 2 * LINES_ANEW.value]);
    const took = (step: string, times: number): readonly [string, number] => [
      step,
      times * (running.steps.get(step)?.minutes ?? 0),
    ];
    const own = new Map([took('shirt/cut-lawn/cut', 3), took('shirt/cut-lawn/lines', 0.5)]);
    expect(minutes(own)).toEqual([3 * 2 * CUT_ANEW.value, LINES_ANEW.value]);
  });
});
