import { describe, expect, test } from 'vitest';
import { missingFor, suggestUnits } from '../../../src/outfit/changing/suggest-units.ts';
import type { Garment } from '../../../src/outfit/outfit.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { garmentOf } from '../units/worn.ts';

const wearing = (...units: readonly string[]): Garment =>
  garmentOf(units.map((unit) => ({ unit, name: unit }))).garments[0]!;
const next = (...units: readonly string[]): readonly string[] =>
  suggestUnits(wearing(...units)).map(({ id }) => id);

describe('what is likely next', () => {
  test('to begin with, what hangs on nothing', () => {
    expect(next()).toEqual(expect.arrayContaining(['plain-front', 'princess-front', 'gathered-skirt']));
    for (const id of next())
      expect(Object.values(unitCalled(id)!.places).every(({ optional }) => optional)).toBe(true);
  });

  test('the back after the front, and nothing twice', () => {
    expect(next('plain-front')[0]).toBe('plain-back');
    expect(next('plain-front', 'plain-back')).not.toContain('plain-back');
  });

  test('collars, sleeves and a hem on a body; the cuff once there is a sleeve for it', () => {
    const body = next('plain-front', 'plain-back');
    expect(body).toEqual(expect.arrayContaining(['flat-collar', 'plain-sleeve', 'puffed-sleeve', 'hem']));
    expect(body).not.toContain('buttoned-cuff');
    const sleeved = next('plain-front', 'plain-back', 'plain-sleeve');
    expect(sleeved).toContain('buttoned-cuff');
    // The armhole is taken.
    expect(sleeved).not.toContain('puffed-sleeve');
  });

  test('only what fits, and no more than three of a group', () => {
    const garment = wearing('plain-front', 'plain-back');
    const found = suggestUnits(garment);
    for (const unit of found) {
      expect(missingFor(garment, unit), unit.id).toEqual([]);
      expect(found.filter(({ group }) => group === unit.group).length).toBeLessThanOrEqual(3);
    }
  });
});

test('what is missing is named as the unit asks for it', () => {
  expect(missingFor(wearing('plain-front'), unitCalled('buttoned-cuff')!)).toEqual([
    'the lower edge of the sleeve',
  ]);
});
