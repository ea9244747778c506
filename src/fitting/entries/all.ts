import type { Entry } from '../entry.ts';
import { BODICE } from './bodice.ts';
import { COLLAR } from './collar.ts';
import { DETACHED_SLEEVE } from './detached-sleeve.ts';
import { SHOULDER_AND_NECK } from './shoulder-neck.ts';
import { SLEEVE } from './sleeve.ts';
import { STRETCH_LEGS } from './stretch-legs.ts';
import { TROUSERS } from './trousers.ts';
import { FRONT_OPENING, TUCKS_AND_TRIMS } from './tucks-trims-band.ts';
import { UPPER_SIDE } from './upper-side.ts';
import { HEM, WAIST_AND_HIPS } from './waist-hips-hem.ts';

export { CHECKS } from './checks.ts';

/** Everything that can be seen at a try-on, from the neck down. */
export const ENTRIES: readonly Entry[] = [
  ...COLLAR,
  ...SHOULDER_AND_NECK,
  ...UPPER_SIDE,
  ...BODICE,
  ...TUCKS_AND_TRIMS,
  ...FRONT_OPENING,
  ...WAIST_AND_HIPS,
  ...HEM,
  ...DETACHED_SLEEVE,
  ...SLEEVE,
  ...TROUSERS,
  ...STRETCH_LEGS,
];

const byId = new Map(ENTRIES.map((entry) => [entry.id, entry]));

/** The entry of this id; none if this version does not know it. */
export const entryCalled = (id: string): Entry | undefined => byId.get(id);
