import { describe, expect, test } from 'vitest';
import { mm, toMm } from '../../../src/length/length.ts';
import { changeUnit, makeAnew, putOn, takeOff } from '../../../src/outfit/changing/units.ts';
import { lengthsFit } from '../../../src/outfit/lengths-fit.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { UNITS } from '../../../src/outfit/units/all.ts';
import { chainLength } from '../../../src/outfit/units/place.ts';
import { bare, garmentOf, idsOf, made, only, put, refused, wrongWith } from './shirt.ts';

const SHIRT = ['plain-front', 'plain-back', 'stand-and-collar', 'plain-sleeve', 'button-band', 'hem'];
const shirt = (): Outfit => garmentOf(...SHIRT);
/** The bare garment with a cloth that stretches to choose from as well. */
const withStretch = (): Outfit => {
  const outfit = bare();
  const [cotton] = outfit.cloths;
  const jersey = { ...cotton!, id: 'jersey', name: 'Jersey', stretch: { across: 60, along: 40 } };
  return { ...outfit, cloths: [...outfit.cloths, jersey] };
};
const useOf = (outfit: Outfit, id: string) => only(outfit).units.find((use) => use.id === id)!;
const pieceOf = (outfit: Outfit, id: string) => only(outfit).pieces.find((piece) => piece.id === id)!;
const neckLength = (outfit: Outfit) =>
  toMm(
    chainLength(only(outfit), only(outfit).joins.find(({ id }) => id === 'shirt-collar-stand-neck')!.this),
  );

describe('putting a unit on', () => {
  test('adds its parts after those that are there, and notes what they were made from', () => {
    const before = garmentOf('plain-front', 'plain-back');
    const [garment] = before.garments;
    const neck = ['front.neck', 'back.neck', 'other:back.neck', 'other:front.neck'];
    const told = { name: 'Collar', entries: { width: '50 mm' }, at: { neck }, cloths: {} };
    const { outfit, unit } = made(putOn(before, garment!.id, 'stand-and-collar', told));
    expect(unit).toBe('collar');
    expect(wrongWith(outfit)).toEqual([]);
    const use = useOf(outfit, 'collar');
    expect(use).toMatchObject({
      name: 'Collar',
      unit: 'stand-and-collar',
      entries: { width: '50 mm' },
      at: { neck },
      own: [],
    });
    expect(
      idsOf(outfit)
        .filter((id) => use.brought.includes(id))
        .toSorted(),
    ).toEqual(use.brought.toSorted());
    expect(only(outfit).pieces.slice(0, 2)).toEqual(only(before).pieces);
    expect(idsOf(outfit).filter((id) => !use.brought.includes(id))).toEqual(idsOf(before));
  });

  test('the same unit twice has other ids the second time', () => {
    const outfit = put(put(bare(), 'gathered-skirt'), 'gathered-skirt', { at: {} });
    expect(only(outfit).units.map(({ id }) => id)).toEqual(['gathered-skirt', 'gathered-skirt-2']);
    expect(wrongWith(outfit)).toEqual([]);
  });

  test('a name whose parts would collide with others gives way', () => {
    // `Skirt` would bring a piece `skirt-front`, which the other unit's is called already.
    const front = put(bare(), 'plain-front', { name: 'Skirt front' });
    expect(idsOf(front)).toContain('skirt-front');
    const outfit = put(front, 'gathered-skirt', { name: 'Skirt', at: {} });
    expect(only(outfit).units.map(({ id }) => id)).toEqual(['skirt-front', 'skirt-2']);
    expect(wrongWith(outfit)).toEqual([]);
    expect(new Set(idsOf(outfit)).size).toBe(idsOf(outfit).length);
  });

  test('is refused at the field or place that is wrong, and by the name of what is unknown', () => {
    const outfit = garmentOf('plain-front');
    const told = { name: 'Collar', entries: { width: 'wide' }, at: {}, cloths: {} };
    const [fault] = refused(putOn(outfit, 'shirt', 'stand-and-collar', told));
    expect(fault).toMatchObject({ garment: 'shirt', unit: '', name: 'Collar' });
    expect(fault?.faults.map(({ field }) => field).toSorted()).toEqual(['at.neck', 'width']);
    const place = { ...told, entries: {}, at: { neck: ['front.nekc'] } };
    expect(refused(putOn(outfit, 'shirt', 'stand-and-collar', place))[0]?.faults[0]?.say).toContain(
      'front.neck',
    );
    expect(refused(putOn(outfit, 'shirt', 'no-such-unit', told))[0]?.faults[0]?.say).toContain(
      'does not know',
    );
    expect(refused(putOn(outfit, 'coat', 'plain-front', told))[0]?.faults[0]?.say).toContain(
      'not in the outfit',
    );
    expect(
      refused(putOn(outfit, 'shirt', 'plain-front', { ...told, id: 'front' }))[0]?.faults[0]?.say,
    ).toContain('called “front” already');
  });
});

describe('making anew', () => {
  const on = (...units: readonly string[]): Outfit =>
    units.reduce((sofar, one) => put(sofar, one), withStretch());
  const BASES: readonly (() => Outfit)[] = [
    withStretch,
    () => on('plain-front', 'plain-back'),
    () => on('plain-front'),
    () => on('princess-front'),
    () => on('panelled-bodice'),
    () => on('lantern-sleeve'),
    () => put(withStretch(), 'puffed-sleeve', { at: {}, entries: { held: 'head' } }),
    () => on('gathered-skirt'),
  ];

  test.each(UNITS.map(({ id }) => id))('changes nothing where nothing changed: %s', (unit) => {
    const tried = BASES.flatMap((base) => {
      try {
        return [put(base(), unit)];
      } catch {
        // This base has not what the unit is put on.
        return [];
      }
    });
    expect(tried.length).toBeGreaterThan(0);
    for (const outfit of tried) {
      expect(wrongWith(outfit)).toEqual([]);
      const misfits = lengthsFit(outfit, only(outfit), { unit: 'mm', step: 1 }).filter(
        ({ within }) => !within,
      );
      expect(misfits).toEqual([]);
      expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
    }
  });

  test('a figure of the body runs through to the units put on it, and every part keeps its place', () => {
    const before = shirt();
    const after = made(changeUnit(before, 'shirt', 'front', { entries: { neckDeep: '90 mm' } })).outfit;
    expect(wrongWith(after)).toEqual([]);
    expect(idsOf(after)).toEqual(idsOf(before));
    expect(neckLength(after)).toBeGreaterThan(neckLength(before) + 5);
    expect(pieceOf(after, 'shirt-collar-upper')).not.toEqual(pieceOf(before, 'shirt-collar-upper'));
    expect(useOf(after, 'front').entries).toEqual({ neckDeep: '90 mm' });
  });

  test('an earlier unit is left alone when a later one changes', () => {
    const before = shirt();
    const after = made(changeUnit(before, 'shirt', 'plain-sleeve', { entries: { length: '500 mm' } })).outfit;
    expect(pieceOf(after, 'front')).toBe(pieceOf(before, 'front'));
    expect(pieceOf(after, 'plain-sleeve')).not.toEqual(pieceOf(before, 'plain-sleeve'));
  });

  test('units are made in an order in which each finds what it is put on, however they are listed', () => {
    const outfit = shirt();
    const garment = only(outfit);
    const turned = { ...garment, units: garment.units.toReversed() };
    const anew = made(makeAnew({ ...outfit, garments: [turned] }, 'shirt'));
    expect(wrongWith(anew)).toEqual([]);
    expect(only(anew).units.map(({ id }) => id)).toEqual(turned.units.map(({ id }) => id));
  });

  test('a unit that can no longer be made is named, with the field that is wrong', () => {
    const faults = refused(changeUnit(shirt(), 'shirt', 'front', { entries: { shoulder: '0 mm' } }));
    expect(faults[0]).toMatchObject({ garment: 'shirt', unit: 'front' });
    expect(faults[0]?.faults[0]?.field).toBe('shoulder');
    const gone = refused(
      changeUnit(shirt(), 'shirt', 'back', { at: { shoulder: ['front.shoulder'], side: [] } }),
    );
    expect(gone[0]?.faults[0]?.field).toBe('at.side');
  });

  test('a part that the maker joined to a unit and that no longer fits is named in words', () => {
    const outfit = shirt();
    const garment = only(outfit);
    const own = {
      ...garment.joins[0]!,
      id: 'my-join',
      name: 'My join',
      this: [{ piece: 'plain-sleeve', edge: 'lower', other: false }],
      to: [{ piece: 'plain-sleeve', edge: 'no-such-edge', other: false }],
    };
    const faults = refused(
      makeAnew({ ...outfit, garments: [{ ...garment, joins: [...garment.joins, own] }] }, 'shirt'),
    );
    expect(faults[0]).toMatchObject({ unit: '', name: 'My join' });
    expect(faults[0]?.faults[0]?.say).toMatch(
      /^Join “My join”: edge “plain-sleeve.no-such-edge” does not exist/,
    );
  });

  test('a unit that this version does not know keeps its parts and cannot be changed', () => {
    const outfit = shirt();
    const garment = only(outfit);
    const units = garment.units.map((use) =>
      use.id === 'plain-sleeve' ? { ...use, unit: 'from-the-future' } : use,
    );
    const future = { ...outfit, garments: [{ ...garment, units }] };
    expect(made(makeAnew(future, 'shirt'))).toEqual(future);
    expect(refused(changeUnit(future, 'shirt', 'plain-sleeve', {}))[0]?.faults[0]?.say).toContain(
      'does not know',
    );
    const wider = made(changeUnit(future, 'shirt', 'front', { entries: { neckDeep: '90 mm' } })).outfit;
    expect(pieceOf(wider, 'plain-sleeve')).toEqual(pieceOf(outfit, 'plain-sleeve'));
  });

  test('trims caught in a seam of another unit stay there when that seam is made anew', () => {
    const before = garmentOf('panelled-bodice', 'inset-frill');
    const seam = (outfit: Outfit) =>
      only(outfit).joins.find(({ id }) => id === 'panelled-bodice-panel-seam')!;
    expect(seam(before).catches.map(({ trim }) => trim.piece)).toEqual(['inset-frill']);
    const deeper = made(
      changeUnit(before, 'shirt', 'panelled-bodice', { entries: { allowance: '20 mm' } }),
    ).outfit;
    expect(seam(deeper).catches.map(({ trim }) => trim)).toEqual(
      seam(before).catches.map(({ trim }) => trim),
    );
    expect(seam(deeper).depth).toBe(mm(20));
    const basted = made(changeUnit(before, 'shirt', 'inset-frill', { entries: { baste: '8 mm' } })).outfit;
    expect(seam(basted).catches.map(({ depth }) => depth)).toEqual([mm(8)]);
  });
});

describe('taking a unit off', () => {
  test('takes its parts, and leaves a garment that can be read', () => {
    const before = garmentOf(...SHIRT.slice(0, 3));
    const { outfit, also } = takeOff(before, 'shirt', 'shirt-collar');
    expect(outfit).toEqual(garmentOf(...SHIRT.slice(0, 2)));
    expect(also).toEqual([]);
  });

  test('takes what was put on it, and names it', () => {
    const { outfit, also } = takeOff(shirt(), 'shirt', 'back');
    expect(wrongWith(outfit)).toEqual([]);
    expect(also.map(({ kind, id }) => `${kind} ${id}`).toSorted()).toEqual([
      'unit hem',
      'unit plain-sleeve',
      'unit shirt-collar',
    ]);
    expect(only(outfit).units.map(({ id }) => id)).toEqual(['front', 'button-band']);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
  });

  test('takes its trims out of the seams of others', () => {
    const before = garmentOf('panelled-bodice', 'inset-frill');
    const { outfit, also } = takeOff(before, 'shirt', 'inset-frill');
    expect(also).toEqual([]);
    expect(outfit).toEqual(garmentOf('panelled-bodice'));
  });

  test.each(SHIRT.slice(0, 4).map((_, i) => i))('what is left can be read and made anew: unit %i', (i) => {
    const before = garmentOf(...SHIRT.slice(0, 4));
    const { outfit } = takeOff(before, 'shirt', only(before).units[i]!.id);
    expect(wrongWith(outfit)).toEqual([]);
    expect(made(makeAnew(outfit, 'shirt'))).toEqual(outfit);
  });
});
