/** What a comparison found. Times are of one call, in milliseconds. */
export interface Compared {
  /** Our median divided by the median of the reference: 2 means we take twice as long. */
  readonly ratio: number;
  readonly oursMs: number;
  readonly referenceMs: number;
}

/** Long enough for the clock to be exact to about 1 %. */
const SAMPLE_MS = 2;
const WARM_UP_MS = 100;
const PAIRS = 41;
const BUDGET_MS = 5000;

/** One sample: the mean time of so many calls, in ms. */
function sample(work: () => unknown, calls: number): number {
  let found: unknown;
  const start = performance.now();
  for (let call = 0; call < calls; call += 1) found = work();
  const end = performance.now();
  // Looked at, so that no engine may leave the work out.
  if (found === undefined) throw new Error('What is timed must return what it found.');
  return (end - start) / calls;
}

/** Warms the work up and finds how many calls make a sample. */
function callsFor(work: () => unknown): number {
  const end = performance.now() + WARM_UP_MS;
  let one = sample(work, 1);
  while (performance.now() < end)
    one = sample(work, Math.max(1, Math.ceil(SAMPLE_MS / 4 / Math.max(one, 1e-6))));
  return Math.max(1, Math.ceil(SAMPLE_MS / Math.max(one, 1e-6)));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return ((sorted[(sorted.length - 1) >> 1] ?? Number.NaN) + (sorted[sorted.length >> 1] ?? Number.NaN)) / 2;
}

const written = (ms: number): string =>
  ms >= 0.1 ? `${ms.toPrecision(3)} ms` : `${(ms * 1000).toPrecision(3)} µs`;

/**
 * Compares our work with a reference in the same process and prints the ratio of the medians. Runs take turns, and
 * the turn that goes first changes, so that a slow moment of the machine falls on both. Both must do all they have to
 * do in one synchronous call, and return what they found. At least 5 pairs are run, however slow.
 */
export function ratio(name: string, ours: () => unknown, reference: () => unknown): Compared {
  const ourCalls = callsFor(ours);
  const referenceCalls = callsFor(reference);
  const ourTimes: number[] = [];
  const referenceTimes: number[] = [];
  const start = performance.now();
  for (let pair = 0; pair < PAIRS && (pair < 5 || performance.now() - start < BUDGET_MS); pair += 1) {
    if (pair % 2 === 0) ourTimes.push(sample(ours, ourCalls));
    referenceTimes.push(sample(reference, referenceCalls));
    if (pair % 2 === 1) ourTimes.push(sample(ours, ourCalls));
  }
  const oursMs = median(ourTimes);
  const referenceMs = median(referenceTimes);
  const found = { ratio: oursMs / referenceMs, oursMs, referenceMs };
  const times = `ours ${written(oursMs)}, reference ${written(referenceMs)}, ${ourTimes.length} pairs`;
  console.log(`  ${name}: ${found.ratio.toFixed(2)} × reference (${times})`);
  return found;
}
