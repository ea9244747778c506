import type { Cures } from '../../fitting/cure-types.ts';
import type { Entry, Level } from '../../fitting/entry.ts';
import type { Observation } from '../../fitting/observation.ts';
import type { Length } from '../../length/length.ts';
import type { Running } from '../../order/running-types.ts';
import type { Undoing } from '../../order/undoing/undoing-types.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import type { Progress } from '../../store/progress-types.ts';

/** What has to be bought or laid ready for doing something again. */
export interface Supplies {
  readonly cloth: readonly {
    /** Id of the cloth. */
    readonly cloth: string;
    readonly pieces: readonly string[];
    /** To buy, at its width. */
    readonly length: Length;
  }[];
  readonly thread: Length;
  readonly beads: readonly { readonly name: string; readonly count: number }[];
}

/** What the page of the cure reckons with, so that tests can hand it a cure. */
export interface Means {
  readonly cure: (
    outfit: Outfit,
    garment: string,
    running: Running,
    seen: readonly Observation[],
    at: { done: Iterable<string>; own?: ReadonlyMap<string, number>; id: string },
  ) => Cures;
  readonly supplies: (outfit: Outfit, running: Running, undoing: Undoing) => Supplies;
  /** Heights of the levels on each piece of a garment. */
  readonly levels: (garment: Garment) => ReadonlyMap<string, ReadonlyMap<Level, Length>>;
  readonly entry: (id: string) => Entry | undefined;
  /** The maker's own minutes for steps. */
  readonly own: (progress: Pick<Progress, 'steps'>) => ReadonlyMap<string, number>;
}
