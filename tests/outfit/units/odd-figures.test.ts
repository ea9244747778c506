import { expect, test } from 'vitest';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { UNITS } from '../../../src/outfit/units/all.ts';
import { bare, garmentOf, only, put, wrongWith } from '../changing/shirt.ts';

/** What nobody means, by kind of field: nothing, below nothing, a hair, and lengths of a street. */
const ODD = {
  length: ['0', '-5', '0.001 mm', '20000 in', '9.99 m'],
  number: ['0', '-5', '0.001', '999999999', '2.5'],
  choice: ['constructor'],
  lines: ['', 'x'.repeat(200), '1 '.repeat(90)],
};

/** The outfit with a cloth that stretches too. */
const withKnit = (outfit: Outfit): Outfit => ({
  ...outfit,
  cloths: [
    ...outfit.cloths,
    { ...outfit.cloths[0]!, id: 'knit', name: 'Knit', stretch: { across: 60, along: 40 } },
  ],
});

/** Garments that between them have a place for every unit. */
const GARMENTS = [
  bare(),
  garmentOf('plain-front', 'plain-back', 'plain-sleeve'),
  ...UNITS.filter(({ places }) => Object.values(places).every(({ optional }) => optional)).flatMap(
    ({ id }) => {
      const alone = putOn(bare(), 'shirt', id, { name: id, entries: {}, at: {}, cloths: {} });
      return alone.ok ? alone.value.outfit : [];
    },
  ),
  put(bare(), 'puffed-sleeve', { entries: { held: 'head' } }),
];

test.each(UNITS.map((unit) => [unit.id, unit] as const))(
  'odd figures in %s are refused where they stand, or make what can be read again',
  (id, unit) => {
    const needed = Object.entries(unit.places).flatMap(([name, asked]) => (asked.optional ? [] : [name]));
    const found = GARMENTS.map((outfit) => ({ outfit, at: suggestPlaces(only(outfit), unit) }));
    const somewhere = found.find(({ at }) => needed.every((name) => at[name]));
    if (!somewhere) throw new Error(`nothing takes ${id}`);
    const { at } = somewhere;
    const outfit = withKnit(somewhere.outfit);
    for (const [field, { kind }] of Object.entries(unit.fields)) {
      for (const odd of ODD[kind]) {
        const made = putOn(outfit, 'shirt', id, { name: '襟 🧵', entries: { [field]: odd }, at, cloths: {} });
        if (made.ok) expect(wrongWith(made.value.outfit), `${field}: ${odd}`).toEqual([]);
        else expect(made.error.flatMap(({ faults }) => faults).length, `${field}: ${odd}`).toBeGreaterThan(0);
      }
    }
  },
  30_000,
);
