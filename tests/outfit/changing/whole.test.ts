import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { changeUnit, makeAnew } from '../../../src/outfit/changing/units.ts';
import {
  keepWearer,
  putCloth,
  putMarker,
  putWearer,
  removeCloth,
  removeMarker,
  removeWearer,
  setAbout,
} from '../../../src/outfit/changing/whole.ts';
import type { Outfit, Wearer } from '../../../src/outfit/outfit.ts';
import { bare, garmentOf, made, only, put, refused, wrongWith } from './shirt.ts';

const shirt = (): Outfit => garmentOf('plain-front', 'plain-back');
const chorister = (): Wearer => shirt().wearers[0]!;
const wrong = (result: ReturnType<typeof removeCloth>): string =>
  result.ok ? '' : result.error.map((one) => one.wrong).join();

describe('the outfit as a whole', () => {
  test('is renamed, and the garments stay', () => {
    const event = { name: 'Last night', date: '2031-02-03' };
    const now = setAbout(shirt(), { name: 'The Ferry', about: 'x', event });
    expect(now).toEqual({ ...shirt(), name: 'The Ferry', about: 'x', event });
  });

  test('in inches, its figures stay what they were, also when it is made anew', () => {
    const before = put(bare('mm'), 'plain-front', {
      entries: { neckDeep: '90', side: '400 mm', armhole: '9 in' },
    });
    const now = setAbout(before, { units: 'in' });
    expect(only(now).pieces).toEqual(only(before).pieces);
    expect(made(makeAnew(now, 'shirt'))).toEqual(now);
    const [use] = only(now).units;
    expect(use?.entries).toMatchObject({ neckDeep: '90 mm', side: '400 mm', armhole: '9 in' });
    // 13 mm stands there first in one rule, 1/2 in the other.
    expect(use?.entries.lap).toBe('13 mm');
    expect(setAbout(now, { units: 'mm' }).garments).toEqual(now.garments);
  });
});

describe('cloths and markers', () => {
  const [cotton] = shirt().cloths;
  const velvet = { ...cotton!, id: 'velvet', name: 'Velvet' };

  test('a cloth is added and changed', () => {
    const more = made(putCloth(shirt(), velvet));
    expect(more.cloths.map(({ id }) => id)).toEqual(['cotton', 'velvet']);
    const wider = made(putCloth(more, { ...cotton!, width: mm(1500) }));
    expect(wider.cloths[0]?.width).toBe(mm(1500));
    expect(wrongWith(wider)).toEqual([]);
  });

  test('a cloth that no longer stretches is refused where a unit needs it to, naming the unit', () => {
    const jersey = { ...cotton!, id: 'jersey', name: 'Jersey', stretch: { across: 60, along: 40 } };
    const legs = put(made(putCloth(bare(), jersey)), 'stretch-leg');
    const faults = refused(putCloth(legs, { ...jersey, stretch: { across: 0, along: 0 } }));
    expect(faults[0]).toMatchObject({ garment: 'shirt', unit: only(legs).units[0]?.id });
    expect(faults[0]?.faults[0]?.field).toMatch(/^cloth\./);
  });

  test('a cloth is taken out only while nothing is cut from it and another is left', () => {
    const more = made(putCloth(shirt(), velvet));
    expect(made(removeCloth(more, 'velvet'))).toEqual(shirt());
    expect(wrong(removeCloth(more, 'cotton'))).toBe('Light cotton is used: Front of Shirt, Back of Shirt');
    expect(wrong(removeCloth(shirt(), 'cotton'))).toBe('Light cotton is the only cloth');
    expect(made(removeCloth(shirt(), 'no-such-cloth'))).toEqual(shirt());
  });

  test('a marker is added, changed, and taken out only while nothing is marked with it', () => {
    const outfit = put(shirt(), 'straight-frill');
    const pen = { id: 'pen', name: 'Pen', kind: 'air-fading' as const };
    const more = putMarker(outfit, pen);
    expect(putMarker(more, { ...pen, name: 'Air pen' }).markers.at(-1)?.name).toBe('Air pen');
    expect(made(removeMarker(more, 'pen'))).toEqual(outfit);
    expect(wrong(removeMarker(more, 'chalk'))).toMatch(/^Tailor’s chalk marks .* of Shirt/);
    const one = { ...shirt(), markers: [pen] };
    expect(wrong(removeMarker(one, 'pen'))).toBe('Pen is the only marker');
  });
});

describe('wearers', () => {
  test('a measure that changes makes their garments anew, and leaves those of others', () => {
    const outfit = shirt();
    const other = { ...only(outfit), id: 'other', name: 'Other' };
    const { wearer: _, ...nobodys } = other;
    const both = { ...outfit, garments: [...outfit.garments, nobodys] };
    const bigger = { ...chorister(), measures: { ...chorister().measures, chest: mm(1100) } };
    const now = made(putWearer(both, bigger));
    expect(only(now).pieces).not.toEqual(only(both).pieces);
    expect(now.garments[1]).toEqual(nobodys);
    expect(wrongWith(now)).toEqual([]);
    const kept = keepWearer(both, bigger);
    expect(kept.garments).toEqual(both.garments);
    expect(made(makeAnew(kept, 'shirt'))).toEqual(now);
  });

  test('a new name alone makes nothing anew', () => {
    const now = made(putWearer(shirt(), { ...chorister(), name: 'Tenor' }));
    expect(now.garments).toEqual(shirt().garments);
    expect(now.wearers[0]?.name).toBe('Tenor');
  });

  test('one who is taken out leaves the garments with the figures they had', () => {
    const before = shirt();
    const now = removeWearer(before, 'chorister');
    expect(now.wearers).toEqual([]);
    expect(only(now).wearer).toBeUndefined();
    expect(only(now).pieces).toEqual(only(before).pieces);
    expect(wrongWith(now)).toEqual([]);
    expect(only(made(makeAnew(now, 'shirt'))).pieces).toEqual(only(before).pieces);
    const changed = made(changeUnit(now, 'shirt', 'back', { name: 'Behind' })).outfit;
    expect(only(changed).pieces.map(({ outline }) => outline)).toEqual(
      only(before).pieces.map(({ outline }) => outline),
    );
  });
});
