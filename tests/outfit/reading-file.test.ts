import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readOutfitFile } from '../../src/outfit/reading-file.ts';
import { small } from './small.ts';

const blouse = readFileSync(new URL('../../public/examples/small-blouse.jsonc', import.meta.url), 'utf8');
const said = (text: string): string[] => {
  const read = readOutfitFile(text);
  if (read.ok) throw new Error('it should be refused');
  return read.error.wrong.map(
    ({ line, column, where, say, cure }) =>
      `${line}:${column} [${where}] ${[say, cure].filter(Boolean).join('; ')}`,
  );
};
/** The line, counted from 1, on which some words first stand in the example. */
const lineOf = (words: string): number => blouse.split('\n').findIndex((line) => line.includes(words)) + 1;

describe('reading an outfit file', () => {
  test('gives the outfit, and the data as the file has them', () => {
    const read = readOutfitFile(blouse);
    if (!read.ok) throw new Error('it should be read');
    expect(read.value.outfit.name).toBe('Blouse of the lamp seller');
    expect(read.value.raw).toMatchObject({ units: 'in', cloths: [{ width: '44 in' }] });
  });

  test('says everything that is wrong at once, in the order of the file, each with its place', () => {
    const spoilt = blouse
      .replace('"width": "44 in"', '"width": "44"')
      .replace('"cut": "pair", // a left', '"cut": "twice", // a left')
      .replace('"turn": "3/4 in",\n', '')
      .replace('"depth": "1/2 in",\n          "finish"', '"dept": "1/2 in",\n          "finish"');
    expect(said(spoilt)).toEqual([
      `${lineOf('"width": "44 in"')}:7 [cloths: Cream cotton lawn, width] Cream cotton lawn: \`width\` \`44\` has no unit; write for example "44 in" or "44 mm"`,
      `${lineOf('"cut": "pair"')}:11 [garments: Blouse, pieces: Front, cut] Front: \`cut\` is \`"twice"\`; it must be one of: "one", "pair", "fold"`,
      `${lineOf('"id": "sleeve-hem"') - 2}:9 [garments: Blouse, works: Sleeve hem, turn] Sleeve hem: \`turn\` is missing; add it; it must be a length in quotes, such as "4 3/8 in" or "111 mm"`,
      `${lineOf('"id": "shoulder"') + 3}:11 [garments: Blouse, joins: Shoulder seam, dept] Shoulder seam: \`dept\` is not used here; did you mean \`depth\`?`,
    ]);
  });

  test('says what the names in it do not agree about', () => {
    const spoilt = blouse
      .replace('["front.shoulder"]', '["front.sholder"]')
      .replace('"cloth": "lawn"', '"cloth": "lwan"');
    expect(said(spoilt)).toEqual([
      `${lineOf('"cloth": "lawn"')}:11 [garments: Blouse, pieces: Front, cloth] piece \`Front\`: cloth \`lwan\` does not exist; did you mean \`lawn\`?`,
      `${lineOf('["front.shoulder"]')}:20 [garments: Blouse, joins: Shoulder seam, this: 1] join \`Shoulder seam\`: edge \`front.sholder\` does not exist; did you mean \`front.shoulder\`?`,
    ]);
  });

  test('says once that a list stands where an object should', () => {
    const spoilt = blouse.replace('{ "name": "lap", "to": [0.5, 4] }', '["lap", [0.5, 4]]');
    expect(said(spoilt)).toEqual([
      `${lineOf('"name": "lap"')}:15 [garments: Blouse, pieces: Front, outline, edges: 1] Front: entry 1 of \`edges\` is a list; it must be an object, in { }, and not a list`,
    ]);
  });

  test('says what stands where something else must be', () => {
    const stands = (now: string): string | undefined =>
      said(blouse.replace('"units": "in"', now))[0]?.replace(/^.*?\] /, '');
    expect(stands('"units": 5')).toBe('`units` is `5`; it must be one of: "in", "mm"');
    expect(stands('"units": {"is": "in"}')).toBe('`units` is an object; it must be one of: "in", "mm"');
    expect(stands(`"units": "${'in'.repeat(30)}"`)).toBe('`units` must be one of: "in", "mm"');
  });

  test('says where a text is no JSON', () => {
    const read = readOutfitFile(blouse.replace('"units": "in",', '"units": "in"'));
    expect(read.ok || read.error).toEqual({
      kind: 'words',
      wrong: [
        {
          line: lineOf('"cloths": ['),
          column: 3,
          where: '',
          say: 'Here `"` stands where a comma or } should.',
          cure: '',
        },
      ],
      more: 0,
    });
  });

  test.each(['[]', '12', '"garments"', '{}', '{"format": "slipbaste-ledger"}', '{"name": "a note"}'])(
    'takes %s for something else',
    (text) => {
      const read = readOutfitFile(text);
      expect(read.ok || read.error).toEqual({ kind: 'other', wrong: [], more: 0 });
    },
  );

  test('stops after a hundred mistakes', () => {
    const data = small();
    data.garments[0]!.joins = Array.from({ length: 300 }, (_, i) => ({ id: `j-${i}` })) as never;
    const text = JSON.stringify(data);
    expect(said(text)).toHaveLength(100);
    const read = readOutfitFile(text);
    // Each of the three hundred lacks four things.
    expect(read.ok || read.error.more).toBe(1100);
  });
});
