import type { Change } from './describe-change.ts';

/** The changes that make one description of another: made in this order they give exactly `now`. Few and small where little differs. */
export function changesBetween(_was: unknown, _now: unknown): readonly Change[] {
  throw new Error('not yet');
}
