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
    expect(differsBy(outfit, 'collar-fall-seam')).toBeLessThan(0.5);
    expect(differsBy(outfit, 'collar-stand-ends')).toBe(0);
    const [outer, , upper] = built(plainBody(units), standAndCollar, use).pieces;
    const [on, fall] = [edgeLengths(outer!.outline).get('upper')!, edgeLengths(upper!.outline).get('neck')!];
    expect(Math.abs(on - fall)).toBeLessThan(500_000);
  });

  test('has its fall made and sewn to the stand, whose inner layer covers both seams', () => {
    const running = soundOrder(put(plainBody(), standAndCollar, use));
    const inTurn = (...steps: readonly string[]) =>
      steps.slice(1).filter((step, i) => !forced(running, steps[i]!, step, 'garment'));
    const made = ['collar-under-stiffening/baste', 'collar-layers/stitch', 'collar-layers/press'];
    expect(inTurn(...made, 'collar-fall-seam/pin', 'collar-fall-seam/cover')).toEqual([]);
    expect(
      inTurn(
        'collar-stand-upper-turning/press',
        'collar-stand-ends/pin',
        'collar-stand-ends/press',
        'collar-fall-seam/pin',
      ),
    ).toEqual([]);
    expect(
      inTurn(
        'collar-stand-ends/press',
        'collar-stand-neck/pin',
        'collar-stand-neck/cover',
        'collar-stand-button/mark',
      ),
    ).toEqual([]);
    expect(inTurn('shoulder/press', 'collar-stand-neck/pin')).toEqual([]);
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
