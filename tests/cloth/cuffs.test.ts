import { describe, expect, test } from 'vitest';
import { type CuffInput, cuff } from '../../src/cloth/cuffs.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const buttoned: CuffInput = {
  wrist: mm(160),
  ease: mm(40),
  depth: mm(60),
  allowance: mm(10),
  closes: { by: 'buttons', overlap: mm(20) },
  pieces: 1,
  sleeve: mm(400),
};

describe('a cuff', () => {
  test('in one piece, folded', () => {
    expect(made(cuff(buttoned))).toMatchObject({
      length: mm(220),
      round: mm(200),
      cut: { length: mm(240), width: mm(140), count: 1 },
      fold: mm(70),
      fullness: 2,
    });
    expect(made(cuff(buttoned)).marks).toEqual(
      [0, 1, 2, 3, 4].map((k) => ({ cuff: mm(20 + 50 * k), sleeve: mm(100 * k) })),
    );
  });

  test('of two pieces, a closed ring', () => {
    const ring = made(cuff({ ...buttoned, pieces: 2, closes: { by: 'ring', hand: mm(200) } }));
    expect(ring).toMatchObject({ cut: { length: mm(220), width: mm(80), count: 2 }, fold: undefined });
  });

  test.each<[Partial<CuffInput>, string]>([
    [{ wrist: zero }, 'wrist'],
    [{ ease: mm(-1) }, 'ease'],
    [{ closes: { by: 'ring', hand: mm(201) } }, 'ease'],
    [{ depth: zero }, 'depth'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ closes: { by: 'buttons', overlap: mm(80) } }, 'closes'],
    [{ sleeve: mm(199) }, 'sleeve'],
  ])('refuses %j', (change, field) => {
    expect(cuff({ ...buttoned, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
