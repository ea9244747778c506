import type { Deed } from './deed.ts';

/** Taps of one line by one device, one after the other, written short: tens of thousands must open in no time. */
export interface TapRun {
  readonly outfit: string;
  readonly device: string;
  /** Number of the first tap; the others follow by one. */
  readonly seq: number;
  readonly step: string;
  readonly item: string;
  readonly add: number;
  /** Clock reading of the first tap, then what passed from each to the next, all in ms. */
  readonly clock: number[];
}

/** A deed as it is, or a run of taps. */
export type Packed = Deed | TapRun;

/** Whether a row is a run of taps. */
export const isRun = (row: Packed): row is TapRun => 'clock' in row;

/** Writes deeds short, in the order they come in. Only taps that lie next to each other are taken together. */
export const pack = (deeds: Iterable<Deed>): Packed[] => {
  const rows: Packed[] = [];
  let run: TapRun | undefined;
  let clock = 0;
  for (const deed of deeds) {
    const { act, at, device, outfit, seq } = deed;
    if (act.kind !== 'tap' || deed.place !== undefined) {
      rows.push(deed);
      run = undefined;
      continue;
    }
    const { step, item, add } = act;
    const goesOn =
      run !== undefined &&
      run.seq + run.clock.length === seq &&
      run.item === item &&
      run.step === step &&
      run.add === add &&
      run.device === device &&
      run.outfit === outfit;
    if (run !== undefined && goesOn) run.clock.push(at - clock);
    else {
      run = { outfit, device, seq, step, item, add, clock: [at] };
      rows.push(run);
    }
    clock = at;
  }
  return rows;
};

const unpackRun = (run: TapRun): Deed[] => {
  const { outfit, device, step, item, add } = run;
  let at = 0;
  return run.clock.map((passed, i) => {
    at += passed;
    const seq = run.seq + i;
    return { id: `${device}-${seq}`, device, seq, at, outfit, act: { kind: 'tap', step, item, add } };
  });
};

/** The deeds that were packed, in their order; the other way round of {@link pack}. */
export const unpack = (rows: readonly Packed[]): Deed[] =>
  rows.flatMap((row) => (isRun(row) ? unpackRun(row) : [row]));

/** How many deeds are packed in these rows. */
export const packedCount = (rows: readonly Packed[]): number =>
  rows.reduce((sum, row) => sum + (isRun(row) ? row.clock.length : 1), 0);
