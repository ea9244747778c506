import type { Cures } from '../../fitting/cure-types.ts';
import type { Entry, Level } from '../../fitting/entry.ts';
import type { Observation } from '../../fitting/observation.ts';
import type { Length } from '../../length/length.ts';
import type { Marking } from '../../length/writing.ts';
import type { Running } from '../../order/running-types.ts';
import type { SuppliesAgain } from '../../order/undoing/supplies.ts';
import type { Undoing } from '../../order/undoing/undoing-types.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import type { Progress } from '../../store/progress-types.ts';

/** What the page of the cure reckons with, so that tests can hand it a cure. */
export interface Means {
  readonly cure: (
    outfit: Outfit,
    garment: string,
    running: Running,
    seen: readonly Observation[],
    at: { done: Iterable<string>; own?: ReadonlyMap<string, number>; id: string; marking?: Marking },
  ) => Cures;
  readonly supplies: (outfit: Outfit, running: Running, undoing: Undoing) => SuppliesAgain;
  /** Heights of the levels on each piece of a garment. */
  readonly levels: (garment: Garment) => ReadonlyMap<string, ReadonlyMap<Level, Length>>;
  readonly entry: (id: string) => Entry | undefined;
  /** The maker's own minutes for steps. */
  readonly own: (progress: Pick<Progress, 'steps'>) => ReadonlyMap<string, number>;
}
