import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inLatin, losesLetters } from '../../src/print/latin.ts';

describe('words for a PDF', () => {
  it('keeps what its fonts can write', () => {
    const words = 'Coupé Größe naïve ½ × ° “front” – 3/8 in … € Šaty œuf';
    expect(inLatin(words)).toBe(words);
    expect(losesLetters(words)).toBe(false);
  });

  it('leaves accents away that they lack, and writes signs plainly', () => {
    expect(inLatin('Łódź Dvořák İstanbul 1⁄8″ 3′ ⅜ ≤')).toBe('Lódz Dvorák Istanbul 1/8" 3\' 3/8 <=');
    expect(losesLetters('Dvořák ⅜')).toBe(false);
  });

  it('writes a question mark for a letter of another script, and says so', () => {
    expect(inLatin('Кот 猫')).toBe('??? ?');
    expect(losesLetters('Кот')).toBe(true);
    expect(losesLetters('why?')).toBe(false);
  });

  it('drops what has no shape', () => {
    expect(inLatin('a\u0000b\u200bc\u0301\ufe0f')).toBe('abć'.normalize('NFKD').replace(/\p{M}/gu, ''));
  });

  it('gives letters of code page 1252 and nothing else, whatever it is given', () => {
    const page = new Set(
      new TextDecoder('windows-1252').decode(Uint8Array.from({ length: 256 }, (_, i) => i)),
    );
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 40 }), (words) => {
        expect([...inLatin(words)].filter((letter) => !page.has(letter))).toEqual([]);
      }),
    );
  });
});
