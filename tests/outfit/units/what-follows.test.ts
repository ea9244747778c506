import { describe, expect, it } from 'vitest';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { lengthsFit } from '../../../src/outfit/lengths-fit.ts';
import { UNITS, unitCalled } from '../../../src/outfit/units/all.ts';
import { garmentOf, soundOrder } from './made-of.ts';
import { clothed, usuallyBefore, type Worn, wear } from './what-follows.ts';

const SHIRT: readonly Worn[] = [['plain-front'], ['plain-back']];
const CLOSED: readonly Worn[] = [['plain-front', { opens: 'fold' }], ['plain-back']];
const round = (edge: string, ...pieces: readonly string[]): readonly string[] => [
  ...pieces.map((piece) => `${piece}.${edge}`),
  ...pieces.toReversed().map((piece) => `other:${piece}.${edge}`),
];
const NECK = round('neck', 'plain-front', 'plain-back');
const HEM = round('hem', 'plain-front', 'plain-back');
const ARMHOLE = ['plain-front.armhole', 'plain-back.armhole'];
const skirt = (kind: string, edge: string) => round(edge, `${kind}-front`, `${kind}-back`);

/** What is worn, what comes next, and where it should be proposed. */
const NEXT: readonly (readonly [readonly Worn[], string, Readonly<Record<string, readonly string[]>>])[] = [
  [[['plain-front']], 'plain-back', { shoulder: ['plain-front.shoulder'], side: ['plain-front.side'] }],
  [SHIRT, 'button-band', { opening: ['plain-front.opening'] }],
  ...['flat-collar', 'standing-band', 'stand-and-collar', 'bias-bound-neck'].map(
    (unit) => [SHIRT, unit, { neck: NECK }] as const,
  ),
  [[...SHIRT, ['button-band']], 'stand-and-collar', { neck: NECK }],
  ...['plain-sleeve', 'puffed-sleeve', 'lantern-sleeve'].flatMap((unit) => {
    const lower = unit === 'lantern-sleeve' ? `${unit}-lower.lower` : `${unit}.lower`;
    const sleeved: readonly Worn[] = [...SHIRT, [unit]];
    return [
      [SHIRT, unit, { armhole: ARMHOLE }],
      [sleeved, 'buttoned-cuff', { lower: [lower] }],
      ...(unit === 'plain-sleeve' ? [] : [[[[unit]], 'buttoned-cuff', { lower: [lower] }] as const]),
      [[...sleeved, ['hem']], 'hem', { edges: [lower] }],
      [[...sleeved, ['hem']], 'straight-frill', { edge: [lower] }],
      [sleeved, 'hem', { edges: HEM }],
    ] as const;
  }),
  [[...CLOSED, ['bias-bound-neck'], ['plain-sleeve']], 'straight-frill', { edge: ['plain-sleeve.lower'] }],
  [CLOSED, 'gathered-skirt', { to: HEM }],
  [SHIRT, 'waistband', { waist: HEM }],
  [[['gathered-skirt']], 'waistband', { waist: skirt('gathered-skirt', 'waist') }],
  [[['circle-skirt'], ['waistband']], 'hem', { edges: skirt('circle-skirt', 'hem') }],
  [
    [['circle-skirt', { opens: 'front' }], ['waistband']],
    'button-band',
    { opening: ['circle-skirt-front.opening'] },
  ],
  [[['puffed-sleeve', { held: 'head' }]], 'sleeve-head-stretch', { top: ['puffed-sleeve.upper'] }],
  [[['stretch-leg', { of: 'two' }]], 'ribbon-frill', { seam: ['stretch-leg-knee'] }],
];

describe('what is put on next', () => {
  it.each(NEXT.map(([worn, unit, at]) => [unit, worn.map(([id]) => id).join(', '), worn, at] as const))(
    '%s goes where it belongs on %s, with all that is proposed',
    (unit, _, worn, at) => {
      for (const measured of [false, true]) {
        const outfit = wear(worn, clothed(measured));
        expect(suggestPlaces(garmentOf(outfit), unitCalled(unit)!)).toEqual(at);
        const opens = unit === 'gathered-skirt' ? { opens: 'closed' } : {};
        const whole = wear([[unit, opens]], outfit);
        const apart = lengthsFit(whole, garmentOf(whole), { unit: 'mm', step: 1 });
        expect(apart.filter(({ within }) => !within).map(({ say }) => say)).toEqual([]);
        if (measured) soundOrder(whole);
      }
    },
  );

  it.each(UNITS.map(({ id }) => [id]))('%s can be put on after what usually comes before it', (unit) => {
    for (const measured of [false, true]) wear([...usuallyBefore(unit), [unit]], clothed(measured));
  });
});
