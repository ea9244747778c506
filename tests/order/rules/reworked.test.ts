import { describe, expect, it } from 'vitest';
import { isUndo } from '../../../src/order/rules/reworked.ts';
import type { Rework } from '../../../src/order/running-types.ts';
import { broken, forced, join, order, orderOf, outfit, pair, work } from '../make.ts';

const parts = {
  pieces: [pair('front', 'neck shoulder side hem'), pair('back', 'neck shoulder side hem')],
  works: [work('stay-stitch', 'stay', 'front', { edge: 'neck' })],
  joins: [join('side', 'front.side', 'back.side'), join('shoulder', 'front.shoulder', 'back.shoulder')],
};
const step = {
  garment: 'a',
  pieces: ['front'],
  edges: ['front.side', 'front.gone'],
  times: 2,
  minutes: 7,
} as const;
const rework: Rework = {
  id: 'r1',
  say: 'Front wider',
  undo: [
    {
      ...step,
      of: { kind: 'join', id: 'side' },
      action: 'open',
      say: 'Unpick the side along the front',
      pieces: ['front', 'back'],
    },
    { ...step, of: { kind: 'piece', id: 'cut-cotton' }, action: 'cut-anew', say: 'Cut the fronts again' },
    {
      ...step,
      of: { kind: 'piece', id: 'cut-cotton' },
      action: 'lines-anew',
      say: 'Mark seam lines on the fronts',
    },
  ],
  again: [
    { step: 'a/side/pin', minutes: 3 },
    { step: 'a/side/stitch', only: 'only along the front', minutes: 4 },
    { step: 'a/stay/stitch', minutes: 6 },
    { step: 'a/gone/stitch', minutes: 6 },
  ],
};
const fresh = orderOf(parts);
const again = new Set(rework.again.map((one) => one.step));
const left: readonly string[] = fresh.sequence.filter((id) => !again.has(id));
const after = order(outfit(parts), { done: left, reworks: [rework] });

describe('work taken back', () => {
  it('has cards of its own: stitches are cut with a ripper, pieces at the cutting table', () => {
    expect(after.steps.get('a/side/open-r1')).toMatchObject({
      setUp: { station: 'hand', tool: 'seam ripper' },
      say: 'Unpick the side along the front',
      edges: ['front.side'],
      times: 2,
      minutes: 7,
      final: false,
      kills: [],
    });
    expect(after.steps.get('a/cut-cotton/cut-anew-r1')).toMatchObject({
      setUp: { station: 'cut' },
      final: true,
    });
    expect(after.steps.get('a/cut-cotton/lines-anew-r1')?.setUp.station).toBe('mark');
    expect([...after.steps.values()].filter(isUndo)).toHaveLength(3);
  });

  it('comes in turn, and before what is done again or still to do with the piece', () => {
    expect(broken(after).filter((one) => !left.includes(one.after))).toEqual([]);
    expect(forced(after, 'side/open-r1', 'cut-cotton/cut-anew-r1')).toBe(true);
    expect(forced(after, 'cut-cotton/cut-anew-r1', 'cut-cotton/lines-anew-r1')).toBe(true);
    expect(forced(after, 'side/open-r1', 'side/pin')).toBe(true);
    expect(forced(after, 'cut-cotton/lines-anew-r1', 'stay/stitch')).toBe(true);
    const waits = (running: typeof after) =>
      running.constraints.some(
        (one) => one.before === 'a/cut-cotton/lines-anew-r1' && one.after === 'a/shoulder/pin',
      );
    expect(waits(after)).toBe(false);
    const early = order(outfit(parts), {
      done: left.filter((id) => !id.startsWith('a/shoulder')),
      reworks: [rework],
    });
    expect(waits(early)).toBe(true);
  });

  it('opens a seam before it is sewn again, also where nothing is cut anew', () => {
    const only: Rework = { ...rework, undo: rework.undo.slice(0, 1), again: rework.again.slice(0, 2) };
    const running = order(outfit(parts), {
      done: fresh.sequence.filter((id) => id !== 'a/side/pin' && id !== 'a/side/stitch'),
      reworks: [only],
    });
    for (const step of ['side/pin', 'side/stitch'])
      expect(forced(running, 'side/open-r1', step), step).toBe(true);
  });

  it('names only pieces that are still there', () => {
    const undo = rework.undo.map((one) => ({ ...one, pieces: [...one.pieces, 'gone'] }));
    const running = order(outfit(parts), { done: left, reworks: [{ ...rework, undo }] });
    expect(running.steps.get('a/side/open-r1')?.pieces).toEqual(['front', 'back']);
    expect(running.steps.get('a/cut-cotton/cut-anew-r1')?.pieces).toEqual(['front']);
    const none = rework.undo.map((one) => ({ ...one, pieces: ['gone'] }));
    expect(
      [...order(outfit(parts), { done: left, reworks: [{ ...rework, undo: none }] }).steps.values()].some(
        isUndo,
      ),
    ).toBe(false);
  });

  it('says how much is done again, and keeps the words of the whole', () => {
    const stitch = fresh.steps.get('a/side/stitch');
    expect(after.steps.get('a/side/stitch')).toMatchObject({
      say: `${stitch?.say}, only along the front`,
      minutes: 4,
      again: { rework: 'r1', only: 'only along the front', say: stitch?.say, minutes: stitch?.minutes },
    });
    expect(after.steps.get('a/side/pin')).toMatchObject({
      say: fresh.steps.get('a/side/pin')?.say,
      minutes: 3,
    });
    expect(after.steps.get('a/side/press')).toEqual(fresh.steps.get('a/side/press'));
  });

  it('takes the words of the latest that asks for a step', () => {
    const second: Rework = { id: 'r2', say: '', undo: [], again: [{ step: 'a/side/stitch', minutes: 10 }] };
    const both = order(outfit(parts), { done: left, reworks: [rework, second] });
    expect(both.steps.get('a/side/stitch')).toMatchObject({
      say: fresh.steps.get('a/side/stitch')?.say,
      minutes: 10,
    });
    expect(both.steps.get('a/side/pin')?.again?.rework).toBe('r1');
  });

  it('is left out where its garment, its seam or its pieces are gone, and makes no loop whatever is done', () => {
    const less = { ...parts, joins: parts.joins.slice(1) };
    const without = order(outfit(less), { reworks: [rework] });
    expect(without.steps.has('a/side/open-r1')).toBe(false);
    expect(without.steps.has('a/cut-cotton/cut-anew-r1')).toBe(true);
    const elsewhere = { ...rework, undo: rework.undo.map((undo) => ({ ...undo, garment: 'b' })) };
    expect([...order(outfit(parts), { reworks: [elsewhere] }).steps.values()].some(isUndo)).toBe(false);
    for (let n = 0; n <= fresh.sequence.length; n += 1) {
      const done = fresh.sequence.slice(n);
      const found = order(outfit(parts), { done, reworks: [rework, { ...rework, id: 'r2' }] });
      expect(broken(found).filter((one) => !done.includes(one.after))).toEqual([]);
    }
  });
});
