import { describe, expect, test } from 'vitest';
import { bow } from '../../src/cloth/bows.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const small = { width: mm(120), height: mm(50), knot: mm(25), middle: mm(70), allowance: mm(10) };

describe('a bow', () => {
  test('loops, knot and tails', () => {
    const { strips } = made(bow({ ...small, tails: { length: mm(200), width: mm(40) } }));
    expect(strips).toEqual([
      { part: 'loops', count: 1, length: mm(260), width: mm(120), marks: [mm(70), mm(130), mm(190)] },
      { part: 'knot', count: 1, length: mm(90), width: mm(70), marks: [mm(45)] },
      { part: 'tail', count: 2, length: mm(220), width: mm(100), marks: [] },
    ]);
  });

  test('no tails unless wanted', () => {
    expect(made(bow(small)).strips.map(({ part }) => part)).toEqual(['loops', 'knot']);
  });

  test.each([
    [{ width: zero }, 'width'],
    [{ height: zero }, 'height'],
    [{ knot: mm(120) }, 'knot'],
    [{ middle: mm(101) }, 'middle'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ tails: { length: zero, width: mm(10) } }, 'tails'],
  ])('refuses %j', (change, field) => {
    expect(bow({ ...small, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
