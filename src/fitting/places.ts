import { BACK, BODY, FRONT, LEGS } from './entries/wants.ts';
import type { Place, Role } from './entry.ts';

const SLEEVE: readonly Role[] = ['sleeve', 'sleeve-head', 'arm-band'];

/** Pieces of which roles lie over a place of the body. A trim lies where the piece lies that it is sewn to. */
export const LIES_OVER: Readonly<Record<Place, readonly Role[]>> = {
  neck: ['collar', 'centre-front', 'centre-back'],
  shoulder: BODY,
  'upper side': BODY,
  chest: FRONT,
  'front opening': FRONT,
  'upper back': BACK,
  waist: [...BODY, 'waistband', 'skirt', 'leg'],
  hips: [...BODY, 'skirt', 'leg'],
  hem: [...BODY, 'skirt'],
  'upper arm': SLEEVE,
  elbow: SLEEVE,
  wrist: ['sleeve', 'cuff'],
  seat: ['leg'],
  crotch: ['leg'],
  thigh: ['leg'],
  knee: LEGS,
  calf: LEGS,
  ankle: LEGS,
};
