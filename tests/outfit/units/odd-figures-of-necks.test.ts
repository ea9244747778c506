import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Field } from '../../../src/fields/fields.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import { UNITS } from '../../../src/outfit/units/all.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import { put, refusedAt } from './made-of.ts';
import { HEM, NECK, plainBody } from './plain-body.ts';

const AT: Readonly<Record<string, readonly string[]>> = {
  opening: ['front.opening'],
  on: ['front'],
  seam: ['shoulder'],
  neck: NECK,
  edge: HEM,
};
const GROUPS = ['Front and fastening', 'Frills', 'Neck and collar'];

/** What a finger may slip to in a field. */
const slip = (field: Field): fc.Arbitrary<string> =>
  field.kind === 'choice'
    ? fc.constantFrom(...field.options.map(({ value }) => value))
    : field.kind === 'number'
      ? fc.constantFrom('0', '-1', '0.3', '2', '3.5', '7', '400', '999999')
      : fc.constantFrom('0', '-3', '0.01', '1', '5', '12', '25', '60', '150', '1200', '900000');

test.each(UNITS.filter((unit) => GROUPS.includes(unit.group)).map((unit) => [unit.id, unit] as const))(
  '%s refuses odd figures at a field, or makes what a file can hold',
  (_, unit) => {
    const at = Object.fromEntries(
      Object.keys(unit.places).flatMap((name) => (AT[name] ? [[name, AT[name]] as const] : [])),
    );
    const known = [
      ...Object.keys(unit.fields),
      ...Object.keys(unit.places).map((name) => `at.${name}`),
      'cloth.main',
    ];
    const entries = fc.record(
      Object.fromEntries(Object.entries(unit.fields).map(([name, field]) => [name, slip(field)])),
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(entries, (written) => {
        const use = { at, entries: written as Record<string, string> };
        const refused = refusedAt(plainBody(), unit, use);
        for (const field of refused) expect(known).toContain(field);
        if (refused.length === 0)
          expect(readOutfit(writeOutfit(put(plainBody(), unit, use)))).toMatchObject({ ok: true });
      }),
      { seed: 11, numRuns: 80 },
    );
  },
  30_000,
);
