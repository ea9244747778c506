import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readOutfit } from '../../src/outfit/reading.ts';
import { demoData, demos } from './demo-files.ts';
import { small } from './small.ts';
import { change, look } from './spoil.ts';

/** JSON Pointers to every place in some data. */
function places(data: unknown): readonly string[] {
  const found: string[] = [];
  const waiting: [string, unknown][] = [['', data]];
  for (let next = waiting.pop(); next; next = waiting.pop()) {
    const [at, here] = next;
    if (at !== '') found.push(at);
    if (typeof here !== 'object' || here === null) continue;
    for (const [key, value] of Object.entries(here)) waiting.push([`${at}/${key}`, value]);
  }
  return found;
}

const nonsense = fc.oneof(
  fc.constant(undefined),
  fc.jsonValue({ maxDepth: 2 }),
  fc.constantFrom<unknown>(
    '__proto__',
    'constructor',
    'back.side',
    'other:back.side',
    '-1 in',
    '0 mm',
    '1/0 in',
    Number.MAX_VALUE,
    -0,
    [[[]]],
    { kind: 'own' },
  ),
);

describe('spoilt files', () => {
  test.each(demos)('%s, changed in a few places, is read or refused with places and words', (name) => {
    const all = places(demoData(name));
    const change1 = fc.tuple(
      fc.nat({ max: all.length - 1 }),
      fc.option(fc.nat({ max: all.length - 1 })),
      nonsense,
    );
    fc.assert(
      fc.property(fc.array(change1, { minLength: 1, maxLength: 4 }), (changes) => {
        const whole = demoData(name);
        const data = demoData(name);
        for (const [to, from, value] of changes) {
          // What stands elsewhere in the file is nearer to a slip than nonsense is.
          const put = from === null ? value : structuredClone(look(whole, all[from]!));
          const parent = look(data, all[to]!.slice(0, all[to]!.lastIndexOf('/')));
          if (typeof parent === 'object' && parent !== null) change(data, all[to]!, put);
        }
        const read = readOutfit(data);
        if (read.ok) return;
        expect(read.error.length).toBeGreaterThan(0);
        for (const { at, wrong } of read.error) {
          expect(at).toMatch(/^(\/|$)/);
          expect(wrong.length).toBeGreaterThan(0);
          expect(wrong).not.toMatch(/undefined|\[object|Invalid/);
        }
      }),
      { numRuns: 100, interruptAfterTimeLimit: 20_000, markInterruptAsFailure: true },
    );
  });
});

/** The small file with something in its garment made very large. */
const grown = (grow: (garment: ReturnType<typeof small>['garments'][0]) => void): unknown => {
  const data = small();
  grow(data.garments[0]!);
  return data;
};
const ids = (count: number, word: string) => Array.from({ length: count }, (_, i) => `${word}-${i}`);

/** Files made to take long must be answered within seconds, on a slow machine too. */
const SOON = 5000;

describe('very large files', () => {
  test('too many of a thing are refused with a number', () => {
    const read = readOutfit(
      grown((garment) => {
        garment.gates = ids(501, 'try').map((id) => ({
          id,
          name: id,
          after: ['side'],
          checks: ['It hangs'],
        }));
      }),
    );
    expect(read.ok || read.error).toEqual([
      { at: '/garments/0/gates', wrong: 'shirt: `gates` must not have more than 500 entries', cure: '' },
    ]);
  });

  test('a text without end is refused', () => {
    const read = readOutfit(change(small(), '/name', 'a'.repeat(100_000)));
    expect(read.ok).toBe(false);
  });

  test(
    'many joins over long runs are refused before they take time',
    () => {
      const long = Array.from({ length: 500 }, (_, i) => (i % 2 === 0 ? 'front.side' : 'back.side'));
      const read = readOutfit(
        grown((garment) => {
          garment.joins = ids(400, 'seam').map((id) => ({
            id,
            name: id,
            this: long,
            to: long,
            depth: '1 mm',
          }));
        }),
      );
      expect(read.ok || read.error[0]?.wrong).toMatch(/more than 5000/);
    },
    SOON,
  );

  test(
    'as many edges and joins as are allowed, all of them wrong, are answered soon',
    () => {
      const read = readOutfit(
        grown((garment) => {
          const [front] = garment.pieces;
          const edges = ids(500, 'a-rather-long-name-for-the-edge-of-a-piece').map((name) => ({
            name,
            to: [1, 1],
          }));
          garment.pieces = ids(10, 'piece').map((id) => ({
            ...front!,
            id,
            outline: { unit: 'mm', start: [0, 0], edges },
          }));
          garment.joins = ids(500, 'seam').map((id) => ({
            id,
            name: id,
            this: ids(5, `piece-1.b-rather-long-name-for-the-edge-of-a-piece-${id}`),
            to: ids(5, `piece-2.c-rather-long-name-for-the-edge-of-a-piece-${id}`),
            depth: '1 mm',
          }));
        }),
      );
      if (read.ok) throw new Error('it should be refused');
      expect(read.error.length).toBe(100);
    },
    SOON,
  );

  test(
    'as many joins over runs as are allowed, all of them right, are read soon',
    () => {
      const read = readOutfit(
        grown((garment) => {
          const more = ids(490, 'seam').map((id) => ({
            id,
            name: id,
            this: ['front.side', 'front.hem', 'front.side', 'front.hem', 'front.side'],
            to: ['front.hem', 'back.hem', 'front.hem', 'back.hem', 'front.hem'],
            depth: '1 mm',
          }));
          garment.joins = [...garment.joins, ...more];
        }),
      );
      expect(read.ok || read.error).toBe(true);
    },
    SOON,
  );
});
