import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act, Deed } from '../../src/store/deed.ts';
import { LEAST_MS, MOST_MS, ownMinutes } from '../../src/store/own-times.ts';
import { addUp } from '../../src/store/progress.ts';

const at = (seconds: number, act: Act): Deed => ({
  id: `a-${seconds}`,
  device: 'a',
  seq: seconds,
  at: seconds * 1_000,
  outfit: 'o',
  act,
});
const open = (seconds: number): Deed => at(seconds, { kind: 'step-opened', step: 's' });
const done = (seconds: number): Deed => at(seconds, { kind: 'step-done', step: 's' });
const tap = (seconds: number): Deed => at(seconds, { kind: 'tap', step: 's', item: 'l', add: 2 });
const again = (seconds: number): Deed =>
  at(seconds, {
    kind: 'reworked',
    say: 'Front wider',
    changes: [],
    rework: { id: 'r-1', say: 'Front wider', undo: [], again: [{ step: 's', minutes: 1 }] },
    cures: [],
  });
const own = (...deeds: Deed[]): number | undefined => ownMinutes(addUp(deeds, 'o')).get('s');

describe('the minutes that a step really took', () => {
  it('go from when its card was opened until it was done', () => {
    expect(own(open(0), done(90))).toBe(1.5);
  });

  it('are not known of a card that was passed by, or lay open over night, or is not done', () => {
    expect(own(open(0), done(3))).toBeUndefined();
    expect(own(open(0), done(9 * 3_600))).toBeUndefined();
    expect(own(open(0))).toBeUndefined();
    expect(own(done(90))).toBeUndefined();
    expect(own({ ...open(1), at: 90_000 }, { ...done(2), at: 0, place: 95_000 })).toBeUndefined();
  });

  it('are the time of counting where beads were counted, without the pauses', () => {
    const night = 9 * 3_600;
    // Two minutes of counting, a bead every ten seconds, and one bead that ended the night.
    const evening = Array.from({ length: 13 }, (_, i) => tap(i * 10 + 1));
    const counted = own(open(0), ...evening, tap(night), done(night + 60));
    // 12 of 14 touches were timed, at ten seconds each.
    expect(counted).toBeCloseTo(140 / 60, 10);
  });

  it('are not taken from a count that is still going on', () => {
    const begun = Array.from({ length: 13 }, (_, i) => tap(i * 10 + 1));
    expect(own(open(0), ...begun)).toBeUndefined();
    expect(own(open(0), done(90), again(100), open(200), ...begun.map((_, i) => tap(300 + 10 * i)))).toBe(
      1.5,
    );
  });

  it('are not taken from a count of which little was timed', () => {
    expect(own(open(0), tap(1), tap(120), tap(240), tap(245), done(600))).toBe(10);
  });

  it('are believed of a count that went on for hours, also when it is to be done again', () => {
    const beads = Array.from({ length: 601 }, (_, i) => tap(i * 30 + 1));
    expect(own(open(0), ...beads, done(20_000))).toBeCloseTo(300.5, 10);
    expect(own(open(0), ...beads, done(20_000), again(20_001))).toBeCloseTo(300.5, 10);
  });

  it('stay known of a step that is to be done again, until it was', () => {
    expect(own(open(0), done(90), again(100))).toBe(1.5);
    expect(own(open(0), done(90), again(100), open(200), done(260))).toBe(1);
    expect(own(open(0), done(90), again(100), done(260))).toBe(1.5);
    expect(own(open(0), done(3), again(100))).toBeUndefined();
    expect(own(open(0), done(90), again(100), open(200), done(203))).toBe(1.5);
  });

  it('always lie within what can be believed, where nothing is counted', () => {
    fc.assert(
      fc.property(fc.nat(20_000), fc.nat(20_000), (from, length) => {
        const minutes = own(open(from), done(from + length + 1));
        const ms = (length + 1) * 1_000;
        expect(minutes).toEqual(ms >= LEAST_MS && ms <= MOST_MS ? ms / 60_000 : undefined);
      }),
      { seed: 53 },
    );
  });
});
