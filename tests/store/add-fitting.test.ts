import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act, Deed, DeedId, ReworkWritten } from '../../src/store/deed.ts';
import { addUp, applyDeed, applyDeeds } from '../../src/store/progress.ts';
import { anyDeeds, deed, seen } from './deeds.ts';

const begun = { name: 'Blouse', pieces: [{ id: 'front', width: '10 in' }] };
/** A deed half a minute after the one before. */
const late = (seq: number, act: Act, more: Partial<Deed> = {}): Deed =>
  deed(seq, act, { at: 30_000 * seq, ...more });

const start = late(0, { kind: 'outfit-begun', description: begun });
const surplus: Act = { kind: 'seen', garment: 'shirt', entry: 'surplus', side: 'both', amount: 15_875_000 };
const wider = { at: '/pieces/0/width', was: '10 in', now: '10 5/8 in' };

const rework = (id: string, ...again: string[]): ReworkWritten => ({
  id,
  say: 'Front 5/8 in wider',
  undo: [
    {
      garment: 'shirt',
      of: { kind: 'join', id: 'panel' },
      action: 'unpick',
      say: 'Unpick the panel seam',
      pieces: ['front'],
      edges: [],
      times: 2,
      minutes: 20,
    },
  ],
  again: again.map((step) => ({ step, minutes: 10 })),
});

const reworked = (
  cures: readonly DeedId[],
  written: ReworkWritten,
  changes = [wider],
): Extract<Act, { kind: 'reworked' }> => ({
  kind: 'reworked',
  say: 'Front 5/8 in wider',
  changes,
  rework: written,
  cures,
});

const run = (...acts: Act[]): Deed[] => [start, ...acts.map((act, i) => late(i + 1, act))];

/** A seam opened, ticked and sewn, and beads counted, in deeds 1 to 6. */
const work: Act[] = [
  { kind: 'step-opened', step: 'seam' },
  { kind: 'item-done', step: 'seam', item: 'left' },
  { kind: 'step-done', step: 'seam' },
  { kind: 'tap', step: 'beads', item: 'line 1', add: 2 },
  { kind: 'line-closed', step: 'beads', item: 'line 1', count: 2 },
  { kind: 'step-done', step: 'beads' },
];

describe('what is seen at a try-on', () => {
  it('is open until it is let be, and again when that is taken back', () => {
    const progress = addUp(run(surplus, { ...surplus, side: 'left' }, { kind: 'let-be', seen: 'a-1' }));
    expect(progress.seen.map(({ deed, side, state }) => [deed, side, state])).toEqual([
      ['a-1', 'both', 'let be'],
      ['a-2', 'left', 'open'],
    ]);
    expect(progress.seen[0]).toMatchObject({ garment: 'shirt', amount: 15_875_000, at: 30_000 });
    expect(progress.undo?.kind).toBe('let-be');
    const back = applyDeed(progress, late(4, { kind: 'undone', deed: 'a-3' }));
    expect(back.seen.map(({ state }) => state)).toEqual(['open', 'open']);
    const gone = applyDeed(back, late(5, { kind: 'undone', deed: 'a-1' }));
    expect(gone.seen.map(({ deed }) => deed)).toEqual(['a-2']);
  });

  it('stays cured, though another device lets it be afterwards', () => {
    const deeds = run(surplus, reworked(['a-1'], rework('r-1')), { kind: 'let-be', seen: 'a-1' });
    expect(addUp(deeds).seen[0]?.state).toBe('cured');
  });
});

describe('a cure that is accepted', () => {
  const deeds = run(...work, surplus, reworked(['a-7'], rework('r-1', 'seam', 'beads', 'never-begun')));
  const progress = addUp(deeds);

  it('changes the description, puts the rework down and cures what was seen', () => {
    expect(progress.description).toEqual({ name: 'Blouse', pieces: [{ id: 'front', width: '10 5/8 in' }] });
    expect(progress.reworks.map(({ id }) => id)).toEqual(['r-1']);
    expect(progress.seen[0]?.state).toBe('cured');
    expect(progress.unfit).toEqual([]);
    expect(progress.undo).toMatchObject({ deed: 'a-8', kind: 'reworked', say: 'Front 5/8 in wider' });
  });

  it('has its steps to do again from the beginning, and remembers how long they took', () => {
    expect(progress.done).toEqual([]);
    expect(progress.open).toBeUndefined();
    const empty = { items: new Set(), counts: new Map(), closed: new Set(), timers: new Map() };
    expect(progress.steps.get('seam')).toEqual({ ...empty, tookMs: 60_000 });
    expect(progress.steps.get('beads')).toEqual(empty);
    expect(progress.steps.has('never-begun')).toBe(false);
  });

  it('lets them be done once more, timed anew', () => {
    const again = applyDeeds(progress, [
      late(9, { kind: 'step-opened', step: 'seam' }),
      late(12, { kind: 'step-done', step: 'seam' }, { at: 360_000 }),
    ]);
    expect(again.done).toEqual(['seam']);
    expect(again.steps.get('seam')).toMatchObject({ openedAt: 270_000, doneAt: 360_000, tookMs: 60_000 });
    expect(again.steps.get('seam')?.items.size).toBe(0);
    const twice = applyDeed(again, late(13, reworked([], rework('r-2', 'seam'), []), { at: 400_000 }));
    expect(twice.done).toEqual([]);
    expect(twice.steps.get('seam')?.tookMs).toBe(90_000);
    expect(seen(twice)).toEqual(seen(addUp([...deeds, ...(twice.trail?.later.slice(9) ?? [])])));
  });

  it('is gone without a trace when it is taken back', () => {
    const back = applyDeed(progress, late(9, { kind: 'undone', deed: 'a-8' }));
    expect(seen(back)).toEqual(seen(addUp(deeds.slice(0, -1))));
    expect(back.done).toEqual(['seam', 'beads']);
  });

  it('counts not at all where its changes do not fit any more', () => {
    const other = late(
      1,
      { kind: 'redescribed', say: 'narrower', changes: [{ ...wider, now: '9 in' }] },
      { device: 'b', at: 195_000 },
    );
    const both = addUp([...deeds, other]);
    expect(both.unfit).toEqual([{ deed: 'a-8', say: 'Front 5/8 in wider' }]);
    expect(both.reworks).toEqual([]);
    expect(both.done).toEqual(['seam', 'beads']);
    expect(both.seen[0]?.state).toBe('open');
    expect(both.description).toMatchObject({ pieces: [{ width: '9 in' }] });
    const made = applyDeed(both, late(2, { kind: 'undone', deed: 'b-1' }, { device: 'b', at: 600_000 }));
    expect({ ...seen(made), undo: undefined }).toEqual({ ...seen(progress), undo: undefined });
  });

  it('counts once where two devices accept one of the same name', () => {
    const other = late(1, reworked(['a-7'], rework('r-1', 'seam')), { device: 'b', at: 270_000 });
    const both = addUp([...deeds, other]);
    expect(both.reworks).toHaveLength(1);
    expect(both.unfit).toEqual([{ deed: 'b-1', say: 'Front 5/8 in wider' }]);
  });

  it('has both reworks where two devices cure different things', () => {
    const name = { at: '/name', was: 'Blouse', now: 'Blouse, wider' };
    const other = late(1, reworked([], rework('r-2', 'beads'), [name]), { device: 'b', at: 225_000 });
    const both = addUp([other, ...deeds]);
    expect(both.reworks.map(({ id }) => id)).toEqual(['r-2', 'r-1']);
    expect(both.done).toEqual([]);
    expect(both.unfit).toEqual([]);
    expect(both.description).toEqual({
      name: 'Blouse, wider',
      pieces: [{ id: 'front', width: '10 5/8 in' }],
    });
  });
});

describe('whatever was done before', () => {
  it('is exactly as it was when the rework that follows is taken back', () => {
    const again = fc.subarray(['hem', 'collar', 'constructor', 'cuff']);
    fc.assert(
      fc.property(anyDeeds('a'), anyDeeds('b'), again, (a, b, steps) => {
        const before = addUp([...a, ...b], 'o');
        const act = reworked(['a-1', 'b-2'], rework('r-9', ...steps), []);
        const after = applyDeed(before, deed(90, act, { at: 1_000 }));
        expect(after.done.filter((step) => steps.includes(step))).toEqual([]);
        expect(after.done).toEqual(before.done.filter((step) => !steps.includes(step)));
        const back = applyDeed(after, deed(91, { kind: 'undone', deed: 'a-90' }, { at: 1_001 }));
        expect(seen(back)).toEqual(seen(before));
      }),
      { seed: 51, numRuns: 500 },
    );
  });

  it('comes to the same on two devices that hear of each other in any order', () => {
    const arrival = fc
      .tuple(anyDeeds('a', 20), anyDeeds('b', 20))
      .chain(([a, b]) =>
        fc.tuple(
          fc.constant([...a, ...b]),
          fc.shuffledSubarray([...a, ...b], { minLength: a.length + b.length }),
        ),
      );
    fc.assert(
      fc.property(arrival, ([all, arriving]) => {
        const one = addUp(all, 'o');
        const other = arriving.reduce(applyDeed, addUp([], 'o'));
        expect(seen(other)).toEqual(seen(one));
        // What is to be done again is never also done, unless it was done since.
        for (const step of one.done) expect(one.steps.get(step)?.doneAt).toBeDefined();
        expect(new Set(one.done).size).toBe(one.done.length);
        expect(new Set(one.reworks.map(({ id }) => id)).size).toBe(one.reworks.length);
      }),
      { seed: 52, numRuns: 500 },
    );
  });
});
