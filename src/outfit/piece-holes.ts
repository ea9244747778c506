import { buttonholeLength } from '../cloth/buttonhole.ts';
import { fastenings } from '../cloth/fastenings.ts';
import { mm, times } from '../length/length.ts';
import { good } from '../length/result.ts';
import type { Garment, Work } from './outfit.ts';

/**
 * Places of the buttonholes of a work, with their length. Refused as `buttonholeLength` and `fastenings` refuse.
 */
export function holesOf(garment: Garment, work: Extract<Work, { kind: 'buttonholes' }>) {
  const hole = buttonholeLength({ rule: 'flat', ...work.button });
  if (!hole.ok) return hole;
  const folded = garment.works.find(
    (w) => w.kind === 'folded-band' && w.on === work.on && w.edge === work.along,
  );
  // Without a folded band nothing says how wide the lap is; then the hole is not held to any.
  const half = folded?.kind === 'folded-band' ? times(folded.secondTurn, 1 / 2) : mm(1000);
  const made = fastenings({
    first: work.first,
    last: work.last,
    count: work.count,
    ...(work.held === undefined ? {} : { held: work.held }),
    direction: work.direction === 'along' ? 'vertical' : 'horizontal',
    hole: hole.value.length,
    diameter: work.button.diameter,
    outer: half,
    inner: half,
  });
  return made.ok ? good({ hole: hole.value, made: made.value }) : made;
}
