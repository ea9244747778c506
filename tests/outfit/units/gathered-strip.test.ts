import { expect, test } from 'vitest';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { garmentOf, only, put } from '../changing/shirt.ts';

/** A frill gathered to the lower edge of a bare sleeve, with the piece that it is cut as. */
function frill(unit: string, entries: Readonly<Record<string, string>> = {}) {
  const sleeve = put(garmentOf('plain-front', 'plain-back'), 'plain-sleeve', {
    name: 'Sleeve',
    entries: { ends: 'cuff' },
  });
  const outfit = put(sleeve, unit, { name: 'Frill', at: { edge: ['sleeve.lower'] }, entries });
  const { pieces, works, joins } = only(outfit);
  const piece = pieces.find(({ id }) => id === 'frill')!;
  const sewn = pieces.find(({ id }) => id === 'sleeve')!;
  return {
    piece,
    gathers: works.find((work) => work.kind === 'gather' && work.on === 'frill'),
    lengths: edgeLengths(piece.outline),
    place: edgeLengths(sewn.outline).get('lower')!,
    joins: joins.map(({ id }) => id).filter((id) => id.startsWith('frill')),
  };
}

test('a strip is its fullness times as long as its place, and lies as its grain is told', () => {
  const across = frill('straight-frill', { grain: 'across', fullness: '2' });
  expect(Math.abs(across.lengths.get('seam')! - 2 * across.place)).toBeLessThan(1_000_000);
  expect(across.gathers).toMatchObject({ edge: 'seam', fullness: 2, divide: 8 });
  expect(across.piece.grain).toBeUndefined();
  expect(frill('straight-frill', { grain: 'along' }).piece.grain).toBe(90);
  // The sleeve's own seam closes its lower edge, so the strip is closed too unless it is told to end.
  expect(across.joins).toEqual(['frill-ends', 'frill-seam']);
  expect(frill('straight-frill', { goes: 'open' }).joins).toEqual(['frill-seam']);
});

test('a folded one is cut twice as deep, with an inner edge beside the seam', () => {
  const folded = frill('bias-frill', { depth: '40 mm' });
  expect(folded.lengths.get('front-end')).toBe(80_000_000);
  expect(folded.lengths.has('inner')).toBe(true);
  expect(folded.piece.grain).toBe(45);
  const single = frill('bias-frill', { depth: '40 mm', layers: 'single' });
  expect(single.lengths.get('front-end')).toBe(40_000_000);
});
