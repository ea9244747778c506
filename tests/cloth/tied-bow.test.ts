import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tiedBow } from '../../src/cloth/tied-bow.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const neck = { round: mm(380), bow: mm(160), tail: mm(200), width: mm(60), allowance: mm(10) };

describe('a tied bow', () => {
  test('once round, both loops there and back, two tails and the knot', () => {
    const tie = made(tiedBow({ ...neck, knot: mm(100) }));
    expect(tie.length).toBe(mm(380 + 320 + 400 + 100));
    expect(tie.cut).toEqual({ count: 1, length: mm(1220), width: mm(140) });
    expect(tie.fold).toBe(mm(70));
    expect(tie.marks).toEqual({
      loops: [mm(280), mm(920)],
      knot: [mm(410), mm(790)],
      centreBack: mm(600),
    });
  });

  test('the knot takes twice the width unless a sample says otherwise', () => {
    const tie = made(tiedBow(neck));
    expect(tie.length).toBe(mm(1220));
    expect(tie.assumed).toContain('The knot takes twice the width of the tie.');
  });

  test('two halves where the cloth is short, with the seam at the centre back', () => {
    expect(made(tiedBow({ ...neck, longest: mm(1240) })).cut.count).toBe(1);
    const tie = made(tiedBow({ ...neck, longest: mm(1239) }));
    expect(tie.cut).toEqual({ count: 2, length: mm(630), width: mm(140) });
    expect(tiedBow({ ...neck, longest: mm(629) })).toMatchObject({ error: { field: 'longest' } });
  });

  test('what lies between the marks of the knot goes round, and a loop is half the bow', () => {
    const size = fc.integer({ min: 1, max: 900 }).map((n) => mm(n));
    fc.assert(
      fc.property(size, size, size, size, (round, bow, tail, width) => {
        const { marks, length } = made(tiedBow({ round, bow, tail, width, allowance: zero }));
        expect(marks.knot[1] - marks.knot[0]).toBe(round);
        expect(marks.loops[0] - tail).toBe(bow / 2);
        for (const [one, other] of [marks.loops, marks.knot]) expect(one + other).toBe(length);
      }),
    );
  });

  test.each([
    [{ round: zero }, 'round'],
    [{ bow: zero }, 'bow'],
    [{ tail: mm(-1) }, 'tail'],
    [{ width: zero }, 'width'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ knot: mm(-1) }, 'knot'],
  ])('refuses %j', (change, field) => {
    expect(tiedBow({ ...neck, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
