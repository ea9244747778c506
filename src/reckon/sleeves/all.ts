import type { Reckoning } from '../reckoning.ts';
import { buttonedCuff } from './buttoned-cuff.ts';
import { closedCuff } from './closed-cuff.ts';
import { headOfASleeve } from './head-of-a-sleeve.ts';
import { horsehairHem } from './horsehair-hem.ts';
import { loopBow } from './loop-bow.ts';
import { neckclothBow } from './neckcloth-bow.ts';
import { stuffedRoll } from './stuffed-roll.ts';
import { supportInside } from './support-inside.ts';

/** The reckonings under Sleeves, bows and cuffs, in the order in which they stand. */
export const SLEEVES: readonly Reckoning[] = [
  buttonedCuff,
  closedCuff,
  loopBow,
  neckclothBow,
  headOfASleeve,
  supportInside,
  stuffedRoll,
  horsehairHem,
];
