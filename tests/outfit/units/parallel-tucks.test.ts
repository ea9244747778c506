import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { buttonBand } from '../../../src/outfit/units/button-band.ts';
import { parallelTucks } from '../../../src/outfit/units/parallel-tucks.ts';
import { forced } from '../../order/make.ts';
import { built, put, refusedAt, soundOrder } from './made-of.ts';
import { plainBody, RULES } from './plain-body.ts';

const on = { on: ['front'] };

describe('parallel tucks', () => {
  test.each(RULES)('are sewn on the flat piece before anything else, in %s', (units) => {
    const outfit = put(plainBody(units), parallelTucks, { at: on });
    const running = soundOrder(outfit);
    expect(forced(running, 'parallel-tucks/press', 'shoulder/pin', 'garment')).toBe(true);
    const [work] = built(plainBody(units), parallelTucks, { at: on }).works;
    expect(work).toMatchObject({ from: 'opening', family: { angle: 0, pressed: 'away' } });
  });

  test('are measured from the fold, the opening or the edge that was chosen', () => {
    const from = (at: Readonly<Record<string, readonly string[]>>) =>
      built(plainBody(), parallelTucks, { at }).works[0];
    expect(from({ on: ['back'] })).toMatchObject({ from: 'fold' });
    expect(from({ on: ['front'], from: ['front.side'] })).toMatchObject({ from: 'side' });
    expect(refusedAt(plainBody(), parallelTucks, { at: { on: ['front'], from: ['back.side'] } })).toEqual([
      'at.from',
    ]);
  });

  test('keep clear of a band, and grow where a last depth is given', () => {
    const banded = put(plainBody(), buttonBand, { at: { opening: ['front.opening'] } });
    const [work] = built(banded, parallelTucks, { at: on }).works;
    expect(work).toMatchObject({ family: { first: mm(38) } });
    const [grown] = built(plainBody(), parallelTucks, {
      at: on,
      entries: { depth: '2', lastDepth: '6' },
    }).works;
    expect(grown).toMatchObject({ family: { depths: [2, 3, 4, 5, 6].map(mm) } });
  });

  test('that no outline can be opened for are sewn in a block of cloth first', () => {
    const { advice } = built(plainBody(), parallelTucks, {
      at: on,
      entries: { first: '270', count: '1', depth: '20' },
    });
    expect(advice.map(({ say }) => say).join()).toContain('Tuck a block of cloth first');
  });

  test('say which figure cannot be sewn', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), parallelTucks, { at: on, entries });
    expect(refused({ count: '40' })).toEqual(['count']);
    expect(refused({ count: '0' })).toEqual(['count']);
    expect(refused({ count: '501' })).toEqual(['count']);
    expect(refused({ depth: '13' })).toEqual(['depth']);
    expect(refused({ lastDepth: '0' })).toEqual(['lastDepth']);
    expect(refused({ spacing: '0' })).toEqual(['spacing']);
    expect(refused({ first: '-1' })).toEqual(['first']);
    expect(refused({ angle: '95' })).toEqual(['angle']);
    const tucked = put(plainBody(), parallelTucks, { at: on });
    expect(refusedAt(tucked, parallelTucks, { id: 'more', at: on })).toEqual(['at.on']);
  });
});
