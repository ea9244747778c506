import { practice } from '../../cloth/source.ts';
import type { Made, Subject } from '../expand/made.ts';
import { kindOf } from '../kinds.ts';
import type { Constraint, Step } from '../step.ts';
import type { Web } from '../web.ts';

const RULE = 'try on before what cannot be undone';

/**
 * Try-ons stand before slits, trims, hems and costly decoration of their garment, unless these must come before the try-on.
 *
 * Adds to the web as it goes, so no loop can arise.
 */
export function tryOnsFirst(
  made: Made,
  web: Web,
  isWaived: (c: Constraint) => boolean,
): readonly Constraint[] {
  const found: Constraint[] = [];
  for (const gate of made.garment.gates) {
    const subject = made.subjects.get(gate.id);
    if (!subject) continue;
    const earlier = new Set([...web.before(subject.first), ...web.before(subject.last)]);
    for (const other of made.subjects.values()) {
      const [step] = dreaded(made, other);
      if (!step || other.id === gate.id || earlier.has(step.id)) continue;
      const constraint: Constraint = {
        before: subject.last,
        after: step.id,
        rule: RULE,
        because: isCostly(made, other)
          ? `${gate.name.toLowerCase()} comes first: ${other.name} would cost days to do again`
          : isEdge(made, other)
            ? `${gate.name.toLowerCase()} comes first: the fit decides where ${other.name} lies`
            : `${gate.name.toLowerCase()} comes first: this cannot be undone`,
        source: practice,
        waivable: true,
      };
      found.push(constraint);
      if (!isWaived(constraint)) web.add(constraint);
    }
  }
  return found;
}

const isCostly = (made: Made, subject: Subject): boolean =>
  made.garment.works.some(
    (work) => work.id === subject.id && kindOf(work).costly && work.kind !== 'buttonholes',
  );

/** A hem or a casing is turned where the fit wants it. */
const isEdge = (made: Made, subject: Subject): boolean =>
  made.garment.works.some(
    (work) => work.id === subject.id && (work.kind === 'hem' || work.kind === 'casing'),
  );

/** The steps of a subject that a maker would rather not do before the fit is known, the first one first. */
function dreaded(made: Made, subject: Subject): readonly Step[] {
  if (subject.kind === 'piece') return [];
  if (isCostly(made, subject) || isEdge(made, subject)) return subject.steps;
  return subject.steps.filter((step) => step.final);
}
