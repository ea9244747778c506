import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Deed } from '../../src/store/deed.ts';
import { pack, packedCount, unpack } from '../../src/store/pack.ts';
import { addUp, applyDeed, applyDeeds, emptyProgress } from '../../src/store/progress.ts';
import { restoreSnapshot, takeSnapshot } from '../../src/store/snapshot.ts';
import { anyDeeds, counting, deed, seen } from './deeds.ts';

const taps = (n: number): Deed[] =>
  Array.from({ length: n }, (_, i) =>
    deed(i, { kind: 'tap', step: 'beads', item: `line ${Math.floor(i / 50)}`, add: 2 }),
  );

/** As a browser stores it: nothing is shared with the original any more. */
const stored = (deeds: readonly Deed[]) => structuredClone(takeSnapshot(addUp(deeds, 'o')));

describe('packed deeds', () => {
  it('come out as they went in', () => {
    fc.assert(
      fc.property(anyDeeds('a'), anyDeeds('b'), (a, b) => {
        const deeds = [...a, ...b, ...a];
        expect(unpack(pack(deeds))).toEqual(deeds);
        expect(packedCount(pack(deeds))).toBe(deeds.length);
      }),
    );
  });

  it('take one row a line of taps, and leave a deed with a place of its own as it is', () => {
    expect(pack(taps(500)).length).toBe(10);
    const odd = deed(1, { kind: 'tap', step: 'beads', item: 'line 0', add: 2 }, { place: 7 });
    expect(unpack(pack([...taps(1), odd]))).toEqual([...taps(1), odd]);
  });
});

describe('a snapshot', () => {
  it('goes on as if there had been none, wherever it was taken', () => {
    fc.assert(
      fc.property(
        fc.oneof(anyDeeds('a', 40), counting),
        anyDeeds('b', 10),
        fc.nat(40),
        fc.nat(40),
        (a, b, one, two) => {
          const cuts = [Math.min(one, two), Math.max(one, two)];
          let progress = emptyProgress('o');
          const sofar: Deed[] = [];
          for (const part of [a.slice(0, cuts[0]), a.slice(cuts[0], cuts[1]), a.slice(cuts[1]), b]) {
            const back = restoreSnapshot(structuredClone(takeSnapshot(progress)), 'o');
            if (!back.ok) throw new Error(back.error);
            expect(seen(back.value)).toEqual(seen(progress));
            progress = applyDeeds(back.value, part);
            sofar.push(...part);
            expect(seen(progress)).toEqual(seen(addUp(sofar, 'o')));
          }
        },
      ),
    );
  });

  it('still takes back a tap that it holds', () => {
    const back = restoreSnapshot(stored(taps(120)), 'o');
    if (!back.ok) throw new Error(back.error);
    const undone = applyDeed(back.value, deed(120, { kind: 'undone', deed: 'a-119' }));
    expect(undone.steps.get('beads')?.counts.get('line 2')).toBe(38);
    expect(undone.undo?.deed).toBe('a-118');
  });

  it('adds whole runs of taps up as it does one tap after the other', () => {
    const deeds = [...taps(120), deed(120, { kind: 'note', step: 'beads', text: 'thread is short' })];
    const back = restoreSnapshot(stored(deeds), 'o');
    if (!back.ok) throw new Error(back.error);
    const undone = deed(121, { kind: 'undone', deed: 'a-120' });
    const progress = applyDeed(back.value, undone);
    expect(seen(progress)).toEqual(seen(addUp([...deeds, undone])));
    expect(progress.undo?.deed).toBe('a-119');
    expect(progress.steps.get('beads')).toMatchObject({
      countedFrom: 0,
      countedTo: 119_000,
      countedMs: 119_000,
      countedThen: 238,
    });
  });

  it('still takes back a change of several places that it holds, and names it', () => {
    const changes = [
      { at: '/name', was: 'Shirt', now: 'Best shirt' },
      { at: '/pieces/-', now: 'collar' },
    ];
    const begun = deed(0, { kind: 'outfit-begun', description: { name: 'Shirt', pieces: [] } });
    const back = restoreSnapshot(
      stored([begun, deed(1, { kind: 'redescribed', say: 'added the collar', changes })]),
      'o',
    );
    if (!back.ok) throw new Error(back.error);
    expect(back.value.description).toEqual({ name: 'Best shirt', pieces: ['collar'] });
    expect(back.value.undo?.say).toBe('added the collar');
    const undone = applyDeed(back.value, deed(2, { kind: 'undone', deed: 'a-1' }));
    expect(undone.description).toEqual({ name: 'Shirt', pieces: [] });
    expect(undone.undo).toBeUndefined();
  });

  it('holds each picture once, and gives it back with what was seen', () => {
    const photo = `data:image/jpeg;base64,${'A'.repeat(200_000)}`;
    const acts = Array.from({ length: 30 }, (_, i) =>
      deed(i, {
        kind: 'seen',
        garment: 'shirt',
        entry: 'cuff-tight',
        side: 'both',
        photo: `${photo}${'B'.repeat(i)}`,
      }),
    );
    const snapshot = stored(acts);
    expect(JSON.stringify(snapshot.sum.seen).length).toBeLessThan(10_000);
    const back = restoreSnapshot(snapshot, 'o');
    if (!back.ok) throw new Error(back.error);
    expect(seen(back.value)).toEqual(seen(addUp(acts)));
    expect(back.value.seen[7]?.photo).toBe(`${photo}BBBBBBB`);
  });

  it('is refused with a reason when it is foreign, of another version or damaged', () => {
    const whole = stored(taps(60));
    const reason = (snapshot: unknown, outfit = 'o') => {
      const result = restoreSnapshot(snapshot, outfit);
      return result.ok ? 'fine' : result.error;
    };
    expect(reason(whole)).toBe('fine');
    expect(reason(undefined)).toContain('not a snapshot');
    expect(reason({ ...whole, format: 'other' })).toContain('not a snapshot');
    expect(reason({ ...whole, version: 99 })).toContain('version 99, expected 5');
    expect(reason(whole, 'p')).toContain('of "o", expected "p"');
    expect(reason({ ...whole, heads: {} })).toContain('parts of it are missing');
    expect(reason({ ...whole, packed: whole.packed.slice(1) })).toContain('number of deeds');
    expect(reason({ ...whole, packed: [1] })).toContain('number of deeds');
    expect(reason({ ...whole, last: undefined })).toContain('last deed');
    expect(reason({ ...whole, sum: { ...whole.sum, steps: new Map([['s', {}]]) } })).toContain('missing');
  });
});
