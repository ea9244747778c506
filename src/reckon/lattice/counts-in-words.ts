/** More lines than this are not read out one by one. */
const MOST = 80;

/**
 * Counts of lines in order, runs of the same number together: `1: 12 · 2 to 5: 18 · 6: 12`. Nothing where there are
 * too many lines to read.
 */
export function countsInWords(counts: readonly number[]): string | undefined {
  if (counts.length === 0 || counts.length > MOST) return undefined;
  const runs: { from: number; to: number; count: number }[] = [];
  for (const [i, count] of counts.entries()) {
    const last = runs.at(-1);
    if (last && last.count === count) last.to = i + 1;
    else runs.push({ from: i + 1, to: i + 1, count });
  }
  return runs
    .map(({ from, to, count }) => `${from === to ? from : `${from} to ${to}`}: ${count}`)
    .join(' · ');
}
