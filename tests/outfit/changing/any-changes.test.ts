import fc from 'fast-check';
import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { duplicateGarment, setGarmentWearer } from '../../../src/outfit/changing/garments.ts';
import { putPart, removePart, renameEdge, takeReady } from '../../../src/outfit/changing/parts.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { changeUnit, makeAnew, putOn, takeOff } from '../../../src/outfit/changing/units.ts';
import { putWearer, setAbout } from '../../../src/outfit/changing/whole.ts';
import type { Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { UNITS, unitCalled } from '../../../src/outfit/units/all.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import { changesBetween } from '../../../src/store/changes-between.ts';
import { redescribe } from '../../../src/store/redescribe.ts';
import { bare, made, wrongWith } from './shirt.ts';

/** One thing that a maker does; `pick` takes one of a list. Nothing is done where it is refused. */
type Change = (outfit: Outfit, garment: Garment, pick: <T>(list: readonly T[]) => T | undefined) => Outfit;

const put: Change = (outfit, garment, pick) => {
  const unit = pick(UNITS);
  if (!unit) return outfit;
  const at = suggestPlaces(garment, unit);
  const now = putOn(outfit, garment.id, unit.id, { name: unit.name, entries: {}, at, cloths: {} });
  return now.ok ? now.value.outfit : outfit;
};
const partsOf = ({ pieces, works, joins, gates }: Garment) => [...pieces, ...works, ...joins, ...gates];

const CHANGES: readonly Change[] = [
  put,
  put,
  (outfit, { id, units }, pick) => {
    const use = pick(units);
    return use ? takeOff(outfit, id, use.id).outfit : outfit;
  },
  (outfit, garment, pick) => {
    const part = pick(partsOf(garment));
    return part ? removePart(outfit, garment.id, part.id).outfit : outfit;
  },
  (outfit, { id, pieces }, pick) => {
    const piece = pick(pieces);
    const edge = piece && pick(piece.outline.edges.filter(({ name }) => name !== 'fold'));
    // Any edge can be given a name that no other has.
    return piece && edge ? made(renameEdge(outfit, id, piece.id, edge.name, `${edge.name}-too`)) : outfit;
  },
  (outfit, { id, units }, pick) => {
    const use = pick(units);
    const [name, field] = (use && pick(Object.entries(unitCalled(use.unit)?.fields ?? {}))) ?? [];
    if (!use || name === undefined || !field) return outfit;
    const said =
      field.kind === 'choice' ? (pick(field.options)?.value ?? '') : field.kind === 'number' ? '3' : '80 mm';
    const now = changeUnit(outfit, id, use.id, { entries: { ...use.entries, [name]: said } });
    return now.ok ? now.value.outfit : outfit;
  },
  (outfit, { id, works }, pick) => {
    const work = pick(works);
    return work ? made(putPart(outfit, id, 'works', { ...work, name: `${work.name}, mine` })) : outfit;
  },
  (outfit, { id, units }, pick) => {
    const use = pick(units);
    const now = use && takeReady(outfit, id, use.id);
    return now?.ok ? now.value : outfit;
  },
  (outfit, { id, name }) =>
    outfit.garments.length < 3 ? made(duplicateGarment(outfit, id, { name })).outfit : outfit,
  (outfit) => setAbout(outfit, { units: outfit.units === 'in' ? 'mm' : 'in' }),
  (outfit, { id, wearer }) => {
    const now = setGarmentWearer(outfit, id, wearer === undefined ? 'chorister' : undefined);
    return now.ok ? now.value : outfit;
  },
  (outfit, _, pick) => {
    const [wearer] = outfit.wearers;
    const measures = { ...wearer?.measures, chest: mm(900 + (pick([5, 15, 40, 80]) ?? 0)) };
    const now = wearer && putWearer(outfit, { ...wearer, measures });
    return now?.ok ? now.value : outfit;
  },
  (outfit, { id }) => {
    const once = makeAnew(outfit, id);
    if (!once.ok) return outfit;
    expect(made(makeAnew(once.value, id))).toEqual(once.value);
    return once.value;
  },
];

test('whatever is changed, one thing after the other, the description can be read again and each change is one deed', () => {
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom(...CHANGES), { minLength: 6, maxLength: 14 }),
      fc.infiniteStream(fc.nat(9999)),
      (steps, numbers) => {
        const pick = <T>(list: readonly T[]): T | undefined => list[numbers.next().value % list.length];
        let outfit = bare();
        for (const [i, change] of steps.entries()) {
          const garment = pick(outfit.garments)!;
          const now = i < 4 ? put(outfit, garment, pick) : change(outfit, garment, pick);
          expect(wrongWith(now)).toEqual([]);
          const [was, is] = [writeOutfit(outfit), writeOutfit(now)];
          expect(redescribe(was, changesBetween(was, is))).toEqual({ ok: true, value: is });
          outfit = now;
        }
      },
    ),
    { seed: 41, numRuns: 60 },
  );
}, 120_000);
