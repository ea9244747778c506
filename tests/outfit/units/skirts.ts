import type { Outfit } from '../../../src/outfit/outfit.ts';
import { plainBack } from '../../../src/outfit/units/plain-back.ts';
import { plainFront } from '../../../src/outfit/units/plain-front.ts';
import { emptyOutfit, put } from './made-of.ts';

/** The waist of a skirt that opens at the back, from the opening all round to the opening. */
export const waistOf = (skirt: string): readonly string[] => [
  `${skirt}-back.waist`,
  `${skirt}-front.waist`,
  `other:${skirt}-front.waist`,
  `other:${skirt}-back.waist`,
];

/** A body down to the waist that a skirt can hang from: open down the front, or closed. */
export const bodyToWaist = (
  opens: 'opening' | 'fold',
  units: 'in' | 'mm' = 'in',
  measures?: Readonly<Record<string, number>>,
): Outfit =>
  put(
    put(emptyOutfit(units, measures, 'Dress'), plainFront, {
      entries: { opens, side: '9 in', below: '0', lap: '0' },
    }),
    plainBack,
    {
      entries: { below: '0' },
      at: { shoulder: ['plain-front.shoulder'], side: ['plain-front.side'] },
    },
  );

/** Its lower edge, all round. */
export const LOWER = ['plain-front.hem', 'plain-back.hem', 'other:plain-back.hem', 'other:plain-front.hem'];
