import type { Entry } from '../entry.ts';
import { CALF_AND_ANKLE } from './calf-ankle.ts';
import { CHEST } from './chest.ts';
import { COLLAR } from './collar.ts';
import { DETACHED_SLEEVE } from './detached-sleeve.ts';
import { FRILLS } from './frills.ts';
import { FRONT_OPENING } from './front-opening.ts';
import { HEM } from './hem.ts';
import { HIPS } from './hips.ts';
import { LEG_WAIST } from './leg-waist.ts';
import { NECK } from './neck.ts';
import { SEAT_AND_CROTCH } from './seat-crotch.ts';
import { SHOULDER } from './shoulder.ts';
import { SLEEVE } from './sleeve.ts';
import { SLEEVE_CAP } from './sleeve-cap.ts';
import { THIGH_AND_KNEE } from './thigh-knee.ts';
import { TUCKS } from './tucks.ts';
import { UPPER_BACK } from './upper-back.ts';
import { UPPER_SIDE } from './upper-side.ts';
import { WAIST } from './waist.ts';
import { WRIST } from './wrist.ts';

export { CHECKS } from './checks.ts';

/** Everything that can be seen at a try-on, from the neck down. */
export const ENTRIES: readonly Entry[] = [
  ...COLLAR,
  ...NECK,
  ...SHOULDER,
  ...UPPER_SIDE,
  ...CHEST,
  ...UPPER_BACK,
  ...TUCKS,
  ...FRILLS,
  ...FRONT_OPENING,
  ...WAIST,
  ...HIPS,
  ...HEM,
  ...DETACHED_SLEEVE,
  ...SLEEVE_CAP,
  ...SLEEVE,
  ...WRIST,
  ...LEG_WAIST,
  ...SEAT_AND_CROTCH,
  ...THIGH_AND_KNEE,
  ...CALF_AND_ANKLE,
];

const byId = new Map(ENTRIES.map((entry) => [entry.id, entry]));

/** The entry of this id; none if this version does not know it. */
export const entryCalled = (id: string): Entry | undefined => byId.get(id);
