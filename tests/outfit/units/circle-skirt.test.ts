import { describe, expect, it } from 'vitest';
import { toMm } from '../../../src/length/length.ts';
import { circleSkirt } from '../../../src/outfit/units/circle-skirt.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { built, emptyOutfit, refusedAt } from './made-of.ts';

const quarter = (entries: Record<string, string>) => {
  const [front] = built(emptyOutfit('mm'), circleSkirt, { entries }).pieces;
  return edgeLengths(front!.outline);
};

describe('a circle skirt', () => {
  it('measures the waist round its waist, whatever part of a circle it is cut from', () => {
    for (const circles of ['1', '0.5', '0.25']) {
      const lengths = quarter({ circles, waist: '720', length: '600' });
      expect(toMm(lengths.get('waist')!)).toBeCloseTo(180, 2);
      expect(toMm(lengths.get('side')!)).toBeCloseTo(600, 4);
      // Each part of the hem is longer than the waist by the length times the angle that a quarter goes round.
      const grows = 600 * (Math.PI / 2) * Number(circles);
      expect(toMm(lengths.get('hem')!)).toBeCloseTo(180 + grows, 1);
    }
  });

  it('says where a panel is wider than the cloth', () => {
    const advice = (length: string) =>
      built(emptyOutfit('mm'), circleSkirt, { entries: { length } }).advice.map((one) => one.say);
    expect(advice('900').join()).toContain('wider than the cotton lawn');
    expect(advice('300').join()).not.toContain('wider');
  });

  it('refuses what has no waist or no length, and allowances that reach the middle', () => {
    const at = (entries: Record<string, string>) => refusedAt(emptyOutfit('mm'), circleSkirt, { entries });
    expect(at({ waist: '0' })).toEqual(['waist']);
    expect(at({ length: '0' })).toEqual(['length']);
    expect(at({ waist: '60', allowance: '20' })).toEqual(['circles']);
  });
});
