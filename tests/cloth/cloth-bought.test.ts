import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inMetres, inYards } from '../../src/cloth/cloth-bought.ts';
import { inches, mm, nm, readLength, zero } from '../../src/length/index.ts';

test('eighths of a yard in lowest terms, never short', () => {
  expect(inYards(inches(36))).toBe('1 yd');
  expect(inYards(inches(9))).toBe('1/4 yd');
  expect(inYards(inches(85))).toBe('2 3/8 yd');
  expect(inYards(inches(86))).toBe('2 1/2 yd');
  expect(inYards(zero)).toBe('0 yd');
});

test('centimetres, never short', () => {
  expect(inMetres(mm(2150))).toBe('2.15 m');
  expect(inMetres(mm(2150.1))).toBe('2.16 m');
  expect(inMetres(mm(-5))).toBe('0.00 m');
});

test('what is asked for is enough, and less than a step too much', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 50_000_000_000 }), (length) => {
      for (const [text, step] of [
        [inYards(nm(length)), inches(36, 8)],
        [inMetres(nm(length)), mm(10)],
      ] as const) {
        const read = readLength(text, 'mm');
        const over = (read.ok ? read.value : Number.NaN) - length;
        expect(over).toBeGreaterThanOrEqual(0);
        expect(over).toBeLessThan(step);
      }
    }),
  );
});
