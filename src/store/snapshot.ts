import { bad, good, type Result } from '../length/result.ts';
import type { Deed } from './deed.ts';
import { isRun, type Packed, pack, packedCount } from './pack.ts';
import { emptyProgress } from './progress.ts';
import type { Progress, Seen, StepProgress } from './progress-types.ts';
import { laterDeeds } from './trail.ts';

const FORMAT = 'slipbaste-snapshot';

/** Counted up whenever adding up changes its meaning, so that an old sum is never taken for a new one. */
const VERSION = 5;

/**
 * A sum of deeds kept beside the ledger so that opening is fast. It holds nothing that the deeds do not: it can be
 * thrown away at any time and made again. It is stored as the browser's structured clone, which knows Map and Set.
 */
export interface Snapshot {
  readonly format: string;
  readonly version: number;
  readonly outfit: string;
  readonly sum: Omit<Progress, 'trail'>;
  /** Highest number of each device among the deeds in it. */
  readonly heads: ReadonlyMap<string, number>;
  readonly last: Deed | undefined;
  readonly undone: ReadonlySet<string>;
  /** The deeds themselves, written short; needed to take one back. */
  readonly packed: readonly Packed[];
  /** How many deeds are in it. */
  readonly count: number;
}

/** What was seen without its picture, which is large and lies with its deed already. */
const withoutPhoto = (seen: Seen): Seen => {
  const { photo: _there, ...rest } = seen;
  return rest;
};

/** What was seen, each with the picture of its deed. */
const withPhotos = (seen: readonly Seen[], packed: readonly Packed[]): readonly Seen[] => {
  const photos = new Map<string, string>();
  if (seen.length > 0) {
    for (const row of packed) {
      if (!isRun(row) && row.act.kind === 'seen' && row.act.photo !== undefined)
        photos.set(row.id, row.act.photo);
    }
  }
  return seen.map((one) => {
    const photo = photos.get(one.deed);
    return photo === undefined ? one : { ...one, photo };
  });
};

/** Writes a progress down. It shares parts with the progress, so it must be stored before anything else happens. */
export const takeSnapshot = (progress: Progress): Snapshot => {
  const { trail, ...sum } = progress;
  const packed = [...(trail?.packed ?? []), ...(trail === undefined ? [] : pack(laterDeeds(trail)))];
  return {
    format: FORMAT,
    version: VERSION,
    outfit: progress.outfit,
    sum: { ...sum, seen: sum.seen.map(withoutPhoto) },
    heads: trail?.heads ?? new Map(),
    last: trail?.last,
    undone: trail?.undone ?? new Set(),
    packed,
    count: packedCount(packed),
  };
};

const isRecord = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const isStep = (step: unknown): step is StepProgress =>
  isRecord(step) &&
  step.items instanceof Set &&
  step.counts instanceof Map &&
  step.closed instanceof Set &&
  step.timers instanceof Map;

const isSum = (sum: unknown): sum is Snapshot['sum'] =>
  isRecord(sum) &&
  Array.isArray(sum.done) &&
  Array.isArray(sum.added) &&
  Array.isArray(sum.notes) &&
  Array.isArray(sum.reckoned) &&
  Array.isArray(sum.unfit) &&
  Array.isArray(sum.seen) &&
  Array.isArray(sum.reworks) &&
  sum.waived instanceof Set &&
  sum.steps instanceof Map &&
  [...sum.steps.values()].every(isStep);

const isPacked = (row: unknown): row is Packed =>
  isRecord(row) && ('clock' in row ? Array.isArray(row.clock) : isRecord(row.act));

/**
 * The progress that a snapshot of this outfit holds, ready for the deeds that came after. Refused, in words, when it
 * is foreign, of another version or damaged; then the deeds are added up from the first one instead.
 */
export const restoreSnapshot = (snapshot: unknown, outfit: string): Result<Progress, string> => {
  if (!isRecord(snapshot) || snapshot.format !== FORMAT) return bad('This is not a snapshot of a ledger.');
  if (snapshot.version !== VERSION) {
    return bad(`The snapshot has version ${String(snapshot.version)}, expected ${VERSION}.`);
  }
  const { sum, heads, last, undone, packed, count } = snapshot;
  if (!isSum(sum) || !(heads instanceof Map) || !(undone instanceof Set) || !Array.isArray(packed)) {
    return bad('The snapshot is damaged: parts of it are missing.');
  }
  if (sum.outfit !== outfit) return bad(`The snapshot is of "${sum.outfit}", expected "${outfit}".`);
  if (!packed.every(isPacked) || packedCount(packed) !== count) {
    return bad('The snapshot is damaged: the number of deeds in it is not the one it names.');
  }
  if (count > 0 && !isRecord(last)) return bad('The snapshot is damaged: its last deed is missing.');
  const trail = { packed, later: [], length: 0, heads, last: last as Deed | undefined, undone };
  return good({ ...emptyProgress(outfit), ...sum, seen: withPhotos(sum.seen, packed), trail });
};
