import { inches, type Length, mm, nm, ratio, times } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import type { Cloth } from '../../outfit/outfit.ts';

/** Finest mark at which a stretched length is read off: a sixteenth, or a millimetre. */
const FINE: Readonly<Record<ReadingUnit, Length>> = { in: inches(1, 16), mm: mm(1) };
/** How much is marked off to measure a stretch: whatever comes out at a mark, the shortest first. */
const MARKED: Readonly<Record<ReadingUnit, readonly Length[]>> = {
  in: [inches(4), inches(5), inches(10)],
  mm: [mm(100), mm(200), mm(500)],
};

/** A stretch as it is measured: so much marked off on the cloth at rest, and how far that goes each way. */
export interface Gauge {
  readonly rest: Length;
  readonly across: Length;
  readonly along: Length;
}

const goes = (rest: Length, percent: number): Length => times(rest, 1 + percent / 100);

/** The stretch of a cloth as it would have been measured. */
export function gaugeOf({ across, along }: Cloth['stretch'], unit: ReadingUnit): Gauge {
  const even = (rest: Length): boolean =>
    [across, along].every((percent) => goes(rest, percent) % FINE[unit] === 0);
  const all = MARKED[unit];
  const rest = all.find(even) ?? all[0] ?? mm(100);
  const at = (percent: number): Length => {
    const exact = goes(rest, percent);
    // A percentage that no rule shows is read to a hundredth of a millimetre.
    return exact % FINE[unit] === 0 ? exact : nm(Math.round(exact / 10_000) * 10_000);
  };
  return { rest, across: at(across), along: at(along) };
}

/** The stretch in percent, to a tenth, of what was marked off and how far it goes. */
export const percentOf = (rest: Length, to: Length): number => Math.round((ratio(to, rest) - 1) * 1000) / 10;
