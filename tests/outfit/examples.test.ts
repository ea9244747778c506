import { readdirSync, readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import { fresh, runningOrder } from '../../src/order/running.ts';
import { spell } from '../../src/outfit/chains.ts';
import { readHandWritten } from '../../src/outfit/hand-written.ts';
import { lengthsFit } from '../../src/outfit/lengths-fit.ts';
import { writeProblem } from '../../src/outfit/problem.ts';
import { rawEdges } from '../../src/outfit/raw-edges.ts';
import { readOutfit } from '../../src/outfit/reading.ts';

const folder = new URL('../../public/examples/', import.meta.url);
const names = readdirSync(folder);
const schema = JSON.parse(readFileSync(new URL('../outfit.schema.json', folder), 'utf8'));
const check = new Ajv({ strict: false, validateFormats: false }).compile(schema);

test('there are three examples of files by hand', () => {
  expect(names).toEqual(['gathered-skirt.jsonc', 'small-blouse.jsonc', 'stretch-legs.jsonc']);
});

describe.each(names)('%s', (name) => {
  const text = readFileSync(new URL(name, folder), 'utf8');
  const written = readHandWritten(text);
  if (!written.ok) throw new Error(`${written.error.line}: ${written.error.say}`);
  const read = readOutfit(written.value.value);
  if (!read.ok) throw new Error(read.error.map(writeProblem).join('\n'));
  const outfit = read.value;

  test('explains itself in comments and says that it is invented', () => {
    expect(text.match(/\/\/ /g)?.length).toBeGreaterThan(4);
    expect(outfit.invented).toBe(true);
    expect(text.split('\n').every((line) => line.length <= 200)).toBe(true);
  });

  test('keeps to the JSON Schema that it names', () => {
    expect(check(written.value.value), JSON.stringify(check.errors)).toBe(true);
    expect(written.value.value).toHaveProperty('$schema', '../outfit.schema.json');
  });

  test('has edges that fit each other', () => {
    const fits = outfit.garments.flatMap((garment) => lengthsFit(outfit, garment, { unit: 'mm', step: 1 }));
    expect(fits.length).toBeGreaterThan(0);
    const off = fits.filter(({ within }) => !within);
    expect(off.map(({ say }) => say)).toEqual([]);
  });

  test('leaves no edge raw', () => {
    const raw = outfit.garments.flatMap((garment) => rawEdges(garment).map(spell));
    expect(raw).toEqual([]);
  });

  test('can be sewn: every step comes once, the try-on among them', () => {
    const running = runningOrder(outfit, fresh);
    if (!running.ok) throw new Error(running.error.say);
    const { sequence, steps } = running.value;
    expect(sequence.length).toBeGreaterThan(15);
    expect(new Set(sequence).size).toBe(steps.size);
    expect([...steps.values()].some(({ setUp }) => setUp.station === 'try-on')).toBe(true);
  });
});
