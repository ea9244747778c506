import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { outfitSchema } from '../../src/outfit/schema.ts';
import { type Form, filled, kindsOf, partForm } from '../../src/outfit/schema-filling.ts';
import { demoData } from './demo-files.ts';
import { small } from './small.ts';

const whole = outfitSchema as unknown as Form;
/** The form of a place in the small file. */
const formAt = (...path: readonly (string | number)[]): Form => {
  let [form, here]: [Form | undefined, unknown] = [whole, small()];
  for (const key of path) {
    form = partForm(form, key, here);
    here = (here as Record<string | number, unknown>)[key];
  }
  return form!;
};

describe('what is filled in for looking at the rest', () => {
  test('is let pass by the schema, wherever it stands', () => {
    let count = 0;
    const whole = outfitSchema as unknown as Form;
    const forms = (form: Form | undefined, thing: unknown): void => {
      if (!form) return;
      count += 1;
      const put = filled(form, () => `made-${count}`);
      expect(
        v.safeParse(form as unknown as v.GenericSchema, put, { abortPipeEarly: true }).issues,
      ).toBeUndefined();
      if (typeof thing !== 'object' || thing === null) return;
      for (const [key, part] of Object.entries(thing)) forms(partForm(form, key, thing), part);
    };
    for (const name of ['plain-shirt', 'harbour-clockmaker'] as const) forms(whole, demoData(name));
    expect(count).toBeGreaterThan(1000);
  });
});

test('every kind of work is known by its word', () => {
  expect(kindsOf(formAt('garments', 0, 'works', 0))).toEqual(expect.arrayContaining(['tucks', 'hem', 'own']));
});

test('a part of a work is that of its kind', () => {
  expect(formAt('garments', 0, 'works', 0, 'edge')).toBeDefined();
  expect(partForm(formAt('garments', 0, 'works', 0), 'turn', { kind: 'gather' })).toBeUndefined();
  expect(partForm(formAt('garments', 0, 'works', 0), 'turn', { kind: 'hem' })).toBeDefined();
  expect(partForm(whole, 'constructor', {})).toBeUndefined();
});
