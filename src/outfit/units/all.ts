import { plainSleeve } from './plain-sleeve.ts';
import type { Unit } from './unit.ts';

/** Every ready-made unit, in the order in which they are offered. */
export const UNITS: readonly Unit[] = [plainSleeve];

const byId = new Map(UNITS.map((one) => [one.id, one]));

/** The unit of that name; undefined where this version has none. */
export const unitCalled = (id: string): Unit | undefined => byId.get(id);
