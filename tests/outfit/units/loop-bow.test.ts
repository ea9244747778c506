import { describe, expect, test } from 'vitest';
import { flatCollar } from '../../../src/outfit/units/flat-collar.ts';
import { loopBow } from '../../../src/outfit/units/loop-bow.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, emptyOutfit, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

describe('a loop bow', () => {
  test('has strips twice as long and twice as high as they show', () => {
    const { pieces } = built(emptyOutfit('mm'), loopBow, { entries: { tail: '150' } });
    const sizes = pieces.map(({ outline }) => {
      const long = edgeLengths(outline);
      return [long.get('upper')! / 1e6, long.get('left-end')! / 1e6];
    });
    expect(pieces.map(({ id, cut }) => [id, cut])).toEqual([
      ['loop-bow', 'one'],
      ['loop-bow-knot', 'one'],
      ['loop-bow-tail', 'pair'],
    ]);
    expect(sizes).toEqual([
      [300, 150],
      [75, 50],
      [150, 100],
    ]);
    expect(pieces[0]!.marks.map(({ at }) => at.x / 1e6)).toEqual([75, 150, 225]);
  });

  test.each(RULES)('is made up when its strips are turned, and sewn on at last, in %s', (units) => {
    const collared = put(plainBody(units), flatCollar, { at: { neck: NECK } });
    const outfit = put(collared, loopBow, { at: { on: ['flat-collar-upper'] } });
    const running = soundOrder(outfit);
    for (const before of ['loop-bow-seam/press', 'loop-bow-knot-seam/press', 'flat-collar-layers/press'])
      expect([before, forced(running, before, 'loop-bow-making/own-1', 'garment')]).toEqual([before, true]);
    expect(running.steps.get('garment/loop-bow-making/own-4')?.say).toContain('flat collar upper layer');
  });

  test('may be worn by itself', () => {
    const running = soundOrder(put(emptyOutfit(), loopBow));
    expect(running.steps.has('garment/loop-bow-making/own-3')).toBe(true);
    expect(running.steps.has('garment/loop-bow-making/own-4')).toBe(false);
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(emptyOutfit('mm'), loopBow, { entries });
    expect(refused({ width: '0' })).toEqual(['width']);
    expect(refused({ height: '0' })).toEqual(['height']);
    expect(refused({ knot: '150' })).toEqual(['knot']);
    expect(refused({ middle: '151' })).toEqual(['middle']);
    expect(refused({ tail: '0' })).toEqual(['tail']);
    expect(refused({ allowance: '-1' })).toEqual(['allowance']);
  });
});
