import type { Cloth } from '../../outfit/outfit.ts';

/** At the machine with the needle and thread of a cloth. */
export const atMachine = (cloth: Cloth) =>
  ({ station: 'machine', thread: cloth.thread, tool: `needle ${cloth.needle}` }) as const;

/** By hand with the thread of a cloth. */
export const byHand = (cloth: Cloth) => ({ station: 'hand', thread: cloth.thread }) as const;

/** By hand with basting cotton. */
export const basting = { station: 'hand', thread: 'basting' } as const;

/** True for a cloth that gives, which a straight stitch would crack in. */
export const stretches = (cloth: Cloth): boolean => cloth.stretch.across > 0 || cloth.stretch.along > 0;

/** The needle and stitch for a cloth that gives. Common practice, no source: a ball point and a narrow zigzag. */
export const stretchTool = (cloth: Cloth): string => `ball point ${cloth.needle}, narrow zigzag`;
