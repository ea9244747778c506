import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBackup, writeBackup } from '../../src/store/backup.ts';
import type { Act, Deed } from '../../src/store/deed.ts';
import { refuseUnreadable } from '../../src/store/ledger-writing.ts';
import { pack, unpack } from '../../src/store/pack.ts';
import { addUp, applyDeed } from '../../src/store/progress.ts';
import { readDeed } from '../../src/store/read-deed.ts';
import { MOST_FIGURES, type ReckonedAct, readReckoned } from '../../src/store/reckoned.ts';
import { restoreSnapshot, takeSnapshot } from '../../src/store/snapshot.ts';
import { Trouble } from '../../src/store/trouble.ts';
import { deed, seen } from './deeds.ts';

const tucks: ReckonedAct = {
  kind: 'reckoned',
  step: 'shirt/front/tucks',
  reckoning: 'parallel-tucks',
  title: 'Parallel tucks',
  unit: 'in',
  entries: { depth: '1/8', count: '9' },
  figures: [
    { name: 'cloth to cut', figure: '15 1/4 in' },
    { name: 'first fold', figure: '2 1/8 in' },
  ],
};
const { kind: _kind, ...put } = tucks;
const begun: Deed[] = [
  deed(0, { kind: 'outfit-begun', description: { name: 'Shirt' } }),
  deed(1, tucks),
  deed(2, { ...tucks, step: 'shirt/hem', title: 'Tucks above the hem' }),
];

describe('figures put on a card', () => {
  it('stand there in the order in which they were put, and name the deed to take back', () => {
    const progress = addUp(begun);
    expect(progress.reckoned).toEqual([
      { ...put, deed: 'a-1' },
      { ...put, deed: 'a-2', step: 'shirt/hem', title: 'Tucks above the hem' },
    ]);
    expect(progress.undo).toEqual({ deed: 'a-2', kind: 'reckoned', step: 'shirt/hem', item: '' });
  });

  it('are taken back by one touch, and any of them by its name', () => {
    const progress = addUp(begun);
    const last = applyDeed(progress, deed(3, { kind: 'undone', deed: 'a-2' }));
    expect(last.reckoned.map((one) => one.deed)).toEqual(['a-1']);
    expect(last.undo).toMatchObject({ deed: 'a-1', kind: 'reckoned' });
    const first = applyDeed(progress, deed(3, { kind: 'undone', deed: 'a-1' }));
    expect(first.reckoned.map((one) => one.deed)).toEqual(['a-2']);
    expect(first.undo).toMatchObject({ deed: 'a-2' });
    expect(progress.reckoned).toHaveLength(2);
  });

  it('leave the order, the open card and what is done as they were', () => {
    const without = addUp(begun.slice(0, 1), 'o');
    expect({ ...seen(addUp(begun)), reckoned: [], undo: undefined }).toEqual(seen(without));
  });

  it('come back from a snapshot, and can be taken back there', () => {
    const back = restoreSnapshot(structuredClone(takeSnapshot(addUp(begun))), 'o');
    if (!back.ok) throw new Error(back.error);
    expect(seen(back.value)).toEqual(seen(addUp(begun)));
    const undone = applyDeed(back.value, deed(3, { kind: 'undone', deed: 'a-1' }));
    expect(undone.reckoned.map((one) => one.deed)).toEqual(['a-2']);
    expect(unpack(pack(begun))).toEqual(begun);
  });

  it('are added up anew where the snapshot was made before there were any', () => {
    const { reckoned: _none, ...sum } = takeSnapshot(addUp(begun)).sum;
    const old = { ...takeSnapshot(addUp(begun)), version: 1, sum };
    expect(restoreSnapshot(old, 'o')).toEqual({
      ok: false,
      error: 'The snapshot has version 1, expected 5.',
    });
    const odd = restoreSnapshot({ ...old, version: 5 }, 'o');
    expect(odd.ok ? 'fine' : odd.error).toContain('parts of it are missing');
  });

  it('are in the copy, and a copy without any is read as before', async () => {
    const copy = await readBackup(await writeBackup('o', begun));
    expect(copy.ok && copy.value.deeds).toEqual(begun);
    const old = await readBackup(await writeBackup('o', begun.slice(0, 1)));
    expect(old.ok && addUp(old.value.deeds, 'o').reckoned).toEqual([]);
  });
});

const large = (n: number): string => 'm'.repeat(n);
const figures = (n: number) =>
  Array.from({ length: n }, (_, i) => ({ name: `mark ${i + 1}`, figure: `${i} in` }));

describe('figures that do not go on a card', () => {
  const tooMuch: readonly [string, Record<string, unknown>, string][] = [
    ['no figure', { figures: [] }, 'act.figures: found a list, expected a list of 1 to 60'],
    ['more than are read at a bench', { figures: figures(MOST_FIGURES + 1) }, 'a list of 1 to 60'],
    ['a figure that says nothing', { figures: [{ name: 'depth', figure: '' }] }, 'a short figure each'],
    ['a figure as a number', { figures: [{ name: 'depth', figure: 3 }] }, 'a short figure each'],
    ['a figure with more to it', { figures: [{ name: 'a', figure: 'b', more: large(9) }] }, 'a short figure'],
    ['a figure of a whole page', { figures: [{ name: 'a', figure: large(401) }] }, 'a short figure each'],
    ['a long title', { title: large(161) }, 'act.title: found "mmm'],
    ['no title', { title: '' }, 'act.title: found "", expected 1 to 160 letters'],
    ['no reckoning', { reckoning: undefined }, 'act.reckoning: found nothing'],
    ['a unit that is none', { unit: 'yd' }, 'act.unit: found "yd", expected "in" or "mm"'],
    ['no step', { step: 7 }, 'act.step: found 7'],
    ['an entry that is no text', { entries: { depth: 3 } }, 'act.entries: found an object'],
    ['entries as a list', { entries: ['3'] }, 'act.entries: found a list'],
    ['a book as an entry', { entries: { lines: large(8_001) } }, '60 short texts at most'],
    [
      'too many entries',
      { entries: Object.fromEntries(Array.from({ length: 61 }, (_, i) => [`e${i}`, ''])) },
      '60 short texts at most',
    ],
  ];

  it.each(tooMuch)('%s: refused when read and when written', (_name, change, said) => {
    const act = { ...tucks, ...change } as unknown as Act;
    const read = readDeed(deed(1, act), 'o');
    expect(read.ok ? 'fine' : read.error).toContain(said);
    expect(() => refuseUnreadable([act])).toThrow(Trouble);
  });

  it('all else goes on: whatever is written can be read again', () => {
    expect(() => refuseUnreadable([tucks, { kind: 'note', step: 's', text: large(9_999) }])).not.toThrow();
    fc.assert(
      fc.property(
        fc.dictionary(fc.string({ minLength: 1, maxLength: 80 }), fc.string(), { maxKeys: 60 }),
        fc.array(fc.record({ name: fc.string(), figure: fc.string({ minLength: 1 }) }), {
          minLength: 1,
          maxLength: MOST_FIGURES,
        }),
        (entries, some) => {
          const act: ReckonedAct = { ...tucks, entries, figures: some };
          expect(readReckoned(act)).toEqual({ ok: true, value: act });
          expect(readDeed(JSON.parse(JSON.stringify(deed(1, act))), 'o').ok).toBe(true);
        },
      ),
    );
  });
});
