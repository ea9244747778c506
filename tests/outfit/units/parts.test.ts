import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { gateOf, joinOf, pieceOf, stepOf } from '../../../src/outfit/units/parts.ts';
import { strip } from '../../../src/outfit/units/rectangle.ts';

test('what is usual is filled in, and what is said stands', () => {
  const join = { id: 'side', name: 'Side seam', this: [], to: [], depth: mm(15) };
  expect(joinOf(join)).toMatchObject({ seam: 'plain', worked: 'flat', finish: 'none', tacked: false });
  expect(joinOf({ ...join, seam: 'turned', tacked: true })).toMatchObject({ seam: 'turned', tacked: true });
  const piece = pieceOf({
    id: 'tie',
    name: 'Tie',
    cloth: 'lawn',
    cut: 'one',
    allowance: mm(10),
    outline: strip(mm(300), mm(40)),
  });
  expect(piece).toMatchObject({ cutAfterWork: false, marks: [] });
  expect(piece).not.toHaveProperty('unit');
  expect(gateOf({ id: 'try', name: 'First try-on', after: ['side'], checks: [] }).tack).toEqual([]);
  expect(stepOf('Press it', 'iron', 3, { final: true })).toEqual({
    say: 'Press it',
    station: 'iron',
    minutes: 3,
    rest: 0,
    final: true,
    wets: false,
  });
});
