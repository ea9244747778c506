import type { Refusal } from '../../src/cloth/refusal.ts';
import type { Result } from '../../src/length/index.ts';

/** The value of a result that must be good. */
export function made<T>(result: Result<T, Refusal>): T {
  if (!result.ok) throw new Error(`${result.error.field}: ${result.error.wrong} ${result.error.cure}`);
  return result.value;
}
