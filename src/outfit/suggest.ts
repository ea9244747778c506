/**
 * Edits (a letter put in, taken out or changed, or two neighbours swapped) that turn one word into the other, counted
 * up to `limit`. Damerau's distance in its optimal string alignment form; quadratic in the lengths.
 */
export function edits(a: string, b: string, limit: number): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let earlier: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i += 1) {
    const row = [i];
    for (let j = 1; j <= b.length; j += 1) {
      const swap = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((row[j - 1] ?? 0) + 1, (last[j] ?? 0) + 1, (last[j - 1] ?? 0) + swap);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, (earlier[j - 2] ?? 0) + 1);
      }
      row.push(best);
    }
    earlier = last;
    last = row;
  }
  return last[b.length] ?? limit + 1;
}

/** The known name nearest to a mistyped one, if any is near enough to be meant: at most a third of its letters off. */
export function nearest(wanted: string, known: Iterable<string>): string | undefined {
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  let best: string | undefined;
  let least = limit + 1;
  for (const candidate of known) {
    const distance = edits(wanted, candidate, limit);
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}
