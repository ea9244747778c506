import { describe, expect, test } from 'vitest';
import { inches, mm, nm } from '../../../src/length/length.ts';
import { coveredButton } from '../../../src/reckon/buttons/covered-button.ts';
import { figures, reckoned, refusedAt } from '../reckoned.ts';

describe('a covered button', () => {
  test('forty lines are an inch, and the circle twice that', () => {
    const given = reckoned(coveredButton, { lines: '40' });
    expect(figures(given)).toEqual({
      'Circle of cloth, across': inches(2),
      'Form, across': inches(1),
      'Covered button, across': inches(1),
    });
    const circle = given.sheets[0]?.drawn[0];
    const xs = circle?.kind === 'path' ? circle.points.map((p) => p.x) : [];
    expect(Math.abs(Math.max(...xs) - Math.min(...xs) - inches(2))).toBeLessThan(mm(0.1));
  });

  test('thick cloth adds itself twice', () => {
    const found = figures(reckoned(coveredButton, { lines: '24', cloth: '1' }, 'mm'));
    expect(found['Covered button, across']).toBe(nm(inches(24, 40) + mm(2)));
  });

  test.each([
    [{ lines: '4' }, 'lines'],
    [{ lines: '200' }, 'lines'],
    [{ cloth: '-1' }, 'cloth'],
    [{ cloth: '1' }, 'cloth'],
  ])('refuses %j at its field', (entries, field) => {
    expect(refusedAt(coveredButton, entries)).toEqual([field]);
  });
});
