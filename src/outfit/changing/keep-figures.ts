import type { Field } from '../../fields/fields.ts';
import { startOf } from '../../fields/fields.ts';
import type { Length } from '../../length/length.ts';
import { readLength } from '../../length/reading.ts';
import type { Garment, Outfit, UnitUse } from '../outfit.ts';
import { exactLength } from '../spelling.ts';
import { unitCalled } from '../units/all.ts';
import type { Proposal } from '../units/unit.ts';
import { garmentIn, withGarment } from './part-lists.ts';

type Proposed = Readonly<Record<string, Proposal>>;

/** What counts in a field: what was written, else what is proposed, else what stands there first; lengths as lengths. */
function standing(
  field: Field,
  written: string | undefined,
  proposed: Proposal | undefined,
  unit: Outfit['units'],
): Length | number | string {
  if (written === undefined && proposed) return proposed.value;
  const text = written ?? startOf(field, unit);
  if (field.kind !== 'length') return text;
  const read = readLength(text, unit);
  return read.ok ? read.value : text;
}

const spelled = (field: Field, value: Length | number | string, unit: Outfit['units']): string =>
  // A length field's figure is a length wherever it could be read.
  field.kind === 'length' && typeof value === 'number' ? exactLength(value as Length, unit) : String(value);

function kept(before: Outfit, was: Garment, after: Outfit, now: Garment, use: UnitUse): UnitUse {
  const unit = unitCalled(use.unit);
  if (!unit) return use;
  const [had, has]: readonly [Proposed, Proposed] = [
    unit.propose({ outfit: before, garment: was }, use),
    unit.propose({ outfit: after, garment: now }, use),
  ];
  const entries: Record<string, string> = { ...use.entries };
  for (const [name, field] of Object.entries(unit.fields)) {
    const written = use.entries[name];
    const old = standing(field, written, had[name], before.units);
    if (old === standing(field, written, has[name], after.units)) continue;
    entries[name] = spelled(field, old, before.units);
  }
  return { ...use, entries };
}

/**
 * The outfit after a change that is to leave a garment's figures alone: where a field would now say something else (an
 * inch is taken for a number without a unit, a measure is gone), what it said is written into it.
 */
export function keepFigures(before: Outfit, after: Outfit, garment: string): Outfit {
  const [was, now] = [garmentIn(before, garment), garmentIn(after, garment)];
  if (!was || !now) return after;
  const units = now.units.map((use) => kept(before, was, after, now, use));
  return withGarment(after, { ...now, units });
}
