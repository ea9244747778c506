import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  inches,
  type Marking,
  mm,
  nm,
  readLength,
  roundTo,
  sayLength,
  size,
  subtract,
  writeLength,
} from '../../src/length/index.ts';

const markings: readonly Marking[] = [
  { unit: 'in', per: 8 },
  { unit: 'in', per: 16 },
  { unit: 'in', per: 32 },
  { unit: 'mm', step: 1 },
  { unit: 'mm', step: 0.5 },
];
const anyLength = fc.integer({ min: -20_000_000_000, max: 20_000_000_000 }).map(nm);
const anyMarking = fc.constantFrom(...markings);
const eighths: Marking = { unit: 'in', per: 8 };

describe('writing a length', () => {
  test('in inches, in lowest terms, with its parts', () => {
    expect(writeLength(inches(35, 8), { unit: 'in', per: 16 })).toEqual({
      text: '4 3/8 in',
      sign: '',
      whole: '4',
      numerator: '3',
      denominator: '8',
      unit: 'in',
      off: 0,
    });
    expect(writeLength(inches(3, 8), eighths).text).toBe('3/8 in');
    expect(writeLength(inches(8, 16), { unit: 'in', per: 16 }).text).toBe('1/2 in');
    expect(writeLength(inches(2), eighths).text).toBe('2 in');
    expect(writeLength(nm(0), eighths).text).toBe('0 in');
    expect(writeLength(inches(-3, 8), eighths).text).toBe('-3/8 in');
  });

  test('in millimetres', () => {
    expect(writeLength(mm(111.5), { unit: 'mm', step: 0.5 }).text).toBe('111.5 mm');
    expect(writeLength(mm(111.4), { unit: 'mm', step: 1 })).toMatchObject({ text: '111 mm', off: mm(-0.4) });
  });

  test('says how far the mark is off: one sixteenth written in eighths is a sixteenth too long', () => {
    expect(writeLength(inches(1, 16), eighths)).toMatchObject({ text: '1/8 in', off: inches(1, 16) });
  });

  test('a hair below zero is written without a sign', () => {
    expect(writeLength(nm(-5), eighths)).toMatchObject({ text: '0 in', off: 5 });
  });

  test('reading what was written gives the rounded length back exactly', () => {
    fc.assert(
      fc.property(anyLength, anyMarking, (length, marking) => {
        const written = writeLength(length, marking);
        const read = readLength(written.text, marking.unit === 'in' ? 'mm' : 'in');
        expect(read).toEqual({ ok: true, value: roundTo(length, marking) });
        expect(subtract(roundTo(length, marking), length)).toBe(written.off);
      }),
    );
  });

  test('is never off by more than half a mark', () => {
    fc.assert(
      fc.property(anyLength, anyMarking, (length, marking) => {
        const step = marking.unit === 'in' ? inches(1, marking.per) : mm(marking.step);
        expect(size(writeLength(length, marking).off)).toBeLessThanOrEqual(step / 2);
      }),
    );
  });
});

describe('saying a length', () => {
  test.each([
    [inches(35, 8), '4 and 3 eighths inches'],
    [inches(9, 8), '1 and 1 eighth inches'],
    [inches(3, 4), '3 quarters of an inch'],
    [inches(1, 2), 'half an inch'],
    [inches(5, 2), '2 and a half inches'],
    [inches(1), '1 inch'],
    [inches(0), '0 inches'],
    [inches(-1, 4), 'minus 1 quarter of an inch'],
  ])('%s', (length, wanted) => expect(sayLength(length, eighths)).toBe(wanted));

  test('small marks and millimetres', () => {
    expect(sayLength(inches(3, 32), { unit: 'in', per: 32 })).toBe('3 thirty-seconds of an inch');
    expect(sayLength(inches(1, 16), { unit: 'in', per: 16 })).toBe('1 sixteenth of an inch');
    expect(sayLength(mm(1), { unit: 'mm', step: 1 })).toBe('1 millimetre');
    expect(sayLength(mm(2.5), { unit: 'mm', step: 0.5 })).toBe('2.5 millimetres');
  });
});
