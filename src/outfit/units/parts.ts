import type { Gate, Join, OwnStep, Piece } from '../outfit.ts';

type Filled<T, Usual extends keyof T> = Omit<T, Usual> & Partial<Pick<T, Usual>>;

/** A piece with what is usual filled in: no marks, cut before it is worked. */
export const pieceOf = (told: Filled<Piece, 'cutAfterWork' | 'marks'>): Piece => ({
  cutAfterWork: false,
  marks: [],
  ...told,
});

/** A join with what is usual filled in: a plain seam, sewn flat, once for all, its edges left. */
export const joinOf = (
  told: Filled<Join, 'seam' | 'catches' | 'ring' | 'closes' | 'worked' | 'tacked' | 'finish'>,
): Join => ({
  seam: 'plain',
  catches: [],
  ring: false,
  closes: false,
  worked: 'flat',
  tacked: false,
  finish: 'none',
  ...told,
});

/** A try-on with nothing tacked for it alone, unless it says so. */
export const gateOf = (told: Filled<Gate, 'tack'>): Gate => ({ tack: [], ...told });

/** A step of a unit's own wording: no rest after it, not for good, dry, unless it says so. */
export const stepOf = (
  say: string,
  station: OwnStep['station'],
  minutes: number,
  more: Partial<Pick<OwnStep, 'rest' | 'final' | 'wets'>> = {},
): OwnStep => ({ say, station, minutes, rest: 0, final: false, wets: false, ...more });
