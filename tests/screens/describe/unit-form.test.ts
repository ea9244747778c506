import { describe, expect, test } from 'vitest';
import { practice } from '../../../src/cloth/source.ts';
import { inches, mm } from '../../../src/length/length.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { countWords, partGroups } from '../../../src/screens/describe/garment-parts.ts';
import { likely } from '../../../src/screens/describe/place-box.tsx';
import { freshName, proposalText, ruleOf } from '../../../src/screens/describe/unit-form.ts';
import { withBlouse } from './pages.tsx';

const length = { kind: 'length', label: 'width', start: { in: '1', mm: '25' } } as const;
const said = (value: number | string, field: Parameters<typeof proposalText>[1], outfit = withBlouse) =>
  proposalText({ value, because: 'so', source: practice }, field, ruleOf(outfit));

function bodied() {
  let now = withBlouse;
  for (const id of ['plain-front', 'plain-back']) {
    const unit = unitCalled(id)!;
    const at = suggestPlaces(now.garments[0]!, unit);
    const made = putOn(now, 'blouse', id, { name: unit.name, entries: {}, at, cloths: {} });
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    now = made.value.outfit;
  }
  return now.garments[0]!;
}

describe('what is proposed', () => {
  test('stands in its field as it would be typed, in the rule of the outfit', () => {
    expect(said(inches(21, 2), length)).toBe('10 1/2');
    expect(said(mm(255), length, { ...withBlouse, units: 'mm' })).toBe('255');
    expect(said(2.5, { kind: 'number', label: 'fullness', start: '2' })).toBe('2.5');
    expect(said('fold', { kind: 'choice', label: 'middle', options: [], start: 'fold' })).toBe('fold');
  });

  test('as a name is one that no part has yet', () => {
    const garment = bodied();
    expect(freshName(garment, 'Cuff')).toBe('Cuff');
    expect(freshName(garment, 'Front')).toBe('Front 2');
  });

  test('as a place is called as the place usually is, at most three of them', () => {
    const garment = bodied();
    const asked = unitCalled('plain-sleeve')!.places.armhole!;
    const found = likely(garment, asked);
    expect(found.length).toBeGreaterThan(0);
    expect(found.length).toBeLessThanOrEqual(3);
    for (const { at } of found) for (const edge of at) expect(edge).toMatch(/\.(.*-)?armhole$/);
  });
});

test('every part of a garment stands in one group, and is counted there', () => {
  const garment = bodied();
  const groups = partGroups(garment);
  expect(groups.map(({ use }) => use?.id)).toEqual(['front', 'back', undefined]);
  const ids = groups.flatMap(({ parts }) => parts.map(({ id }) => id));
  expect([...ids].sort()).toEqual(
    [...garment.pieces, ...garment.works, ...garment.joins, ...garment.gates].map(({ id }) => id).sort(),
  );
  expect(countWords(groups[0]!.parts)).toMatch(/^1 piece/);
  expect(countWords(groups[2]!.parts)).toBe('');
});
