import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/length.ts';
import { neckclothBow } from '../../../src/outfit/units/neckcloth-bow.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, emptyOutfit, put, refusedAt, soundOrder } from './made-of.ts';
import { RULES } from './plain-body.ts';

const long = (made: ReturnType<typeof built>) => edgeLengths(made.pieces[0]!.outline).get('upper')! / 1e6;

describe('a neckcloth', () => {
  test('is once round, each loop there and back, two tails and the knot', () => {
    const made = built(emptyOutfit('mm'), neckclothBow);
    expect(long(made)).toBe(400 + 2 * 180 + 2 * 180 + 2 * 75);
    expect(made.pieces[0]!.outline.edges[1]!.segments[0]!.to.y).toBe(mm(150));
    const given = built(emptyOutfit('mm'), neckclothBow, { entries: { knot: '100' } });
    expect(long(given)).toBe(long(made) - 50);
  });

  test('takes the neck from the wearer, an inch looser', () => {
    const made = built(emptyOutfit('in', { neck: 15 }), neckclothBow);
    expect(made.proposed.round?.value).toBe(inches(16));
  });

  test.each(RULES)('is sewn, turned and closed by hand, in one or in two halves, in %s', (units) => {
    const whole = put(emptyOutfit(units), neckclothBow);
    expect(
      forced(soundOrder(whole), 'neckcloth-bow-seam/press', 'neckcloth-bow-closing/own-1', 'garment'),
    ).toBe(true);
    const halves = put(emptyOutfit(units), neckclothBow, {
      entries: { tail: units === 'in' ? '20' : '500' },
    });
    expect(halves.garments[0]!.pieces[0]!.cut).toBe('pair');
    expect(
      forced(soundOrder(halves), 'neckcloth-bow-middle/press', 'neckcloth-bow-seam/pin', 'garment'),
    ).toBe(true);
  });

  test('has its marks on the fold, within its length', () => {
    const { marks, outline } = built(emptyOutfit('mm'), neckclothBow).pieces[0]!;
    const end = edgeLengths(outline).get('upper')!;
    expect(marks).toHaveLength(6);
    for (const { at } of marks) {
      expect(at.y).toBe(mm(75));
      expect(at.x).toBeGreaterThanOrEqual(0);
      expect(at.x).toBeLessThanOrEqual(end);
    }
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(emptyOutfit('mm'), neckclothBow, { entries });
    for (const field of ['round', 'bow', 'tail', 'width']) expect(refused({ [field]: '0' })).toEqual([field]);
    expect(refused({ knot: '-1' })).toEqual(['knot']);
    expect(refused({ allowance: '-1' })).toEqual(['allowance']);
    expect(refused({ tail: '3000' })).toEqual(['tail']);
  });
});
