import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { coveredButton, linesOf } from '../../src/cloth/covered-button.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('covered buttons', () => {
  test('lines to diameter and back', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 120 }), (lines) => {
        expect(made(linesOf(made(coveredButton({ lines })).form))).toBeCloseTo(lines, 6);
      }),
    );
  });

  test('bulky cloth makes the button larger, and the cover reaches round to the back', () => {
    const { form, diameter, circle } = made(coveredButton({ lines: 30, cloth: mm(1) }));
    expect(toMm(form)).toBe(19.05);
    expect(toMm(diameter)).toBe(21.05);
    expect(toMm(circle)).toBe(38.1);
  });

  test.each([
    [{ lines: 7 }, 'lines'],
    [{ lines: Number.NaN }, 'lines'],
    [{ lines: 20, cloth: mm(-1) }, 'cloth'],
    [{ lines: 20, cloth: mm(4) }, 'cloth'],
  ])('refuses %j', (input, field) => {
    expect(coveredButton(input)).toMatchObject({ ok: false, error: { field } });
  });

  test('refuses no diameter', () => {
    expect(linesOf(zero)).toMatchObject({ ok: false, error: { field: 'diameter' } });
  });
});
