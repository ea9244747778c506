/** A part of a run, from 0 at its start to 1 at its end. */
export type Span = readonly [from: number, to: number];

/** Less than this part of a run is no more than rounding. */
const SLIGHT = 1e-6;

/** How much of the run these spans cover together. */
export function covered(spans: readonly Span[]): number {
  const [only] = spans;
  if (!only) return 0;
  if (spans.length === 1) return tidy(only[1] - only[0]);
  let sum = 0;
  let reached = 0;
  for (const [from, to] of spans.toSorted((a, b) => a[0] - b[0])) {
    sum += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return tidy(sum);
}

const tidy = (part: number): number => (part > 1 - SLIGHT ? 1 : part);

/** True where a span has more than a point in common with one of these. */
export const overlaps = (span: Span, others: readonly Span[]): boolean =>
  others.some(([from, to]) => Math.min(span[1], to) - Math.max(span[0], from) > SLIGHT);

/** The span so far to either side of a place; on a ring it goes on at the other end. */
export function around(place: number, reach: number, ring: boolean): readonly Span[] {
  const [from, to] = [place - reach, place + reach];
  const spans: Span[] = [[Math.max(0, from), Math.min(1, to)]];
  if (ring && from < 0) spans.push([Math.max(0, 1 + from), 1]);
  if (ring && to > 1) spans.push([0, Math.min(1, to - 1)]);
  return spans;
}
