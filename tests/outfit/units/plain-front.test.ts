import { describe, expect, it } from 'vitest';
import { inches, toInches } from '../../../src/length/length.ts';
import { plainFront } from '../../../src/outfit/units/plain-front.ts';
import { flattenOutline } from '../../../src/shape/flatten.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { sidesCross } from '../../../src/shape/offset-crossing.ts';
import { built, emptyOutfit, MIDDLING, put, refusedAt, soundOrder } from './made-of.ts';

const outlineOf = (entries: Record<string, string>, measures?: typeof MIDDLING) => {
  const [piece] = built(emptyOutfit('in', measures), plainFront, { entries }).pieces;
  return piece!.outline;
};

describe('a plain front', () => {
  it('has the edges of an open front, or of one on the fold', () => {
    expect(outlineOf({}).edges.map((edge) => edge.name)).toEqual([
      'lap',
      'neck',
      'shoulder',
      'armhole',
      'side',
      'hem',
      'opening',
    ]);
    expect(outlineOf({ opens: 'fold' }).edges.map((edge) => edge.name)).toEqual([
      'neck',
      'shoulder',
      'armhole',
      'side',
      'hem',
      'fold',
    ]);
    expect(outlineOf({ lap: '0' }).edges.map((edge) => edge.name)).not.toContain('lap');
  });

  it('is as long along its seams as was written, whatever the shape of its side', () => {
    for (const entries of [{}, { waist: '8', hem: '11' }, { waist: '9', below: '0' }, { hem: '14' }]) {
      const lengths = edgeLengths(outlineOf({ side: '17', shoulder: '4 1/2', ...entries }));
      expect(lengths.get('side')! / inches(17)).toBeCloseTo(1, 6);
      expect(lengths.get('shoulder')! / inches(9, 2)).toBeCloseTo(1, 6);
      expect(sidesCross(flattenOutline(outlineOf(entries)))).toBe(false);
    }
  });

  it('is proposed from measures, each figure with its reason', () => {
    const outfit = emptyOutfit('in', MIDDLING);
    const made = built(outfit, plainFront);
    expect(toInches(made.proposed.chest!.value as never)).toBeCloseTo((38 + 3) / 4, 6);
    expect(toInches(made.proposed.armhole!.value as never)).toBeCloseTo(17 / 2 + 1.25, 6);
    expect(Object.values(made.proposed).every((one) => one.because.endsWith('.'))).toBe(true);
    soundOrder(put(outfit, plainFront));
    soundOrder(put(emptyOutfit('mm'), plainFront));
  });

  it('refuses what cannot be sewn, at its field', () => {
    const outfit = emptyOutfit();
    const at = (entries: Record<string, string>) => refusedAt(outfit, plainFront, { entries });
    expect(at({ chest: '0' })).toEqual(['chest']);
    expect(at({ slope: '6' })).toEqual(['slope']);
    expect(at({ armhole: '1' })).toEqual(['armhole']);
    expect(at({ neckDeep: '40' })).toEqual(['neckDeep']);
    expect(at({ neckWide: '11' })).toEqual(['neckWide']);
    expect(at({ across: '12' })).toEqual(['across']);
    expect(at({ below: '16', waist: '9' })).toEqual(['below']);
    expect(at({ below: '-1' })).toEqual(['below']);
    expect(at({ below: '16' })).toEqual([]);
    expect(at({ waist: '8', side: '1/8', below: '0' })).toEqual(['side']);
    expect(at({ lap: '-1' })).toEqual(['lap']);
    expect(at({ hem: '0', chest: 'wide' })).toEqual(['chest']);
  });
});
