import { describe, expect, it } from 'vitest';
import { changesBetween } from '../../src/store/changes-between.ts';
import type { Deed } from '../../src/store/deed.ts';
import { addUp } from '../../src/store/progress.ts';
import { redescribe } from '../../src/store/redescribe.ts';
import { deed } from './deeds.ts';

const part = (id: string, depth = '15 mm') => ({ id, name: `The ${id}, as cut from the roll`, depth });
const begun = { name: 'Shirt', pieces: [part('front'), part('back')] };
type Described = { name: string; wearer?: string; pieces: ReturnType<typeof part>[] };

/** A change of the description as one device wrote it, when its description was `was`. */
const changed = (device: string, at: number, say: string, now: Described, was: Described = begun): Deed =>
  deed(1, { kind: 'redescribed', say, changes: changesBetween(was, now) }, { device, at });
const start = deed(0, { kind: 'outfit-begun', description: begun }, { at: 0 });
const first = (more: Partial<Described>): Deed =>
  changed('a', 1000, 'the first change', { ...begun, ...more });
const second = (more: Partial<Described>): Deed =>
  changed('b', 2000, 'the second change', { ...begun, ...more });

describe('changes that two devices made to the same description', () => {
  it('are both made where they are of different things', () => {
    const both = addUp([
      start,
      first({ pieces: [...begun.pieces, part('collar')] }),
      second({ pieces: [part('front', '10 mm'), part('back')] }),
    ]);
    expect(both.description).toEqual({
      name: 'Shirt',
      pieces: [part('front', '10 mm'), part('back'), part('collar')],
    });
    expect(both.unfit).toEqual([]);
  });

  it.each([
    ['the same figure', { name: 'Best shirt' }, { name: 'Old shirt' }],
    [
      'an entry that stands elsewhere now, beside one of the same figure',
      { pieces: [part('yoke'), ...begun.pieces] },
      { pieces: [part('front', '10 mm'), part('back')] },
    ],
    ['an entry that is gone', { pieces: [part('back')] }, { pieces: [part('front', '10 mm'), part('back')] }],
    [
      'something of the same id put in by both',
      { pieces: [...begun.pieces, part('collar', '6 mm')] },
      { pieces: [...begun.pieces, part('collar')] },
    ],
    ['a field that both filled', { wearer: 'tenor' }, { wearer: 'alto' }],
  ])('leave the later one out, and name it, where they are of %s', (_, one, other) => {
    const both = addUp([start, first(one), second(other)]);
    expect(both.description).toEqual({ ...begun, ...one });
    expect(both.unfit).toEqual([{ deed: 'b-1', say: 'the second change' }]);
    // Taking the first one back makes room for it.
    const back = addUp([
      start,
      first(one),
      second(other),
      deed(2, { kind: 'undone', deed: 'a-1' }, { at: 3000 }),
    ]);
    expect(back.description).toEqual({ ...begun, ...other });
    expect(back.unfit).toEqual([]);
  });

  it('are made once where they are the same', () => {
    const both = addUp([start, first({ wearer: 'tenor' }), second({ wearer: 'tenor' })]);
    expect(both.description).toEqual({ ...begun, wearer: 'tenor' });
    expect(both.unfit).toEqual([]);
  });
});

describe('several changes of one deed', () => {
  it('may put an entry in further up before it is taken out where it was', () => {
    const list = ['a', 'b', 'c', 'd'].map((id) => part(id));
    const moved = [list[3]!, ...list.slice(0, 3)];
    expect(redescribe(list, changesBetween(list, moved))).toEqual({ ok: true, value: moved });
  });

  it('are refused where one of them leads nowhere', () => {
    expect(redescribe(begun, [{ at: '/nowhere/at/all', now: 1 }])).toMatchObject({ ok: false });
    expect(redescribe(begun, [{ at: 'broken', now: 1 }])).toMatchObject({ ok: false });
    expect(redescribe(begun, [{ at: '/pieces/7', was: part('hood') }])).toMatchObject({ ok: false });
    // What is to be gone is gone already.
    expect(redescribe(begun, [{ at: '/constructor', was: 1 }])).toEqual({ ok: true, value: begun });
  });
});
