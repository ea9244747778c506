import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Act, Deed } from '../../src/store/deed.ts';
import { compareDeeds } from '../../src/store/deed-order.ts';
import { addUp, applyDeed, emptyProgress } from '../../src/store/progress.ts';
import { anyAct, anyDeeds, deed, seen } from './deeds.ts';

const inTurn = (...acts: Act[]): Deed[] => acts.map((act, seq) => deed(seq, act));
const oneByOne = (deeds: readonly Deed[]) => deeds.reduce(applyDeed, emptyProgress('o'));

describe('what deeds add up to', () => {
  it('counts taps by line, with the times of the first and last', () => {
    const progress = addUp(
      inTurn(
        { kind: 'tap', step: 'beads', item: 'line 1', add: 2 },
        { kind: 'tap', step: 'beads', item: 'line 1', add: 2 },
        { kind: 'tap', step: 'beads', item: 'line 2', add: 1 },
      ),
    );
    const step = progress.steps.get('beads');
    expect([...(step?.counts ?? [])]).toEqual([
      ['line 1', 4],
      ['line 2', 1],
    ]);
    expect([step?.countedFrom, step?.countedTo]).toEqual([0, 2_000]);
    expect(progress.undo).toEqual({ deed: 'a-2', kind: 'tap', step: 'beads', item: 'line 2' });
  });

  it('lets a closed line stand for its taps, and gives the taps back when that is taken back', () => {
    const deeds = inTurn(
      { kind: 'tap', step: 's', item: 'l', add: 3 },
      { kind: 'line-closed', step: 's', item: 'l', count: 44 },
    );
    const closed = addUp(deeds);
    expect(closed.steps.get('s')?.counts.get('l')).toBe(44);
    expect(closed.steps.get('s')?.closed.has('l')).toBe(true);
    const back = applyDeed(closed, deed(2, { kind: 'undone', deed: 'a-1' }));
    expect(back.steps.get('s')?.counts.get('l')).toBe(3);
    expect(back.steps.get('s')?.closed.has('l')).toBe(false);
    expect(closed.steps.get('s')?.counts.get('l')).toBe(44);
  });

  it('puts a step that is taken back on the bench again', () => {
    const progress = addUp(
      inTurn(
        { kind: 'step-opened', step: 'hem' },
        { kind: 'step-done', step: 'hem' },
        { kind: 'step-opened', step: 'collar' },
        { kind: 'undone', deed: 'a-1' },
      ),
    );
    expect(progress.done).toEqual([]);
    expect(progress.open).toBe('hem');
    expect(progress.steps.get('hem')?.doneAt).toBeUndefined();
    expect(progress.undo).toBeUndefined();
  });

  it('does not take back the opening of a card', () => {
    const progress = addUp(inTurn({ kind: 'step-opened', step: 'hem' }, { kind: 'undone', deed: 'a-0' }));
    expect(progress.open).toBe('hem');
  });

  it('keeps a tick that was made twice when one of the two is taken back', () => {
    const progress = addUp(
      inTurn(
        { kind: 'item-done', step: 's', item: 'left' },
        { kind: 'item-done', step: 's', item: 'left' },
        { kind: 'undone', deed: 'a-1' },
      ),
    );
    expect(progress.steps.get('s')?.items.has('left')).toBe(true);
    expect(progress.undo?.deed).toBe('a-0');
  });

  it('starts timers from the clock and forgets stopped ones', () => {
    const timers = addUp(
      inTurn(
        { kind: 'timer-started', step: 's', item: 'press', seconds: 12 },
        { kind: 'timer-started', step: 's', item: 'cool', seconds: 60 },
        { kind: 'timer-stopped', step: 's', item: 'press' },
      ),
    ).steps.get('s')?.timers;
    expect([...(timers ?? [])]).toEqual([['cool', { startedAt: 1_000, seconds: 60 }]]);
  });

  it('changes the description, and keeps reasons, waivers and notes', () => {
    const progress = addUp(
      inTurn(
        { kind: 'outfit-begun', description: { name: 'Shirt', cloths: [] } },
        { kind: 'described', at: '/name', was: 'Shirt', now: 'Best shirt' },
        { kind: 'described', at: '/nowhere/at/all', now: 1 },
        { kind: 'reason-added', before: 'hem', after: 'collar', because: 'try on first' },
        { kind: 'reason-waived', key: 'press' },
        { kind: 'note', step: 'hem', text: 'shorter left' },
      ),
    );
    expect(progress.description).toEqual({ name: 'Best shirt', cloths: [] });
    expect(progress.added).toEqual([{ before: 'hem', after: 'collar', because: 'try on first' }]);
    expect([...progress.waived]).toEqual(['press']);
    expect(progress.notes).toEqual([{ step: 'hem', text: 'shorter left', at: 5_000 }]);
  });

  it('changes several places of the description as one deed, which one undo takes back', () => {
    const begun = { name: 'Shirt', pieces: [{ id: 'front' }, { id: 'back' }] };
    const deeds = inTurn(
      { kind: 'outfit-begun', description: begun },
      {
        kind: 'redescribed',
        say: 'put on the collar',
        changes: [
          { at: '/pieces/1', was: { id: 'back' } },
          { at: '/pieces/0/depth', now: '15 mm' },
          { at: '/pieces/-', now: { id: 'collar' } },
        ],
      },
    );
    const progress = addUp(deeds);
    expect(progress.description).toEqual({
      name: 'Shirt',
      pieces: [{ id: 'front', depth: '15 mm' }, { id: 'collar' }],
    });
    expect(progress.undo).toEqual({
      deed: 'a-1',
      kind: 'redescribed',
      step: '',
      item: '',
      say: 'put on the collar',
    });
    const back = applyDeed(progress, deed(2, { kind: 'undone', deed: 'a-1' }));
    expect(back.description).toEqual(begun);
    expect(back.undo).toBeUndefined();
  });

  it('makes all changes of one deed or none of them', () => {
    const begun = { name: 'Shirt' };
    const progress = addUp(
      inTurn(
        { kind: 'outfit-begun', description: begun },
        {
          kind: 'redescribed',
          say: 'renamed it',
          changes: [
            { at: '/name', was: 'Shirt', now: 'Best shirt' },
            { at: '/nowhere/at/all', now: 1 },
          ],
        },
      ),
    );
    expect(progress.description).toEqual(begun);
  });

  it('ignores an act of a newer version, and its taking back, but goes on after them', () => {
    const newer = { kind: 'dyed', step: 's', colour: 'madder' } as unknown as Act;
    const progress = addUp(inTurn(newer, { kind: 'step-done', step: 's' }, { kind: 'undone', deed: 'a-0' }));
    expect(progress.done).toEqual(['s']);
  });

  it('leaves out deeds of another outfit', () => {
    const other = deed(1, { kind: 'step-done', step: 'hat' }, { outfit: 'p' });
    const own = deed(0, { kind: 'step-done', step: 'hem' });
    expect(addUp([own, other]).done).toEqual(['hem']);
    expect(applyDeed(addUp([own]), other).done).toEqual(['hem']);
    expect(addUp([], 'o')).toEqual(emptyProgress('o'));
  });
});

describe('whatever was done', () => {
  it('is gone when all of it is taken back, last first, but for the cards opened', () => {
    fc.assert(
      fc.property(
        fc.array(
          anyAct.filter((a) => a.kind !== 'outfit-begun'),
          { maxLength: 25 },
        ),
        (acts) => {
          let progress = inTurn(...acts).reduce(applyDeed, emptyProgress('o'));
          let seq = acts.length;
          while (progress.undo !== undefined) {
            progress = applyDeed(progress, deed(seq++, { kind: 'undone', deed: progress.undo.deed }));
          }
          const opens = acts.filter((act) => act.kind === 'step-opened');
          expect(seq - acts.length).toBe(acts.length - opens.length);
          const bare = addUp(
            inTurn(...acts).filter((d) => d.act.kind === 'step-opened'),
            'o',
          );
          expect({ ...seen(progress), open: undefined }).toEqual({ ...seen(bare), open: undefined });
        },
      ),
    );
  });

  it('adds up one by one as it does all at once, arriving late, twice or out of order', () => {
    const arrival = fc.tuple(anyDeeds('a'), anyDeeds('b')).chain(([a, b]) =>
      fc.record({
        all: fc.constant([...a, ...b]),
        arriving: fc.shuffledSubarray([...a, ...b], { minLength: a.length + b.length }),
        again: fc.subarray([...a, ...b]),
      }),
    );
    fc.assert(
      fc.property(arrival, ({ all, arriving, again }) => {
        const once = seen(addUp(all, 'o'));
        expect(seen(oneByOne([...arriving, ...again]))).toEqual(once);
        expect(seen(addUp([...again, ...arriving], 'o'))).toEqual(once);
        const steps = [...once.steps.keys()];
        expect([...oneByOne(arriving).steps.keys()]).toEqual(steps);
      }),
    );
  });

  it('merges from two devices to the same, however the two are interleaved', () => {
    const zipped = fc.tuple(
      anyDeeds('a'),
      anyDeeds('b'),
      fc.array(fc.boolean(), { minLength: 60, maxLength: 60 }),
    );
    fc.assert(
      fc.property(zipped, ([a, b, turns]) => {
        const merged: Deed[] = [];
        let [i, j] = [0, 0];
        for (const turn of turns) {
          const next = turn ? (a[i++] ?? b[j++]) : (b[j++] ?? a[i++]);
          if (next !== undefined) merged.push(next);
        }
        expect(merged.length).toBe(a.length + b.length);
        expect(seen(addUp(merged, 'o'))).toEqual(seen(addUp([...b, ...a], 'o')));
      }),
    );
  });

  it('leaves the progress handed in as it was', () => {
    fc.assert(
      fc.property(anyDeeds('a'), anyAct, anyAct, (deeds, one, other) => {
        const before = oneByOne(deeds);
        const kept = structuredClone(seen(before));
        const here = applyDeed(before, deed(50, one, { at: 100 }));
        const hereKept = structuredClone(seen(here));
        applyDeed(before, deed(51, other, { at: 101 }));
        applyDeed(here, deed(52, other, { at: 102 }));
        expect(seen(before)).toEqual(kept);
        expect(seen(here)).toEqual(hereKept);
      }),
    );
  });
});

describe('the order of deeds', () => {
  it('goes by place, then device, then number, and is total', () => {
    const [a, b] = [deed(3, { kind: 'step-done', step: 's' }), deed(2, { kind: 'step-done', step: 's' })];
    expect(compareDeeds(a, b)).toBeGreaterThan(0);
    expect(compareDeeds({ ...a, at: 2_000 }, b)).toBeGreaterThan(0);
    expect(compareDeeds({ ...a, at: 2_000 }, { ...b, device: 'b' })).toBeLessThan(0);
    expect(compareDeeds({ ...b, place: 9_000 }, a)).toBeGreaterThan(0);
    expect(compareDeeds(a, a)).toBe(0);
  });
});

describe('many taps', () => {
  it('fold fast', () => {
    const deeds: Deed[] = [];
    for (let i = 0; i < 40_000; i++) {
      deeds.push(deed(i, { kind: 'tap', step: `s${i % 20}`, item: `l${(i >> 5) % 60}`, add: 2 }));
    }
    addUp(deeds.slice(0, 5_000));
    const began = performance.now();
    const progress = addUp(deeds);
    const folded = performance.now() - began;
    const back = applyDeed(progress, deed(40_000, { kind: 'undone', deed: 'a-39999' }));
    const undone = performance.now() - began - folded;
    let total = 0;
    for (const step of back.steps.values()) for (const count of step.counts.values()) total += count;
    expect(total).toBe(79_998);
    console.info(
      `40 000 taps: folded in ${folded.toFixed(1)} ms, the last taken back in ${undone.toFixed(1)} ms`,
    );
    expect(folded).toBeLessThan(1_000);
  });
});

describe('the time spent counting', () => {
  const tap = (seq: number, at: number): Deed => ({
    id: `a-${seq}`,
    device: 'a',
    seq,
    at,
    outfit: 'o',
    act: { kind: 'tap', step: 'beads', item: 'line 1', add: 2 },
  });

  it('leaves out a night, and the bead that ended it', () => {
    const night = 8 * 3_600_000;
    const progress = addUp(
      [tap(0, 0), tap(1, 5_000), tap(2, 10_000), tap(3, night), tap(4, night + 5_000)],
      'o',
    );
    expect(progress.steps.get('beads')).toMatchObject({ countedMs: 15_000, countedThen: 6 });
  });
});
