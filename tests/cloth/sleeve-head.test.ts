import { describe, expect, test } from 'vitest';
import { sleeveHead } from '../../src/cloth/sleeve-head.ts';
import { mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const cap = { cap: mm(480), toShoulder: mm(230), depth: mm(40), allowance: mm(10) };

describe('a sleeve head', () => {
  test('lies with its middle at the shoulder', () => {
    expect(made(sleeveHead({ ...cap, fullness: 2 }))).toMatchObject({
      cut: { length: mm(500), width: mm(100) },
      fold: mm(50),
      shoulder: mm(250),
      from: mm(110),
      to: mm(350),
    });
  });

  test.each([
    [{ cap: zero }, 'cap'],
    [{ toShoulder: mm(480) }, 'toShoulder'],
    [{ depth: zero }, 'depth'],
    [{ allowance: mm(-1) }, 'allowance'],
    [{ part: 0 }, 'part'],
    [{ part: 1 }, 'part'],
    [{ part: Number.NaN }, 'part'],
    [{ fullness: 0.9 }, 'fullness'],
  ])('refuses %j', (change, field) => {
    expect(sleeveHead({ ...cap, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
