import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readFields } from '../../../src/fields/fields.ts';
import { mm } from '../../../src/length/length.ts';
import { disagreements } from '../../../src/outfit/agreement.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { UNITS, unitCalled } from '../../../src/outfit/units/all.ts';
import type { Unit } from '../../../src/outfit/units/unit.ts';
import { emptyOutfit, garmentOf, MIDDLING, put, refusedAt, soundOrder } from './made-of.ts';

/** Measures that legs and feet ask for, besides those of the upper body. */
const ALL_OVER = {
  ...MIDDLING,
  thigh: 22,
  knee: 15,
  calf: 15,
  ankle: 9,
  heel: 12.5,
  hand: 8.5,
  'waist-to-crotch': 10.5,
  rise: 26,
  'crotch-to-knee': 13,
  'knee-to-floor': 18,
  'foot-length': 9.5,
  ball: 9.5,
};

const RULES = ['in', 'mm'] as const;
const WEARERS = [undefined, ALL_OVER] as const;

/** An outfit with a cloth that stretches besides the one that does not. */
function withStretch(units: 'in' | 'mm', measures: typeof ALL_OVER | undefined): Outfit {
  const outfit = emptyOutfit(units, measures);
  const [lawn] = outfit.cloths;
  const knit = { ...lawn!, id: 'knit', name: 'Knit', stretch: { across: 60, along: 40 }, width: mm(1500) };
  return { ...outfit, cloths: [...outfit.cloths, knit] };
}

const standsAlone = (unit: Unit): boolean =>
  Object.values(unit.places).every((asked) => asked.optional === true);
const required = (unit: Unit): readonly string[] =>
  Object.entries(unit.places).flatMap(([name, asked]) => (asked.optional ? [] : [name]));

/** Where it would be proposed; nothing where a place that it needs is not found. */
function proposedAt(outfit: Outfit, unit: Unit): Record<string, readonly string[]> | undefined {
  const places = suggestPlaces(garmentOf(outfit), unit);
  const found = required(unit).map((name) => [name, places[name] ?? []] as const);
  return found.some(([, place]) => place.length === 0) ? undefined : Object.fromEntries(found);
}

const BODY: readonly Worn[] = [['plain-front'], ['plain-back']];

/** A unit, and what is chosen in it. */
type Worn = readonly [unit: string, entries?: Readonly<Record<string, string>>];

/** Units one after the other, as garments to put the others on: each that stands alone, and some that are put together. */
const GARMENTS: readonly (readonly Worn[])[] = [
  [],
  BODY,
  [...BODY, ['plain-sleeve']],
  [['plain-front', { opens: 'fold' }], ['plain-back']],
  [['princess-front'], ['princess-back']],
  [['puffed-sleeve', { held: 'head' }]],
  ...UNITS.filter(standsAlone).map((unit): readonly Worn[] => [[unit.id]]),
];

const garments = (units: 'in' | 'mm', measures: typeof ALL_OVER | undefined): readonly Outfit[] =>
  GARMENTS.flatMap((ids) => {
    let outfit: Outfit | undefined = withStretch(units, measures);
    for (const [id, entries = {}] of ids) {
      const unit = unitCalled(id)!;
      const at: ReturnType<typeof proposedAt> = outfit && proposedAt(outfit, unit);
      outfit = outfit && at && put(outfit, unit, { at, entries });
    }
    return outfit ?? [];
  });
const worn = RULES.flatMap((units) =>
  WEARERS.map((measures) => ({ units, measures, garments: garments(units, measures) })),
);

describe('every ready-made unit', () => {
  it('has an id of its own, in lower case with hyphens, and stands under its heading', () => {
    const ids = UNITS.map((unit) => unit.id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ids) expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
    const headings = UNITS.map((unit) => unit.group).filter((group, i, all) => group !== all[i - 1]);
    expect(new Set(headings).size).toBe(headings.length);
  });

  it.each(UNITS.map((unit) => [unit.id, unit] as const))('%s says plainly what it is and asks', (_, unit) => {
    expect(unit.name).toMatch(/^[A-Z][^.]*$/);
    expect(unit.tells).toMatch(/^[A-Z].*\.$/);
    for (const field of Object.values(unit.fields)) {
      expect(field.label).toMatch(/^[A-Z]/);
      if (field.means !== undefined) expect(field.means).toMatch(/\.$/);
    }
    for (const asked of Object.values(unit.places))
      if (!asked.optional) expect(asked.like.length).toBeGreaterThan(0);
  });

  it.each(UNITS.map((unit) => [unit.id, unit] as const))('%s is drawn inside its box', (_, unit) => {
    expect(unit.sketch.length).toBeGreaterThanOrEqual(4);
    for (const { points } of unit.sketch) {
      expect(points.length).toBeGreaterThan(1);
      for (const place of points.flat()) {
        expect(place).toBeGreaterThanOrEqual(0);
        expect(place).toBeLessThanOrEqual(100);
      }
    }
  });

  it('looks unlike every other', () => {
    const drawn = UNITS.map((unit) => JSON.stringify(unit.sketch));
    expect(new Set(drawn).size).toBe(drawn.length);
  });

  it.each(UNITS.map((unit) => [unit.id, unit] as const))(
    '%s begins with figures that can be read',
    (_, unit) => {
      for (const units of RULES) expect(readFields(unit.fields, {}, units)).toMatchObject({ ok: true });
    },
  );

  it.each(UNITS.map((unit) => [unit.id, unit] as const))(
    '%s finds its places, and what it makes agrees and can be put in order',
    (_, unit) => {
      const fields = [
        ...Object.keys(unit.fields),
        ...Object.keys(unit.places).map((name) => `at.${name}`),
        ...Object.keys(unit.cloths).map((name) => `cloth.${name}`),
      ];
      for (const { units, measures, garments: some } of worn) {
        let made = 0;
        for (const outfit of some) {
          const at = proposedAt(outfit, unit);
          if (!at) continue;
          const use = { id: 'tried', at };
          // What does not suit this garment is said at a field or a place, never left for later.
          const refused = refusedAt(outfit, unit, use);
          for (const field of refused) expect(fields).toContain(field);
          if (refused.length > 0) continue;
          const whole = put(outfit, unit, use);
          expect(disagreements(whole)).toEqual([]);
          // Measures and rule change figures, never the order: it is looked at once.
          if (units === 'in' && measures) soundOrder(whole);
          made += 1;
        }
        expect(made, `nothing takes it in ${units}${measures ? ', measured' : ''}`).toBeGreaterThan(0);
      }
    },
    60_000,
  );

  it('can be put on one upon the other, as they come', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...GARMENTS),
        fc.array(fc.constantFrom(...UNITS), { minLength: 4, maxLength: 8 }),
        (begun, more) => {
          let outfit = withStretch('in', ALL_OVER);
          const all = [...begun.map(([id]) => unitCalled(id)!), ...more];
          for (const [i, unit] of all.entries()) {
            const at = proposedAt(outfit, unit);
            const use = at && { id: `part-${i}`, at };
            if (use && refusedAt(outfit, unit, use).length === 0) outfit = put(outfit, unit, use);
          }
          soundOrder(outfit);
        },
      ),
      { seed: 11, numRuns: 40 },
    );
  }, 60_000);
});
