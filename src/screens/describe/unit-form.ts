import { useMemo } from 'preact/hooks';
import { type Entries, type Field, startOf } from '../../fields/fields.ts';
import { bad, type Result } from '../../length/result.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { suggestPlaces } from '../../outfit/changing/suggest-places.ts';
import { changeUnit, putOn, takeOff, type UnitFault, type UnitsMade } from '../../outfit/changing/units.ts';
import type { Garment, Outfit, UnitUse } from '../../outfit/outfit.ts';
import type { Proposal, Putting, Unit } from '../../outfit/units/unit.ts';
import { markingOf } from '../choices.ts';
import { useDraft } from './drafts.ts';

/** A unit as its form has it now, and what it would come to. */
export interface UnitForm {
  readonly putting: Omit<Putting, 'id'>;
  /** The garment without this unit. */
  readonly garment: Garment;
  /** Lengths are read and shown in the outfit's own rule, for so they stand in its file. */
  readonly marking: Marking;
  readonly proposed: Readonly<Record<string, Proposal>>;
  readonly made: Result<UnitsMade, readonly UnitFault[]>;
  /** Why this unit cannot be made, by its fields, `at.<place>` and `cloth.<name>`. */
  readonly faults: ReadonlyMap<string, string>;
  /** What other units could not be made with it. */
  readonly others: readonly UnitFault[];
  /** Something stands in the form that is not in the outfit. */
  readonly touched: boolean;
  /** What stands in a field. */
  readonly text: (name: string, field: Field) => string;
  readonly put: (now: Partial<Omit<Putting, 'id'>>) => void;
  readonly clear: () => void;
}

type Kept = Readonly<Record<string, unknown>>;

function readKept(text: string | undefined): Kept | undefined {
  if (text === undefined) return undefined;
  try {
    const found: unknown = JSON.parse(text);
    return typeof found === 'object' && found !== null ? (found as Kept) : undefined;
  } catch {
    return undefined;
  }
}

const isText = (one: unknown): one is string => typeof one === 'string';

const texts = (kept: Kept | undefined): Entries | undefined =>
  kept && Object.fromEntries(Object.entries(kept).filter((one): one is [string, string] => isText(one[1])));

const lists = (kept: Kept | undefined): Putting['at'] | undefined =>
  kept &&
  Object.fromEntries(
    Object.entries(kept).filter(
      (one): one is [string, string[]] => Array.isArray(one[1]) && one[1].every(isText),
    ),
  );

/** A name that no unit of the garment has yet: `Cuff`, else `Cuff 2`. */
export function freshName(garment: Garment, name: string): string {
  const taken = new Set(garment.units.map((use) => use.name));
  let found = name;
  for (let n = 2; taken.has(found); n += 1) found = `${name} ${n}`;
  return found;
}

/** What is proposed, as the maker would write it into the field; its unit stands beside it already. */
export function proposalText({ value }: Proposal, field: Field, marking: Marking): string {
  if (typeof value === 'string') return value;
  if (field.kind !== 'length') return String(Math.round(value * 100) / 100);
  const { text, unit } = writeLength(value as Parameters<typeof writeLength>[0], marking);
  return text.slice(0, -unit.length).trim();
}

/** The rule that an outfit is described in. */
export const ruleOf = (outfit: Outfit): Marking => markingOf(outfit.units);

function make(
  outfit: Outfit,
  garment: string,
  unit: Unit,
  use: UnitUse | undefined,
  putting: Omit<Putting, 'id'>,
): UnitForm['made'] {
  try {
    return use ? changeUnit(outfit, garment, use.id, putting) : putOn(outfit, garment, unit.id, putting);
  } catch {
    // A slip of the program must not take the form away.
    const [field = ''] = Object.keys(unit.fields);
    const say = 'It cannot be drawn with these figures together; try figures nearer to those proposed.';
    return bad([{ garment, unit: use?.id ?? '', name: putting.name, faults: [{ field, say }] }]);
  }
}

/** The form of a unit being put on, or of `use` being changed; what is typed is kept until it is put on. */
export function useUnitForm(
  outfit: Outfit,
  whole: Garment,
  unit: Unit,
  use: UnitUse | undefined,
  /** The edge that it is meant for, as `piece.edge`, where one was touched. */
  edge?: string,
): UnitForm {
  const where = use ? `unit/${use.id}` : `add/${unit.id}${edge === undefined ? '' : `/${edge}`}`;
  const draft = useDraft(`${outfit.id}/garment/${whole.id}/${where}`);
  const { name, entries, at, cloths } = draft.written.value;
  const garment = useMemo(() => {
    if (!use) return whole;
    const without = takeOff(outfit, whole.id, use.id).outfit;
    return without.garments.find(({ id }) => id === whole.id) ?? whole;
  }, [outfit, whole, use]);
  const base = useMemo<Omit<Putting, 'id'>>(
    () =>
      use ?? {
        name: freshName(whole, unit.name),
        entries: {},
        at: suggestPlaces(whole, unit, edge),
        cloths: {},
      },
    [whole, unit, use],
  );
  const putting = useMemo<Omit<Putting, 'id'>>(
    () => ({
      name: name ?? base.name,
      entries: texts(readKept(entries)) ?? base.entries,
      at: lists(readKept(at)) ?? base.at,
      cloths: texts(readKept(cloths)) ?? base.cloths,
    }),
    [base, name, entries, at, cloths],
  );
  const proposed = useMemo(() => {
    try {
      return unit.propose({ outfit, garment }, { id: use?.id ?? unit.id, ...putting });
    } catch {
      return {};
    }
  }, [outfit, garment, unit, putting]);
  const made = useMemo(() => make(outfit, whole.id, unit, use, putting), [outfit, whole, unit, use, putting]);
  const marking = useMemo(() => ruleOf(outfit), [outfit.units]);
  const all = made.ok ? [] : made.error;
  const own = all.filter((one) => one.unit === (use?.id ?? '') && one.garment === whole.id);
  return {
    putting,
    garment,
    marking,
    proposed,
    made,
    faults: new Map(own.flatMap(({ faults }) => faults.map(({ field, say }) => [field, say]))),
    others: all.filter((one) => !own.includes(one)),
    touched: [name, entries, at, cloths].some((one) => one !== undefined),
    text(field, told) {
      const stands = proposed[field];
      return (
        putting.entries[field] ?? (stands ? proposalText(stands, told, marking) : startOf(told, marking.unit))
      );
    },
    put(now) {
      if (now.name !== undefined) draft.write('name', now.name);
      if (now.entries) draft.write('entries', JSON.stringify(now.entries));
      if (now.at) draft.write('at', JSON.stringify(now.at));
      if (now.cloths) draft.write('cloths', JSON.stringify(now.cloths));
    },
    clear: draft.clear,
  };
}
