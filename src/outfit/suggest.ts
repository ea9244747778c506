/**
 * Edits (a letter put in, taken out or changed, or two neighbours swapped) that turn one word into the other, counted
 * up to `limit`; past it, some number above it. Damerau's distance in its optimal string alignment form. Time grows
 * with the shorter of the word and the limit, times the word.
 */
export function edits(a: string, b: string, limit: number): number {
  const past = limit + 1;
  if (Math.abs(a.length - b.length) > limit) return past;
  let earlier: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  let leastOfLast = 0;
  for (let i = 1; i <= a.length; i += 1) {
    // Further from the diagonal than the limit, more letters are put in or taken out than it allows.
    const row: number[] = new Array(b.length + 1).fill(past);
    if (i <= limit) row[0] = i;
    let least = row[0] ?? past;
    for (let j = Math.max(1, i - limit); j <= Math.min(b.length, i + limit); j += 1) {
      const swap = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min((row[j - 1] ?? past) + 1, (last[j] ?? past) + 1, (last[j - 1] ?? past) + swap);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        best = Math.min(best, (earlier[j - 2] ?? past) + 1);
      }
      row[j] = best;
      least = Math.min(least, best);
    }
    if (least > limit && leastOfLast > limit) return past;
    leastOfLast = least;
    earlier = last;
    last = row;
  }
  return last[b.length] ?? past;
}

/** Most edits that a slip of the finger makes in a name, however long. */
const SLIPS = 4;

/** The known name nearest to a mistyped one, if any is near enough to be meant: at most a third of its letters off, and four. */
export function nearest(wanted: string, known: Iterable<string>): string | undefined {
  const limit = Math.min(SLIPS, Math.max(1, Math.floor(wanted.length / 3)));
  let best: string | undefined;
  let least = limit + 1;
  for (const candidate of known) {
    // Only a nearer one is of interest, and of two as near the first.
    const distance = edits(wanted, candidate, least - 1);
    if (distance < least) {
      least = distance;
      best = candidate;
    }
    if (least === 0) break;
  }
  return best;
}
