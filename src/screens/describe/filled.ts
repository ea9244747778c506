import type { Length } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import { exactLength } from '../../outfit/spelling.ts';
import { turnLength } from '../reckoner/turn-length.ts';
import { useDraft, type Written } from './drafts.ts';

/** Under this name a form keeps the rule that its lengths were written under. */
const RULE = ' rule';

/** A form about something that is there already: what was written in it, and under that what stands. */
export interface Filled {
  /** What a field shows; a length keeps its meaning where the rule was changed since it was written. */
  readonly text: (name: string) => string;
  readonly write: (name: string, text: string) => void;
  /** Names of the fields that show something else than what stands. */
  readonly changed: readonly string[];
  readonly clear: () => void;
}

/** A length for a field that has the unit beside it: `4 3/8`, or with its unit where that is another. */
export function fieldLength(length: Length, unit: ReadingUnit): string {
  const text = exactLength(length, unit);
  return text.endsWith(` ${unit}`) ? text.slice(0, -unit.length - 1) : text;
}

/** A form whose fields begin with what stands; what is written survives closing, until it is kept. */
export function useFilled(
  key: string,
  stands: Written,
  unit: ReadingUnit,
  lengths: readonly string[],
): Filled {
  const draft = useDraft(key);
  const written = draft.written.value;
  const before: ReadingUnit = written[RULE] === 'in' || written[RULE] === 'mm' ? written[RULE] : unit;
  const now = (name: string): string | undefined => {
    const own = written[name];
    return own === undefined || !lengths.includes(name) ? own : turnLength(own, before, unit);
  };
  const text = (name: string): string => now(name) ?? stands[name] ?? '';
  return {
    text,
    write: (name, to) => {
      if (before !== unit) for (const other of Object.keys(written)) draft.write(other, now(other) ?? '');
      draft.write(RULE, unit);
      draft.write(name, to);
    },
    changed: Object.keys(written).filter(
      (name) => name !== RULE && text(name).trim() !== (stands[name] ?? '').trim(),
    ),
    clear: draft.clear,
  };
}
