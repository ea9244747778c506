import { describe, expect, test } from 'vitest';
import { FULLNESS, FULLNESS_FOR, fullnessFor, type Gathered, gathers } from '../../src/cloth/gathers.ts';
import { inches, mm } from '../../src/length/index.ts';
import { made } from './good.ts';

const all = Object.keys(FULLNESS_FOR) as Gathered[];

describe('fullness by cloth', () => {
  test('a bias ruffle needs less than a straight one, and a sheer ruche more than one with body', () => {
    expect(fullnessFor('bias ruffle').value).toBeLessThan(fullnessFor('straight ruffle').value);
    expect(fullnessFor('sheer ruche').value).toBeGreaterThan(fullnessFor('ruche with body').value);
  });

  test('full gathers begin at the usual two and a half', () => {
    expect(fullnessFor('full gathers').value).toBe(FULLNESS.value);
  });

  test.each(all)('%s: within its range, and gathered without a warning', (gathered) => {
    const [least, most] = FULLNESS_FOR[gathered].value;
    const { value: fullness } = fullnessFor(gathered);
    expect(fullness >= least && fullness <= most).toBe(true);
    const strip = { place: inches(36), clothWidth: mm(900), join: mm(10), allowance: inches(5, 8) };
    expect(made(gathers({ ...strip, fullness })).advice).toEqual([]);
  });
});
