import { describe, expect, test } from 'vitest';
import { countsInWords } from '../../../src/reckon/lattice/counts-in-words.ts';

describe('counts in words', () => {
  test('runs of the same number stand together', () => {
    expect(countsInWords([12, 18, 18, 18, 12])).toBe('1: 12 · 2 to 4: 18 · 5: 12');
    expect(countsInWords([0])).toBe('1: 0');
  });

  test('nothing for none, and for more than can be read', () => {
    expect(countsInWords([])).toBeUndefined();
    expect(countsInWords(Array.from({ length: 81 }, () => 3))).toBeUndefined();
  });
});
