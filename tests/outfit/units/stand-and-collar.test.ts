import { describe, expect, test } from 'vitest';
import { standAndCollar } from '../../../src/outfit/units/stand-and-collar.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

const at = { neck: NECK };
const use = { id: 'collar', name: 'Collar', at };

describe('a shirt collar in two parts', () => {
  test.each(RULES)('fits the neck, and its fall fits the stand, in %s', (units) => {
    const outfit = put(plainBody(units), standAndCollar, use);
    expect(differsBy(outfit, 'collar-stand-neck')).toBeLessThan(0.5);
    const [outer, , upper] = built(plainBody(units), standAndCollar, use).pieces;
    const [on, fall] = [edgeLengths(outer!.outline).get('upper')!, edgeLengths(upper!.outline).get('neck')!];
    expect(Math.abs(on - fall)).toBeLessThan(500_000);
  });

  test('has its fall made, set between the layers of the stand, and the stand sewn to the neck', () => {
    const running = soundOrder(put(plainBody(), standAndCollar, use));
    const steps = [
      'collar-under-stiffening/baste',
      'collar-layers/stitch',
      'collar-layers/press',
      'collar-stand-seam/baste-trim',
      'collar-stand-seam/stitch',
      'collar-stand-seam/press',
      'collar-stand-neck/pin',
      'collar-stand-neck/cover',
    ];
    for (const [i, step] of steps.slice(1).entries())
      expect([step, forced(running, steps[i]!, step, 'garment')]).toEqual([step, true]);
    expect(forced(running, 'collar-stand-seam/press', 'collar-stand-button/mark', 'garment')).toBe(true);
    expect(forced(running, 'shoulder/press', 'collar-stand-neck/pin', 'garment')).toBe(true);
  });

  test('meets in front without a button', () => {
    const { works } = built(plainBody(), standAndCollar, { ...use, entries: { closing: 'meets' } });
    expect(works.map(({ kind }) => kind)).not.toContain('buttonholes');
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), standAndCollar, { ...use, entries });
    expect(refused({ width: '32' })).toEqual(['width']);
    expect(refused({ point: '0' })).toEqual(['point']);
    expect(refused({ point: '600' })).toEqual(['point']);
    expect(refused({ height: '0' })).toEqual(['height']);
    expect(refused({ diameter: '31' })).toEqual(['diameter']);
  });
});
