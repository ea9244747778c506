import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../../src/length/index.ts';
import { laidPieces, MOST_PIECES, readPieces } from '../../../src/reckon/cloth/piece-lines.ts';
import { made } from '../../cloth/good.ts';

const one = (text: string, unit: 'in' | 'mm' = 'mm') => made(readPieces(text, unit))[0]!;

describe('pieces as people write them', () => {
  test.each([
    ['2 by 4 by 1 yd cut by hand', { count: 2, along: inches(36), name: 'cut by hand' }],
    ['2 x 30 x 60', { count: 2, across: mm(30), along: mm(60), name: '' }],
    ['2x300x600 front', { count: 2, across: mm(300), along: mm(600), name: 'front' }],
    ['1 × 30 cm × 60 cm back', { across: mm(300), along: mm(600), name: 'back' }],
    ['3 * 4 3/8 in * 1 yd cuff frill', { across: inches(35, 8), along: inches(36), name: 'cuff frill' }],
    ['1 X 11,5 cm X 1 m, box of 2', { across: mm(115), along: mm(1000), name: 'box of 2' }],
    ['12 x 4½" x 2 ft 3 in: tie', { count: 12, across: inches(9, 2), along: inches(27), name: 'tie' }],
  ])('%s', (text, expected) => {
    expect(one(text)).toMatchObject(expected);
  });

  test('a bare number is in the unit of the maker', () => {
    expect(one('1 x 4 3/8 x 10 1/2 cuff', 'in')).toMatchObject({
      across: inches(35, 8),
      along: inches(21, 2),
    });
  });

  test('fold and bias are taken from the end, in any wording', () => {
    expect(one('1 x 30 x 60 back, on the fold')).toMatchObject({ name: 'back', onFold: true, onBias: false });
    expect(one('1 x 30 x 60 fold')).toMatchObject({ name: '', onFold: true });
    expect(one('1 x 30 x 60 binding bias')).toMatchObject({ name: 'binding', onBias: true });
    expect(one('1 x 30 x 60 folder')).toMatchObject({ name: 'folder', onFold: false });
  });

  test('empty lines count but are no pieces', () => {
    expect(made(readPieces('\n1 x 30 x 60\r\n\n 2 x 10 x 20 ', 'mm')).map(({ line }) => line)).toEqual([
      2, 4,
    ]);
  });

  test.each([
    ['1 x 30 x 60\n30 x 60', 'Line 2'],
    ['two x 30 x 60', 'Line 1'],
    ['0 x 30 x 60', 'Line 1'],
    ['1.5 x 30 x 60', 'Line 1'],
    ['1 x 30 ells x 60', 'Line 1'],
    ['1 x 30 x front', 'Line 1'],
    ['1 x 30 x 60 5 x', 'no fault'],
    ['1 x 0 x 60', 'Line 1'],
    ['1 x 30 x -6', 'Line 1'],
    ['1 x 30 m x 60', 'Line 1'],
    ['1 x 30 x 60 fold bias', 'Line 1'],
    [`1 x 30 x 60 ${'long '.repeat(10)}`, 'Line 1'],
    ['40 x 30 x 60\n21 x 10 x 10', 'Line 2'],
    ['  \n', 'There are no pieces'],
  ])('%j: %s', (text, says) => {
    const read = readPieces(text, 'mm');
    if (says === 'no fault') return expect(read.ok).toBe(true);
    expect(read).toMatchObject({
      ok: false,
      error: { field: 'pieces', wrong: expect.stringContaining(says) },
    });
  });

  test('whatever is written, it is read or refused at the pieces', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        const read = readPieces(text, 'in');
        if (!read.ok) expect(read.error.field).toBe('pieces');
      }),
    );
  });

  test('what is written from a piece is read as that piece', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: MOST_PIECES }),
        fc.integer({ min: 1, max: 20_000 }),
        fc.integer({ min: 1, max: 20_000 }),
        fc.constantFrom('', 'front', 'box x', 'my cuff'),
        (count, across, along, name) => {
          expect(one(`${count} x ${across} x ${along} ${name}`)).toMatchObject({
            count,
            across: mm(across),
            along: mm(along),
            name,
          });
        },
      ),
    );
  });
});

test('on doubled cloth two alike are cut at once where there is room, and an odd one after', () => {
  const cuts = (text: string, room: number | undefined, crosswise = false) =>
    laidPieces(one(text), room === undefined ? undefined : mm(room), crosswise).map(({ cut, count }) => [
      cut,
      count,
    ]);
  expect(cuts('5 x 300 x 600', 700)).toEqual([
    ['pair', 2],
    ['one', 1],
  ]);
  expect(cuts('4 x 800 x 600', 700)).toEqual([['one', 4]]);
  expect(cuts('4 x 800 x 600', 700, true)).toEqual([['pair', 2]]);
  expect(cuts('2 x 600 x 600 bias', 700)).toEqual([['one', 2]]);
  expect(cuts('4 x 300 x 600', undefined)).toEqual([['one', 4]]);
  expect(laidPieces(one('1 x 301 x 600 fold'), mm(700), false)).toMatchObject([
    { cut: 'fold', shape: { across: mm(150.5) } },
  ]);
});
