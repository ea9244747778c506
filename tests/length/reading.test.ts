import { describe, expect, test } from 'vitest';
import { inches, mm, nm, type ReadingUnit, readLength } from '../../src/length/index.ts';

const value = (text: string, unit: ReadingUnit = 'in') => {
  const read = readLength(text, unit);
  if (!read.ok) throw new Error(read.error);
  return read.value;
};
const complaint = (text: string, unit: ReadingUnit = 'in') => {
  const read = readLength(text, unit);
  if (read.ok) throw new Error(`${text} was read as ${read.value} nm`);
  return read.error;
};

describe('reading a length as people write it', () => {
  test.each([
    '4 3/8',
    '4-3/8 in',
    '4⅜″',
    '4 ⅜"',
    '4 3/8"',
    '4 3⁄8 inches',
    '4 and 3/8 in.',
    '35/8',
    '4.375',
    '4,375 in',
  ])('%s is four and three eighths inches', (text) => {
    if (text === '4,375 in') expect(complaint(text)).toContain('4375 or 4.375');
    else expect(value(text)).toBe(inches(35, 8));
  });

  test.each([
    ['11,1 cm', mm(111)],
    ['111 mm', mm(111)],
    ['0.5in', inches(1, 2)],
    ['.5 in', inches(1, 2)],
    ['½', inches(1, 2)],
    ['½ yd', inches(18)],
    ['1 yd', inches(36)],
    ['2 ft 3 in', inches(27)],
    ['2\'3"', inches(27)],
    ["2' 3 1/2", inches(55, 2)],
    ['1 yd, 2 ft and 3 in', inches(63)],
    ['1 m 20 cm', mm(1200)],
    ["2''", inches(2)],
    ['-3/8', inches(-3, 8)],
    ['−3/8 in', inches(-3, 8)],
    ['0', nm(0)],
  ])('%s', (text, wanted) => expect(value(text)).toBe(wanted));

  test('takes the given unit only where none is written', () => {
    expect(value('25,4', 'mm')).toBe(inches(1));
    expect(value('1 in', 'mm')).toBe(inches(1));
  });

  test('reads a third of an inch to the nearest nanometre', () => {
    expect(value('1/3')).toBe(nm(8_466_667));
  });
});

describe('what cannot be read says what would be right', () => {
  test.each([
    ['', 'Nothing is written'],
    ['   ', 'Nothing is written'],
    ['abc', '4 3/8 in'],
    ['4 9/8', '5 1/8'],
    ['4 8/8', 'write that'],
    ['3/0', '3/8'],
    ['1,250', '1250 or 1.250'],
    ['12 foo', 'in, ft, yd, mm, cm or m'],
    ['2 in 3', 'no unit'],
    ['3 in 2 ft', 'larger unit first'],
    ['1 in 2 in', 'larger unit first'],
    ['1 in 3 cm', 'one system'],
    ['2 3', 'is not a length'],
    ['3//8', 'is not a length'],
    ['1.2.3', 'is not a length'],
    ['4.5 3/8', 'is not a length'],
    ['1e3', 'not a unit'],
    ['2000 m', 'more than a kilometre'],
    ['9'.repeat(70), 'too long'],
    ['constructor', 'is not a length'],
    ['3 constructor', 'not a unit'],
  ])('%j', (text, wanted) => expect(complaint(text)).toContain(wanted));

  test('the example is in the unit of the reader', () => {
    expect(complaint('x', 'mm')).toContain('111 mm');
  });
});

test('a message names the length that would do, where one is given', () => {
  expect(readLength('3/', 'mm', '6 mm')).toEqual({
    ok: false,
    error: '“3/” is not a length; write one such as 6 mm.',
  });
});
