import { describe, expect, test } from 'vitest';
import { coveredButton } from '../../src/cloth/covered-button.ts';
import { lapFor } from '../../src/cloth/fastenings.ts';
import { inches, toMm } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

describe('buttons by line against published figures', () => {
  // Sizes, Inc., entry Buttons, undated (seen as an excerpt): 40 line is 1 in, 20 line is 1/2 in.
  test.each([
    [40, inches(1)],
    [20, inches(1, 2)],
  ])('%s lines', (lines, diameter) => {
    expect(made(coveredButton({ lines })).form).toBe(diameter);
  });

  // TM 10-8400-201-23, US Army, para. 5-6 (seen as an excerpt) names a 30-line button; 19.05 mm is derived.
  test('a 30-line button is 19.05 mm', () => {
    expect(toMm(made(coveredButton({ lines: 30 })).form)).toBe(19.05);
  });

  // Standards of Quality for Custom Clothing, Association of Sewing and Design Professionals, 2008, Closures (seen as an
  // excerpt): at least half the button and 1/4 in, over and under.
  test.each([inches(1, 2), inches(5, 8), inches(1)])('lap beyond the centre line', (diameter) => {
    expect(made(lapFor(diameter)).least * 2).toBe(diameter + inches(1, 2));
  });
});
