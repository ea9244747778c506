import fc from 'fast-check';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { inches, type Length, mm, nm } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { outfitSchema } from '../../src/outfit/schema.ts';
import { writeOutfit, writeOutfitFile } from '../../src/outfit/writing.ts';
import { anyOutfit } from './any-outfit.ts';
import { demo, demoData, demos } from './demo-files.ts';
import { small } from './small.ts';

const read = (raw: unknown): Outfit => {
  const found = readOutfit(raw);
  if (!found.ok) throw new Error(JSON.stringify(found.error));
  return found.value;
};

/** The description of the small outfit with one piece that allows so much for its seams. */
const withAllowance = (allowance: Length, units: 'in' | 'mm'): Outfit => {
  const outfit = read(small());
  const garments = outfit.garments.map((garment) => ({
    ...garment,
    pieces: garment.pieces.map((piece) => ({ ...piece, allowance })),
  }));
  return { ...outfit, units, garments };
};
const spelled = (allowance: Length, units: 'in' | 'mm'): unknown => {
  const written = JSON.parse(JSON.stringify(writeOutfit(withAllowance(allowance, units))));
  return written.garments[0].pieces[0].allowance;
};

describe('writing a description', () => {
  test.each(demos)('%s is read again as it was', (name) => {
    expect(read(writeOutfit(demo(name)))).toEqual(demo(name));
    expect(read(JSON.parse(writeOutfitFile(demo(name))))).toEqual(demo(name));
  });

  test('the small file comes out as it went in, with nothing added', () => {
    expect(writeOutfit(read(small()))).toEqual({ ...small(), units: 'mm' });
  });

  test.each(demos)('%s is not longer than the file somebody wrote by hand', (name) => {
    const { $schema: _, ...raw } = demoData(name) as Record<string, unknown>;
    expect(JSON.stringify(writeOutfit(demo(name))).length).toBeLessThanOrEqual(JSON.stringify(raw).length);
  });

  test('any description is read again exactly as it was', () => {
    fc.assert(
      fc.property(anyOutfit, (outfit) => {
        const {
          $schema: _,
          format,
          version,
          ...again
        } = v.parse(outfitSchema, JSON.parse(writeOutfitFile(outfit)));
        expect([format, version]).toEqual(['slipbaste-outfit', 1]);
        expect(again).toEqual(outfit);
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  test('lengths are spelled as people write them, where that is exact', () => {
    expect(spelled(inches(35, 8), 'in')).toBe('4 3/8 in');
    expect(spelled(inches(1, 64), 'in')).toBe('1/64 in');
    expect(spelled(inches(2), 'in')).toBe('2 in');
    expect(spelled(mm(11.1), 'mm')).toBe('11.1 mm');
    expect(spelled(mm(15), 'in')).toBe('15 mm');
    expect(spelled(inches(5, 8), 'mm')).toBe('5/8 in');
    expect(spelled(nm(1), 'in')).toBe('0.000001 mm');
    expect(spelled(nm(12_345_678), 'mm')).toBe('12.345678 mm');
    expect(spelled(nm(0), 'in')).toBe('0 in');
    expect(spelled(mm(1450), 'in')).toBe('1.45 m');
    expect(spelled(mm(990), 'mm')).toBe('990 mm');
  });

  test('the file is laid out for reading: short lists of figures stand on one line', () => {
    const text = writeOutfitFile(read(small()));
    expect(text).toContain('"start": [0, 0],\n');
    expect(text).toContain('"to": [100, 200]\n');
    expect(text.endsWith('}\n')).toBe(true);
    expect(JSON.parse(text)).toEqual({ ...small(), units: 'mm' });
  });
});
