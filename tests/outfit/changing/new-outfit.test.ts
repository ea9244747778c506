import { expect, test } from 'vitest';
import { freshId, idsIn, newOutfit } from '../../../src/outfit/changing/new-outfit.ts';
import { garmentOf, only, wrongWith } from './shirt.ts';

test('a new outfit can be written and read at once', () => {
  const told = { id: 'o', name: 'The Ferry', date: '2030-01-01', event: 'First night', units: 'in' as const };
  expect(wrongWith(newOutfit(told))).toEqual([]);
  expect(newOutfit(told)).toMatchObject({
    name: 'The Ferry',
    event: { name: 'First night', date: '2030-01-01' },
  });
});

test.each([
  ['Side front', 'side-front'],
  ['  Écharpe & bow ', 'echarpe-bow'],
  ['Maker’s mark', 'makers-mark'],
  ['2nd cuff', '2nd-cuff'],
  ['–', 'part'],
  ['袖', 'part'],
  ['x'.repeat(200), 'x'.repeat(48)],
])('%s is called %s in a file', (name, id) => {
  expect(freshId([], name)).toBe(id);
});

test('an id that is taken gets a number', () => {
  expect(freshId(['cuff'], 'Cuff')).toBe('cuff-2');
  expect(freshId(['cuff', 'cuff-2'], 'Cuff')).toBe('cuff-3');
});

test('the ids of a garment are those of its parts, of its units and of what these brought once', () => {
  const garment = only(garmentOf('plain-front', 'plain-back'));
  const ids = idsIn({ ...garment, works: [], units: garment.units });
  for (const id of ['front', 'back', 'back-side-seam', 'back-try', 'front-neck-stay'])
    expect(ids).toContain(id);
  expect(ids).not.toContain('hem');
});
