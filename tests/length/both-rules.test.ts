import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inBothRules, inches, mm, nm, readLength } from '../../src/length/index.ts';

describe('a length in both rules', () => {
  test('whole millimetres, and sixteenths in lowest terms', () => {
    expect(inBothRules(mm(120))).toBe('120 mm (4 3/4 in)');
    expect(inBothRules(mm(25.4))).toBe('25 mm (1 in)');
    expect(inBothRules(mm(0))).toBe('0 mm (0 in)');
  });

  test('a limit is written so that the figure keeps it', () => {
    expect(inBothRules(mm(120), 'up')).toBe('120 mm (4 3/4 in)');
    expect(inBothRules(mm(120), 'down')).toBe('120 mm (4 11/16 in)');
    expect(inBothRules(mm(120.2), 'up')).toBe('121 mm (4 3/4 in)');
  });

  test('both parts, read again, lie on the side that was asked for and within one mark', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 2_000_000_000 }).map(nm), (length) => {
        const parts = (text: string) =>
          [/^(.*) \((.*)\)$/.exec(text)?.[1], /\((.*)\)$/.exec(text)?.[1]].map((one) => {
            const read = readLength(one ?? '', 'mm');
            if (!read.ok) throw new Error(text);
            return read.value;
          });
        for (const up of parts(inBothRules(length, 'up'))) expect(up).toBeGreaterThanOrEqual(length);
        for (const down of parts(inBothRules(length, 'down'))) expect(down).toBeLessThanOrEqual(length);
        const [metric, inch] = parts(inBothRules(length));
        expect(Math.abs(metric! - length)).toBeLessThanOrEqual(mm(0.5));
        expect(Math.abs(inch! - length)).toBeLessThanOrEqual(inches(1, 32));
      }),
    );
  });
});
