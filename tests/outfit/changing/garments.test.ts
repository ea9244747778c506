import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import {
  addGarment,
  duplicateGarment,
  removeGarment,
  renameGarment,
  setGarmentWearer,
} from '../../../src/outfit/changing/garments.ts';
import { makeAnew } from '../../../src/outfit/changing/units.ts';
import { keepWearer } from '../../../src/outfit/changing/whole.ts';
import { order } from '../../order/make.ts';
import { garmentOf, made, only, wrongWith } from './shirt.ts';

const shirt = () => garmentOf('plain-front', 'plain-back');
const bass = {
  id: 'bass',
  name: 'Bass',
  measures: { chest: mm(1180), neck: mm(430), 'back-waist': mm(470) },
};
const two = () => keepWearer(shirt(), bass);

describe('garments', () => {
  test('are added empty, each with an id of its own', () => {
    const one = addGarment(shirt(), { name: 'Shirt' });
    expect(one.garment).toBe('shirt-2');
    expect(one.outfit.garments[1]).toEqual({
      id: 'shirt-2',
      name: 'Shirt',
      units: [],
      pieces: [],
      works: [],
      joins: [],
      gates: [],
    });
    expect(wrongWith(one.outfit)).toEqual([]);
    expect(removeGarment(one.outfit, 'shirt-2')).toEqual(shirt());
  });

  test('are renamed', () => {
    expect(only(renameGarment(shirt(), 'shirt', 'Best shirt'))).toEqual({
      ...only(shirt()),
      name: 'Best shirt',
    });
    expect(renameGarment(shirt(), 'coat', 'Coat')).toEqual(shirt());
  });

  test('for another wearer are made anew with their measures; for nobody they stay as they are', () => {
    const theirs = made(setGarmentWearer(two(), 'shirt', 'bass'));
    expect(only(theirs).wearer).toBe('bass');
    expect(only(theirs).pieces).not.toEqual(only(two()).pieces);
    const nobodys = made(setGarmentWearer(theirs, 'shirt', undefined));
    expect(only(nobodys).pieces).toEqual(only(theirs).pieces);
    expect(only(made(makeAnew(nobodys, 'shirt'))).pieces).toEqual(only(theirs).pieces);
    expect(wrongWith(nobodys)).toEqual([]);
  });

  test('are made once more: the same for the same wearer, with the other’s measures for another', () => {
    const again = made(duplicateGarment(two(), 'shirt', { name: 'Second shirt' }));
    expect(again.garment).toBe('second-shirt');
    expect(again.outfit.garments[1]).toEqual({ ...only(two()), id: 'second-shirt', name: 'Second shirt' });
    const other = made(duplicateGarment(two(), 'shirt', { name: 'Second shirt', wearer: 'bass' }));
    expect(other.outfit.garments[0]).toEqual(only(two()));
    expect(other.outfit.garments[1]?.pieces).toEqual(
      only(made(setGarmentWearer(two(), 'shirt', 'bass'))).pieces,
    );
    expect(wrongWith(other.outfit)).toEqual([]);
    const steps = [...order(other.outfit).steps.keys()];
    expect(steps.some((id) => id.startsWith('second-shirt/'))).toBe(true);
  });
});
