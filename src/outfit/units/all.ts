import { appliqueOnMesh } from './applique-on-mesh.ts';
import { beadedLattice } from './beaded-lattice.ts';
import { biasBoundNeck } from './bias-bound-neck.ts';
import { biasFrill } from './bias-frill.ts';
import { buttonBand } from './button-band.ts';
import { buttonedCuff } from './buttoned-cuff.ts';
import { circleSkirt } from './circle-skirt.ts';
import { circularFrill } from './circular-frill.ts';
import { crossedTucks } from './crossed-tucks.ts';
import { darts } from './darts.ts';
import { facing } from './facing.ts';
import { flatCollar } from './flat-collar.ts';
import { gatheredSkirt } from './gathered-skirt.ts';
import { hem } from './hem.ts';
import { insetFrill } from './inset-frill.ts';
import { lanternSleeve } from './lantern-sleeve.ts';
import { lining } from './lining.ts';
import { loopBow } from './loop-bow.ts';
import { neckclothBow } from './neckcloth-bow.ts';
import { panelledBodice } from './panelled-bodice.ts';
import { parallelTucks } from './parallel-tucks.ts';
import { plainBack } from './plain-back.ts';
import { plainFront } from './plain-front.ts';
import { plainSleeve } from './plain-sleeve.ts';
import { princessBack } from './princess-back.ts';
import { princessFront } from './princess-front.ts';
import { puffedSleeve } from './puffed-sleeve.ts';
import { ribbonFrill } from './ribbon-frill.ts';
import { sleeveHeadStretch } from './sleeve-head-stretch.ts';
import { sleeveSupport } from './sleeve-support.ts';
import { standAndCollar } from './stand-and-collar.ts';
import { standingBand } from './standing-band.ts';
import { straightFrill } from './straight-frill.ts';
import { stretchLeg } from './stretch-leg.ts';
import type { Unit } from './unit.ts';
import { waistband } from './waistband.ts';

/** Every ready-made unit, in the order in which they are offered. */
export const UNITS: readonly Unit[] = [
  plainFront,
  plainBack,
  princessFront,
  princessBack,
  panelledBodice,
  darts,
  buttonBand,
  parallelTucks,
  crossedTucks,
  insetFrill,
  straightFrill,
  biasFrill,
  circularFrill,
  flatCollar,
  standingBand,
  standAndCollar,
  biasBoundNeck,
  neckclothBow,
  loopBow,
  plainSleeve,
  puffedSleeve,
  lanternSleeve,
  buttonedCuff,
  sleeveHeadStretch,
  sleeveSupport,
  beadedLattice,
  appliqueOnMesh,
  stretchLeg,
  ribbonFrill,
  gatheredSkirt,
  circleSkirt,
  waistband,
  facing,
  lining,
  hem,
];

const byId = new Map(UNITS.map((one) => [one.id, one]));

/** The unit of that name; undefined where this version has none. */
export const unitCalled = (id: string): Unit | undefined => byId.get(id);
