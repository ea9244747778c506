import { type Length, NM_PER_INCH, NM_PER_MM, nm } from './length.ts';
import { writeLength } from './writing.ts';

const SIXTEENTHS = 16;

/**
 * A length in a sentence, for makers of either rule: `120 mm (4 3/4 in)`, in whole millimetres and in sixteenths.
 * @param to which mark of each rule is taken where it lies between two: the nearest if not said; `up` or `down` for a limit
 *   that the written figure must keep as well, with no mark beyond it
 */
export function inBothRules(length: Length, to: 'nearest' | 'up' | 'down' = 'nearest'): string {
  const round = { nearest: Math.round, up: Math.ceil, down: Math.floor }[to];
  const at = (step: number): Length => nm(round(length / step) * step);
  const metric = writeLength(at(NM_PER_MM), { unit: 'mm', step: 1 }).text;
  const inch = writeLength(at(NM_PER_INCH / SIXTEENTHS), { unit: 'in', per: SIXTEENTHS }).text;
  return `${metric} (${inch})`;
}
