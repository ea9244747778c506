import { expect, test } from 'vitest';
import { MendedCopy } from '../../src/outfit/mending.ts';
import { outfitSchema } from '../../src/outfit/schema.ts';
import type { Form } from '../../src/outfit/schema-filling.ts';
import { small } from './small.ts';

const copyOf = (raw: unknown): MendedCopy | undefined => MendedCopy.of(raw, outfitSchema as unknown as Form);
const mistake = (...path: readonly (string | number)[]) => ({ path, type: 'string', expected: 'string' });
const G = ['garments', 0] as const;

test('nothing is mended in what is no thing', () => {
  for (const raw of [undefined, null, 5, 'outfit', []]) expect(copyOf(raw)).toBeUndefined();
});

test('what is put in is known, with what lies in it and round it, and the file is left as it was', () => {
  const raw = small();
  const copy = copyOf(raw)!;
  expect(copy.mend(mistake(...G, 'pieces', 0))).toBe(true);
  expect(copy.inside([...G, 'pieces', 0, 'id'])).toBe(true);
  expect(copy.inside([...G, 'pieces'])).toBe(false);
  expect(copy.touches([...G, 'pieces'])).toBe(true);
  expect(copy.touches([...G, 'pieces', 1])).toBe(false);
  expect(copy.invented(copy.at([...G, 'pieces', 0, 'id']) as string)).toBe(true);
  expect(copy.invented('front')).toBe(false);
  expect(raw).toEqual(small());
});

test('a name made up is none that stands in the file', () => {
  const copy = copyOf({ ...small(), about: 'q0z and q1z1' })!;
  copy.mend(mistake('id'));
  expect(copy.at(['id'])).toMatch(/^q2z/);
});

test('what stands under a mistyped name goes to the one that was meant, and its place is still known', () => {
  const { garments, ...rest } = small();
  const copy = copyOf({ ...rest, garmets: garments })!;
  expect(copy.unused([])).toEqual(['garmets']);
  expect(copy.take([], 'garmets')).toBeUndefined();
  expect(copy.at([...G, 'id'])).toBe('shirt');
  expect(copy.placeIn('/garments/0/id')).toBe('/garmets/0/id');
  expect(copy.placeIn('/cloths/0')).toBe('/cloths/0');
});

test('a list that is too long is cut, and its names count as not all known', () => {
  const raw = small();
  const [gate] = raw.garments[0]!.gates;
  raw.garments[0]!.gates = Array.from({ length: 600 }, (_, i) => ({ ...gate!, id: `try-${i}` }));
  const copy = copyOf(raw)!;
  copy.mend({ path: [...G, 'gates'], type: 'max_length', expected: null, requirement: 500 });
  expect((copy.at([...G, 'gates']) as unknown[]).length).toBe(500);
  expect(copy.inside([...G, 'gates', 499])).toBe(true);
  expect(copy.inside([...G, 'gates', 498])).toBe(false);
});
