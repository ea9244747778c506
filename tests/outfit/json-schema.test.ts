import { readFileSync, writeFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { demoData, demos } from './demo-files.ts';
import { fieldsOf, jsonSchema, wordsFor } from './json-schema.ts';
import { WORDS } from './schema-words.ts';
import { change } from './spoil.ts';

const file = new URL('../../public/outfit.schema.json', import.meta.url);
const command = 'UPDATE_SCHEMA=1 npx vitest run --project core tests/outfit/json-schema.test.ts';

const written = `${JSON.stringify(jsonSchema(), null, 2)}\n`;
if (process.env.UPDATE_SCHEMA === '1') writeFileSync(file, written);

describe('the JSON Schema', () => {
  test('in public/ is up to date', () => {
    const kept = readFileSync(file, 'utf8');
    expect(
      kept === written,
      `public/outfit.schema.json is out of date; write it again with: ${command}`,
    ).toBe(true);
  });

  test('has a word on every field, and no word on what is none', () => {
    const found = [...fieldsOf(JSON.parse(written))].map(([of, name]) => wordsFor(of, name));
    expect(found.filter(([, words]) => words === undefined).map(([key]) => key)).toEqual([]);
    const used = new Set(found.map(([key]) => key));
    expect(Object.keys(WORDS).filter((key) => !used.has(key))).toEqual([]);
    expect(found.length).toBeGreaterThan(200);
  });

  // Another library reads what is really in public/, so this also holds for an editor that follows `$schema`.
  const check = new Ajv({ strict: false, validateFormats: false }).compile(
    JSON.parse(readFileSync(file, 'utf8')),
  );

  test.each(demos)('holds for %s, which says where to find it', (name) => {
    const data = demoData(name);
    expect(check(data), JSON.stringify(check.errors)).toBe(true);
    expect(data).toHaveProperty('$schema', '../public/outfit.schema.json');
    const from = new URL(`../../demo-data/${name}.json`, import.meta.url);
    expect(new URL('../public/outfit.schema.json', from).href).toBe(file.href);
  });

  test.each([
    ['a missing date', '/event/date', undefined],
    ['another format', '/format', 'something-else'],
    ['a number for a length', '/cloths/0/width', 54],
    ['an id with a capital', '/garments/0/id', 'Shirt'],
    ['an unknown cut', '/garments/0/pieces/0/cut', 'triple'],
    ['an edge without its piece', '/garments/0/joins/0/this/0', 'shoulder'],
    ['an unknown kind of work', '/garments/0/works/0/kind', 'smocking'],
    ['too few edges', '/garments/0/pieces/0/outline/edges', []],
  ])('refuses %s', (_, at, value) => {
    expect(check(change(demoData('plain-shirt'), at, value))).toBe(false);
  });
});
