import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../src/length/index.ts';
import type { Listing } from '../../src/screens/sources/figures.ts';
import { byTechnique, countKinds, find } from '../../src/screens/sources/find.ts';
import { writeNumber, writeValue } from '../../src/screens/sources/write-value.ts';

describe('a value', () => {
  test.each([
    [[inches(1, 4)], '1/4 in', '6.35 mm'],
    [[inches(1, 8)], '1/8 in', '3.175 mm'],
    [[inches(1, 16)], '1/16 in', '1.5875 mm'],
    [[mm(400), mm(500)], 'about 15 3/4 to 19 11/16 in', '400 to 500 mm'],
    [[mm(0.5)], 'about 0.02 in', '0.5 mm'],
    [[inches(1, 12)], 'about 0.083 in', '2.12 mm'],
  ])('%j nm is written in both rules', (is, inch, metric) => {
    expect(writeValue(is, 'length', 'in')).toEqual({ figure: inch, other: metric });
    expect(writeValue(is, 'length', 'mm')).toEqual({ figure: metric, other: inch });
  });

  test.each([
    [[2.5], 'times', '2 1/2 times'],
    [[3, 3], 'times', '3 times'],
    [[4 / 3, 3 / 2], 'times', '1 1/3 to 1 1/2 times'],
    [[1 / 3], 'part', '1/3'],
    [[0.15], 'part', '15 %'],
    [[0.271], 'part', '27.1 %'],
    [[0.931, 1.085], 'times', '0.931 to 1.085 times'],
    [[8], '', '8'],
    [[25_400_000], 'nanometres', '25\u00a0400\u00a0000 nanometres'],
    [['collar', 'cuff'], '', 'collar, cuff'],
    [[], '', ''],
  ])('%j %s', (is, unit, figure) => {
    expect(writeValue(is as number[] | string[], unit, 'in').figure).toBe(figure);
  });

  test('a number is written within a thousandth of itself', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 1000, noNaN: true }), (value) => {
        const [, whole = '0', top = '0', bottom = '1'] =
          /^(?:([\d.\u00a0]+))?(?: ?(\d+)\/(\d+))?$/.exec(
            writeNumber(value).replace(/^(\d+\/\d+)$/, '0 $1'),
          ) ?? [];
        const read = Number(whole.replaceAll('\u00a0', '')) + Number(top) / Number(bottom);
        expect(Math.abs(read / value - 1)).toBeLessThan(0.001);
      }),
    );
  });
});

const book = { kind: 'published', title: 'A book', year: '1916', where: 'p. 3' } as const;
const list: Listing = {
  figures: [
    {
      id: 'b',
      technique: 'Tucks',
      meaning: 'A tuck takes this.',
      unit: 'times',
      values: [
        { of: 'wide', is: [2], source: book },
        { of: 'pin', is: [2], source: { kind: 'practice' } },
      ],
    },
    {
      id: 'a',
      technique: 'Beads',
      meaning: 'A cluster.',
      unit: 'beads',
      values: [{ is: [4], source: { kind: 'memory' } }],
    },
  ],
  rules: [{ name: 'flat first', meaning: 'Flat is easier.', reasons: [{ because: 'so', source: book }] }],
  seen: [
    {
      id: 'cuff-tight',
      name: 'The cuff is tight',
      place: 'wrist',
      lines: [
        { source: book },
        { words: 'Because the cuff is short.', cure: 'Cut it longer.', source: { kind: 'memory' } },
      ],
    },
  ],
};

describe('finding', () => {
  test('nothing asked finds all, and kinds are counted', () => {
    expect(find(list, { words: ' ', kind: 'all' })).toEqual(list);
    expect(countKinds(list)).toEqual({ all: 6, published: 3, practice: 1, memory: 2, geometry: 0 });
  });

  test('words may stand in the meaning, the technique, the entry or the source, in any case', () => {
    const found = (words: string) => countKinds(find(list, { words, kind: 'all' })).all;
    expect(found('TUCK')).toBe(2);
    expect(found('pin tuck')).toBe(1);
    expect(found('1916 book')).toBe(3);
    expect(found('order')).toBe(1);
    expect(found('cluster 1916')).toBe(0);
    expect(found('wrist TRY-ON')).toBe(2);
    expect(found('longer')).toBe(1);
    expect(found('tight 1916')).toBe(1);
  });

  test('a kind keeps its own entries only', () => {
    expect(find(list, { words: '', kind: 'practice' })).toEqual({
      figures: [{ ...list.figures[0], values: [list.figures[0]?.values[1]] }],
      rules: [],
      seen: [],
    });
  });

  test('techniques come by name', () => {
    expect([...byTechnique(list.figures).keys()]).toEqual(['Beads', 'Tucks']);
  });
});
