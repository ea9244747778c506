import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { holesOf } from '../../../src/outfit/piece-holes.ts';
import { buttonBand } from '../../../src/outfit/units/button-band.ts';
import { flatCollar } from '../../../src/outfit/units/flat-collar.ts';
import { edgeUses } from '../../../src/paper/edge-allowances.ts';
import { forced } from '../../order/make.ts';
import { built, garmentOf, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

const at = { opening: ['front.opening'] };

describe('a button band', () => {
  test.each(RULES)('is folded, closed at its top and buttoned, in %s', (units) => {
    const outfit = put(plainBody(units), buttonBand, { at });
    const garment = garmentOf(outfit);
    expect(garment.works.map(({ id }) => id)).toEqual([
      'button-band',
      'button-band-top',
      'button-band-buttons',
    ]);
    const running = soundOrder(outfit);
    expect(forced(running, 'button-band/press', 'button-band-top/own-1', 'garment')).toBe(true);
    expect(forced(running, 'button-band-top/own-3', 'shoulder/pin', 'garment')).toBe(true);
    expect(forced(running, 'button-band/press', 'button-band-buttons/mark', 'garment')).toBe(true);
  });

  test('leaves cloth for both turns, and is as wide as its lap asks', () => {
    const outfit = put(plainBody(), buttonBand, { at, entries: { firstTurn: '10' } });
    const [front] = garmentOf(outfit).pieces;
    // The lap of the invented shirt is 13 mm.
    const use = edgeUses(garmentOf(outfit), front!).find(({ edge }) => edge === 'opening');
    expect(use).toMatchObject({ how: 'turned', allowance: mm(36) });
  });

  test('has its buttons spaced from the one that is held at the chest', () => {
    const outfit = put(plainBody(), buttonBand, { at });
    const garment = garmentOf(outfit);
    const holes = garment.works.find((work) => work.kind === 'buttonholes')!;
    const placed = holesOf(garment, holes);
    expect(placed.ok && placed.value.made.spacing.positions).toContain(mm(173));
    expect(garment.works.find((work) => work.kind === 'buttonholes')).toMatchObject({
      count: 7,
      first: mm(15),
    });
    const free = built(plainBody(), buttonBand, { at, entries: { held: '' } });
    expect(free.works.find((work) => work.kind === 'buttonholes')).not.toHaveProperty('held');
  });

  test('is closed before a collar is sewn over it', () => {
    const outfit = put(put(plainBody(), buttonBand, { at }), flatCollar, { at: { neck: NECK } });
    expect(forced(soundOrder(outfit), 'button-band-top/own-3', 'flat-collar-neck/baste', 'garment')).toBe(
      true,
    );
    const open = built(plainBody(), buttonBand, { at, entries: { end: 'open' } });
    expect(open.works.map(({ id }) => id)).not.toContain('button-band-top');
  });

  test('says which figure cannot be sewn', () => {
    const refused = (entries: Readonly<Record<string, string>>, opening = ['front.opening']) =>
      refusedAt(plainBody(), buttonBand, { at: { opening }, entries });
    expect(refused({ firstTurn: '40' })).toEqual(['firstTurn']);
    expect(refused({ width: '0' })).toEqual(['width']);
    expect(refused({ width: '12' })).toEqual(['width']);
    expect(refused({ buttons: '0' })).toEqual(['buttons']);
    expect(refused({ buttons: '60' })).toEqual(['buttons']);
    expect(refused({ last: '700' })).toEqual(['last']);
    expect(refused({ first: '-5' })).toEqual(['first']);
    expect(refused({ diameter: '0' })).toEqual(['diameter']);
    expect(refused({ held: '5' })).toEqual(['held']);
    expect(refused({ direction: 'across', diameter: '30' })).toEqual(['width']);
    expect(refused({}, ['front.opening', 'front.hem'])).toEqual(['at.opening']);
    expect(refused({}, ['back.hem'])).toEqual(['at.opening']);
    expect(refusedAt(put(plainBody(), buttonBand, { at }), buttonBand, { id: 'other', at })).toEqual([
      'at.opening',
    ]);
  });
});
