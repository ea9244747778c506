import { describe, expect, test } from 'vitest';
import { circularFrill } from '../../../src/outfit/units/circular-frill.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

const at = { edge: NECK };
const sum = (made: ReturnType<typeof built>, edge: string) =>
  made.pieces.reduce((all, { outline }) => all + edgeLengths(outline).get(edge)! / 1e6, 0);

describe('a circular frill', () => {
  test.each(RULES)('is as long as its edge at the seam, and hangs before it is hemmed, in %s', (units) => {
    const outfit = put(plainBody(units), circularFrill, { at });
    expect(differsBy(outfit, 'circular-frill-seam')).toBeLessThan(0.01);
    const running = soundOrder(outfit);
    expect(forced(running, 'circular-frill-1-stay/stitch', 'circular-frill-1-clips/own-1', 'garment')).toBe(
      true,
    );
    expect(forced(running, 'circular-frill-1-clips/own-1', 'circular-frill-seam/pin', 'garment')).toBe(true);
    expect(forced(running, 'circular-frill-ends-1/press', 'circular-frill-seam/pin', 'garment')).toBe(true);
    expect(forced(running, 'circular-frill-seam/press', 'circular-frill-hem/level', 'garment')).toBe(true);
    expect(
      running.constraints.find((c) => c.after === 'garment/circular-frill-hem/level' && c.wait)?.wait,
    ).toBe(86400);
  });

  test('flares to twice its seam, or as the circles say', () => {
    const usual = built(plainBody(), circularFrill, { at });
    expect(sum(usual, 'outer') / sum(usual, 'seam')).toBeCloseTo(2, 4);
    const half = built(plainBody(), circularFrill, { at, entries: { circles: '0.5', depth: '60' } });
    expect(half.pieces.map(({ id }) => id)).toEqual(['circular-frill']);
    expect(sum(half, 'outer') - sum(half, 'seam')).toBeCloseTo(Math.PI * 60, 1);
    const three = built(plainBody(), circularFrill, { at, entries: { circles: '1.5', allowance: '6' } });
    expect(three.pieces.length).toBe(3);
  });

  test('goes round an armhole, every part sewn to the next', () => {
    const outfit = put(plainBody(), circularFrill, {
      at: { edge: ['front.armhole', 'back.armhole'] },
      entries: { finish: 'bound' },
    });
    const running = soundOrder(outfit);
    const parts = outfit.garments[0]!.pieces.filter(({ id }) => id.startsWith('circular'));
    expect(parts.every(({ cut }) => cut === 'pair')).toBe(true);
    for (const i of parts.keys())
      expect(
        forced(running, `circular-frill-ends-${i + 1}/press`, 'circular-frill-seam/pin', 'garment'),
      ).toBe(true);
    expect(forced(running, 'circular-frill-1-binding/fasten', 'circular-frill-ends-1/pin', 'garment')).toBe(
      true,
    );
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), circularFrill, { at, entries });
    expect(refused({ circles: '11' })).toEqual(['circles']);
    expect(refused({ circles: '0' })).toEqual(['circles']);
    expect(refused({ circles: '9' })).toEqual(['circles']);
    expect(refused({ depth: '0' })).toEqual(['depth']);
    expect(refused({ depth: '3' })).toEqual(['circles']);
    expect(refused({ allowance: '-2' })[0]).toBe('allowance');
    expect(refused({ goes: 'ring' })).toEqual(['goes']);
  });
});
