import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { wordsWide, wrapped } from '../../src/paper/letters.ts';

describe('fitting words', () => {
  it('breaks between words, and keeps every word in its order', () => {
    fc.assert(
      fc.property(fc.array(fc.stringMatching(/^[a-zA-Z0-9,.]{1,9}$/), { maxLength: 30 }), (parts) => {
        const lines = wrapped(parts.join(' '), mm(60), mm(3));
        expect(lines.join(' ')).toBe(parts.join(' '));
        for (const line of lines) expect(wordsWide(line, mm(3))).toBeLessThanOrEqual(mm(60));
      }),
    );
  });

  it('breaks a word only where it is wider than the line', () => {
    const lines = wrapped('a Donaudampfschifffahrt b', mm(20), mm(3));
    expect(lines.join('').replaceAll(' ', '')).toBe('aDonaudampfschifffahrtb');
    for (const line of lines) expect(wordsWide(line, mm(3))).toBeLessThanOrEqual(mm(20));
    expect(wrapped('', mm(20), mm(3))).toEqual([]);
  });

  it('takes letters at least as wide as Helvetica has them', () => {
    // Widths in thousandths of the height. Source: Adobe, Helvetica font metrics (AFM), from memory.
    const known = { a: 556, m: 833, i: 222, ' ': 278, W: 944, M: 833, A: 667, '0': 556, O: 778, '%': 889 };
    for (const [letter, width] of Object.entries(known)) {
      expect(wordsWide(letter, mm(1000)) / 1e6).toBeGreaterThanOrEqual(width * 0.92);
    }
  });
});
