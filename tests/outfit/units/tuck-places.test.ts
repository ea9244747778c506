import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { pieceOf } from '../../../src/outfit/units/parts.ts';
import { rectangle } from '../../../src/outfit/units/rectangle.ts';
import { edgeFrom, fits, openedFamily, reachOf } from '../../../src/outfit/units/tuck-places.ts';
import { emptyOutfit, garmentOf } from './made-of.ts';

const panel = pieceOf({
  id: 'panel',
  name: 'Panel',
  cloth: 'lawn',
  cut: 'one',
  allowance: mm(10),
  outline: rectangle(mm(200), mm(300), ['top', 'right', 'bottom', 'left']),
});
const family = (count: number, depth = 5) => ({
  depths: Array.from({ length: count }, () => mm(depth)),
  spacing: mm(20),
  first: mm(10),
  angle: 0,
  pressed: 'away' as const,
});
const garment = garmentOf(emptyOutfit());

test('a piece reaches as far as it is wide, or high, or across its corner', () => {
  expect(reachOf(panel, 0, 'left')).toBe(mm(200));
  expect(reachOf(panel, 90, 'top')).toBe(mm(300));
  expect(reachOf(panel, 45, 'top') / 1e6).toBeCloseTo(500 / Math.SQRT2, 3);
});

test('tucks count from the datum outwards', () => {
  const { tucks, across } = openedFamily(panel, family(3), 'left');
  expect(tucks.map(({ at }) => at)).toEqual([10, 30, 50].map(mm));
  expect(across).toBe(0);
  expect(Math.abs(openedFamily(panel, family(3), 'right').across)).toBe(180);
});

test('as many fit as lie on the piece; the piece is tucked once', () => {
  expect(fits(garment, panel, [[family(10), 'count']], 'left')).toEqual({ ok: true, value: [] });
  expect(fits(garment, panel, [[family(11), 'many']], 'left')).toMatchObject({ error: { field: 'many' } });
  const work = {
    kind: 'tucks',
    id: 't',
    name: 'T',
    on: 'panel',
    from: 'left',
    marker: 'chalk',
    family: family(2),
  } as const;
  const had = { ...garment, works: [work] };
  expect(fits(had, panel, [[family(2), 'count']], 'left')).toMatchObject({ error: { field: 'at.on' } });
});

test('the edge is the one chosen on the piece, else its first', () => {
  expect(edgeFrom(panel, undefined)).toEqual({ ok: true, value: 'top' });
  const chosen = (piece: string) => ({
    kind: 'edges' as const,
    chain: [{ piece, edge: 'left', other: false }],
    length: mm(300),
    pieces: [panel],
  });
  expect(edgeFrom(panel, chosen('panel'))).toEqual({ ok: true, value: 'left' });
  expect(edgeFrom(panel, chosen('sleeve'))).toMatchObject({ error: { field: 'at.from' } });
});
