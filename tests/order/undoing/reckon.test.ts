import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { AGAIN_AT_LEAST, CUT_ANEW, LINES_ANEW } from '../../../src/order/undoing/paces.ts';
import { undoing } from '../../../src/order/undoing/undoing.ts';
import { gate, join, outfit as made, pair } from '../make.ts';
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

  it('is half of it where only a left or a right is cut again', () => {
    const { undo } = undoing(looked, [anew('shirt', 'centre-front', { side: 'right' })], named).rework;
    expect(undo.find(({ action }) => action === 'cut-anew')?.minutes).toBe(CUT_ANEW.value);
    expect(undo.find(({ action }) => action === 'lines-anew')?.minutes).toBe(LINES_ANEW.value);
  });

  it('tacks again for a try-on only what is opened', () => {
    const of = prepared(
      made({
        pieces: [pair('front', 'neck shoulder side hem'), pair('back', 'neck shoulder side hem')],
        joins: [join('side', 'front.side', 'back.side'), join('shoulder', 'front.shoulder', 'back.shoulder')],
        gates: [gate('fit', '', { tack: ['side', 'shoulder'] })],
      }),
    );
    const again = undoing(of.prepared, [{ ...anew('a', 'front'), how: 'edges', edges: ['side'] }], {
      ...named,
      done: of.running.sequence,
    }).rework.again.filter(({ step }) => step.startsWith('a/fit/'));
    expect(again.length).toBeGreaterThan(1);
    for (const { step, only, minutes } of again) {
      const whole = of.running.steps.get(step)?.minutes ?? 0;
      expect([step, only, minutes]).toEqual(
        step === 'a/fit/fit' ? [step, undefined, whole] : [step, 'only the side', whole / 2],
      );
    }
  });
});
