import { practice } from '../../cloth/source.ts';
import { lower } from '../../outfit/lower.ts';
import type { Made, Subject } from '../expand/made.ts';
import { kindOf } from '../kinds.ts';
import type { Constraint, StepId } from '../step.ts';
import type { Web } from '../web.ts';

const RULE = 'tack the shape, then decorate';

/**
 * Pieces that are tacked for a try-on have their tucks and folds by then; nothing else that can wait is done to them until
 * the tacking is out again.
 *
 * Adds to the web as it goes, and
 * only what makes no loop.
 */
export function tackTheShape(
  made: Made,
  web: Web,
  isWaived: (c: Constraint) => boolean,
): readonly Constraint[] {
  const found: Constraint[] = [];
  const put = (before: StepId, after: StepId, because: string) => {
    if (web.leads(after, before)) return;
    const constraint: Constraint = { before, after, rule: RULE, because, source: practice, waivable: true };
    found.push(constraint);
    if (!isWaived(constraint)) web.add(constraint);
  };
  for (const gate of made.garment.gates) {
    const tacking = made.subjects.get(gate.id);
    if (!tacking || gate.tack.length === 0 || gate.trial) continue;
    const touching = [...made.subjects.values()].filter(
      (other) => other.kind !== 'gate' && other.pieces.some((piece) => tacking.pieces.includes(piece)),
    );
    for (const other of touching) {
      if (!shapes(made, other)) continue;
      put(
        other.last,
        tacking.first,
        `${other.name} gives the pieces their shape, so it comes before they are tacked together`,
      );
    }
    for (const other of touching) {
      if (shapes(made, other)) continue;
      if (web.leads(other.first, tacking.last)) {
        put(
          other.last,
          tacking.first,
          `${other.name} comes before ${lower(gate.name)}, so it is not done in tacked cloth`,
        );
      } else {
        put(tacking.last, other.first, `the tacking of ${lower(gate.name)} comes out before ${other.name}`);
      }
    }
  }
  return found;
}

/** What gives a piece its size: cutting, tucks and folds, and the stay-stitching that keeps it. */
function shapes(made: Made, subject: Subject): boolean {
  if (subject.kind === 'piece') return true;
  const work = made.garment.works.find((candidate) => candidate.id === subject.id);
  return work !== undefined && (kindOf(work).takesUp || work.kind === 'stay-stitch');
}
