import { describe, expect, test } from 'vitest';
import { biasBoundNeck } from '../../../src/outfit/units/bias-bound-neck.ts';
import { edgeUses } from '../../../src/paper/edge-allowances.ts';
import { forced } from '../../order/make.ts';
import { built, differsBy, garmentOf, put, refusedAt, soundOrder } from './made-of.ts';
import { NECK, plainBody, RULES } from './plain-body.ts';

const at = { neck: NECK };

describe('a bias-bound neck', () => {
  test.each(RULES)(
    'has a strip as long as the edge, sewn on when the shoulders are pressed, in %s',
    (units) => {
      const outfit = put(plainBody(units), biasBoundNeck, { at });
      expect(differsBy(outfit, 'bias-bound-neck-seam')).toBeLessThan(0.001);
      const running = soundOrder(outfit);
      expect(forced(running, 'shoulder/press', 'bias-bound-neck-seam/baste', 'garment')).toBe(true);
      expect(forced(running, 'bias-bound-neck-turning/press', 'bias-bound-neck-seam/baste', 'garment')).toBe(
        true,
      );
    },
  );

  test('is cut as wide as it says, on the bias, with its turnings left on both edges', () => {
    for (const [shows, cut] of [
      ['inside', 24],
      ['round', 36],
    ] as const) {
      const outfit = put(plainBody(), biasBoundNeck, { at, entries: { shows, width: '12', turn: '6' } });
      const strip = garmentOf(outfit).pieces.at(-1)!;
      const high = strip.outline.edges[1]!.segments[0]!.to.y;
      const uses = edgeUses(garmentOf(outfit), strip);
      const left = uses
        .filter(({ edge }) => edge === 'upper' || edge === 'lower')
        .reduce((all, { allowance }) => all + allowance, 0);
      expect([strip.grain, (high + left) / 1e6]).toEqual([45, cut]);
    }
  });

  test('goes round an armhole, left and right, its ends joined first', () => {
    const outfit = put(plainBody(), biasBoundNeck, { at: { neck: ['front.armhole', 'back.armhole'] } });
    const running = soundOrder(outfit);
    expect(forced(running, 'bias-bound-neck-ends/press', 'bias-bound-neck-seam/baste', 'garment')).toBe(true);
    expect(forced(running, 'side/press', 'bias-bound-neck-seam/baste', 'garment')).toBe(true);
  });

  test('says what cannot be sewn, at its field', () => {
    const refused = (entries: Readonly<Record<string, string>>) =>
      refusedAt(plainBody(), biasBoundNeck, { at, entries });
    expect(refused({ width: '0' })).toEqual(['width']);
    expect(refused({ turn: '0' })).toEqual(['turn']);
    expect(refused({ turn: '7' })).toEqual(['turn']);
    expect(refused({ goes: 'ring' })).toEqual(['goes']);
    expect(built(plainBody(), biasBoundNeck, { at }).joins).toHaveLength(1);
  });
});
