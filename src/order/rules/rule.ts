import type { Source } from '../../cloth/source.ts';
import type { Made } from '../expand/made.ts';
import type { Constraint, StepId } from '../step.ts';
import { whileBasted } from './while-basted.ts';

/** A rule of the order: reads a garment and says what goes before what. Rules are general; none names a garment. */
export interface Rule {
  /** Short name in the words of the trade, shown with every constraint that it finds. */
  readonly id: string;
  readonly source: Source;
  find(made: Made): Iterable<Found>;
}

/** What a rule finds: two steps and the sentence that names what they are about. */
export interface Found {
  readonly before: StepId;
  readonly after: StepId;
  readonly because: string;
  /** Seconds that must pass between the two. */
  readonly wait?: number;
  /** Where this case has a source of its own. */
  readonly source?: Source;
  /** A preference that gives way where it would close a ring of reasons. */
  readonly gives?: true;
}

/** The constraints that a rule finds in a garment; the maker may waive any of them. */
export function* constraintsOf(rule: Rule, made: Made): Iterable<Constraint> {
  for (const found of rule.find(made)) {
    for (const one of whileBasted(made, found)) {
      if (one.before === one.after) continue;
      yield { source: rule.source, ...one, rule: rule.id, waivable: true };
    }
  }
}
