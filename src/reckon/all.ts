import { BIAS } from './bias/all.ts';
import { BUTTONS } from './buttons/all.ts';
import { CLOTH } from './cloth/all.ts';
import { FRILLS } from './frills/all.ts';
import { LATTICE } from './lattice/all.ts';
import { LEGS } from './legs/all.ts';
import { MACHINE } from './machine/all.ts';
import type { Reckoning } from './reckoning.ts';
import { SLEEVES } from './sleeves/all.ts';
import { TUCKS } from './tucks/all.ts';

/** Every reckoning, in the order in which the reckoner shows them. */
export const RECKONINGS: readonly Reckoning[] = [
  ...TUCKS,
  ...BUTTONS,
  ...FRILLS,
  ...LATTICE,
  ...SLEEVES,
  ...BIAS,
  ...LEGS,
  ...MACHINE,
  ...CLOTH,
];

/** The reckoning with this id. */
export const reckoningOf = (id: string): Reckoning | undefined => RECKONINGS.find((one) => one.id === id);
