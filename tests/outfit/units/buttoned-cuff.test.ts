import { describe, expect, test } from 'vitest';
import { buttonedCuff } from '../../../src/outfit/units/buttoned-cuff.ts';
import { plainSleeve } from '../../../src/outfit/units/plain-sleeve.ts';
import { faults, forcedPairs, longerTo, measured, put, putting, sleeveless } from './bodies.ts';
import { clothed, wear } from './what-follows.ts';

const sleeved = (entries: Readonly<Record<string, string>> = { ends: 'cuff' }, wearer = measured) =>
  put(sleeveless(wearer), plainSleeve, {
    id: 'sleeve',
    name: 'Sleeve',
    at: { armhole: ['front.armhole', 'back.armhole'] },
    entries,
  }).outfit;
const called = { id: 'cuff', name: 'Cuff', at: { lower: ['sleeve.lower'] } };

describe('a buttoned cuff', () => {
  test.each(['in', 'mm'] as const)(
    'takes the whole lower edge, gathered to the way round it, in %s',
    (units) => {
      for (const wearer of [measured, undefined]) {
        const { garment, built } = put({ ...sleeved(undefined, wearer), units }, buttonedCuff, called);
        expect(longerTo(garment, 'cuff-seam')).toBeCloseTo(0, 1);
        expect(longerTo(garment, 'cuff-layers')).toBeCloseTo(0, 3);
        expect(built.advice.map(({ say }) => say).join()).not.toContain('leave it open');
      }
    },
  );

  test('is stiffened, sewn, holed and put on before the sleeve is closed', () => {
    const { outfit } = put(sleeved(), buttonedCuff, called);
    expect(
      forcedPairs(
        outfit,
        ['cuff-stiffening/baste', 'cuff-layers/pin'],
        ['cuff-turning/press', 'cuff-layers/pin'],
        ['cuff-layers/press', 'cuff-buttons/mark'],
        ['cuff-buttons/slit', 'cuff-seam/pin'],
        ['cuff-gathers/rows', 'cuff-seam/pin'],
        ['cuff-seam/cover', 'sleeve-seam/pin'],
      ),
    ).toEqual([]);
  });

  test('tells the makers of a closed sleeve to leave its seam open', () => {
    const { built } = put(sleeved({ ends: 'cuff', opening: '0' }), buttonedCuff, called);
    expect(built.advice.map(({ say }) => say)).toContain(
      'Sleeve seam: leave it open above the cuff, or the hand will not pass.',
    );
  });

  test('is proposed as wide as the arm where a puffed sleeve ends, which need not be the wrist', () => {
    for (const lowerFullness of ['1.5', '2.5']) {
      const worn = wear(
        [['plain-front'], ['plain-back'], ['puffed-sleeve', { arm: '280 mm', lowerFullness }]],
        clothed(true),
      );
      const at = { lower: ['puffed-sleeve.lower'] };
      const known = { outfit: worn, garment: worn.garments[0]! };
      const { wrist } = buttonedCuff.propose(known, putting(buttonedCuff, { at }));
      expect(Number(wrist?.value) / 1e6).toBeCloseTo(280, 1);
    }
    const plain = sleeved();
    const known = { outfit: plain, garment: plain.garments[0]! };
    expect(buttonedCuff.propose(known, putting(buttonedCuff, called)).wrist?.value).toBe(
      measured.measures.wrist,
    );
  });

  test('says which figure cannot be sewn', () => {
    const fault = (entries: Readonly<Record<string, string>>, on = sleeved()) =>
      faults(on, buttonedCuff, { ...called, entries })[0]?.split(':')[0];
    expect(fault({ wrist: '400' })).toBe('at.lower');
    expect(fault({ wrist: '0' })).toBe('wrist');
    expect(fault({ overlap: '100' })).toBe('overlap');
    expect(fault({ overlap: '2' })).toBe('overlap');
    expect(fault({ buttons: '9' })).toBe('buttons');
    expect(fault({ diameter: '0' })).toBe('diameter');
    expect(fault({}, sleeved({ ends: 'hem' }))).toBe('at.lower');
  });
});
