import { beadedLattice } from './beaded-lattice.ts';
import { biasFrill } from './bias-frill.ts';
import { buttonBand } from './button-band.ts';
import { buttonedCuff } from './buttoned-cuff.ts';
import { circularFrill } from './circular-frill.ts';
import { crossedTucks } from './crossed-tucks.ts';
import { facing } from './facing.ts';
import { insetFrill } from './inset-frill.ts';
import { lanternSleeve } from './lantern-sleeve.ts';
import { panelledBodice } from './panelled-bodice.ts';
import { parallelTucks } from './parallel-tucks.ts';
import { plainBack } from './plain-back.ts';
import { plainFront } from './plain-front.ts';
import { plainSleeve } from './plain-sleeve.ts';
import { princessBack } from './princess-back.ts';
import { princessFront } from './princess-front.ts';
import { puffedSleeve } from './puffed-sleeve.ts';
import { sleeveHeadStretch } from './sleeve-head-stretch.ts';
import { sleeveSupport } from './sleeve-support.ts';
import { straightFrill } from './straight-frill.ts';
import type { Unit } from './unit.ts';

/** Every ready-made unit, in the order in which they are offered. */
export const UNITS: readonly Unit[] = [
  plainFront,
  plainBack,
  princessFront,
  princessBack,
  panelledBodice,
  buttonBand,
  parallelTucks,
  crossedTucks,
  insetFrill,
  straightFrill,
  biasFrill,
  circularFrill,
  plainSleeve,
  puffedSleeve,
  lanternSleeve,
  buttonedCuff,
  sleeveHeadStretch,
  sleeveSupport,
  beadedLattice,
  facing,
];

const byId = new Map(UNITS.map((one) => [one.id, one]));

/** The unit of that name; undefined where this version has none. */
export const unitCalled = (id: string): Unit | undefined => byId.get(id);
