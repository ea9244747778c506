import { describe, expect, test } from 'vitest';
import { FUSING_DEGREES, interfacing } from '../../src/cloth/interfacing.ts';
import { type Dots, pressLimit } from '../../src/cloth/press-heat.ts';
import { made } from '../cloth/good.ts';

describe('pressing and fusing against published figures', () => {
  // ISO 3758:2012, Textiles: care labelling code using symbols. Only its title was seen; the figures are from memory.
  test.each<[Dots, number]>([
    [1, 110],
    [2, 150],
    [3, 200],
  ])('%s dots: %s degrees', (dots, degrees) => {
    expect(made(pressLimit([dots]))).toBe(degrees);
  });

  // NIMI Dress Making, Trade Theory, p. 145, about 2024 (seen as an excerpt): usual fusing heat about 150. Fusing Machine, teaching
  // deck, undated (seen as an excerpt, secondary): normal 150, not over 175.
  test('our fusing heat is the usual one', () => {
    expect(Math.abs(FUSING_DEGREES.value - 150)).toBeLessThanOrEqual(10);
    expect(FUSING_DEGREES.value).toBeLessThanOrEqual(175);
  });

  // J. Japan Research Assoc. Textile End-Uses 24(10) 440, 1983 (abstract seen): collars fused at 140, 165 and 190. By the dots above
  // two dots bear the first only, three bear all (derived).
  test.each<[number, Dots, boolean]>([
    [140, 2, true],
    [165, 2, false],
    [190, 2, false],
    [140, 3, true],
    [165, 3, true],
    [190, 3, true],
    [140, 1, false],
  ])('fusing at %s on a cloth of %s dots: %s', (degrees, care, possible) => {
    const asked = interfacing({
      weight: 'light',
      knit: false,
      care,
      part: 'collar',
      held: 'fused',
      instructions: { degrees, seconds: 15 },
    });
    expect(asked.ok).toBe(possible);
  });

  // Choosing and Using Interfacing, Extension Folder 341, Ingels, University of Minnesota, 1977 (seen as an excerpt).
  test('woven with woven, knit with knit', () => {
    const on = (knit: boolean) =>
      made(interfacing({ weight: 'medium', knit, care: 2, part: 'facing' })).structure;
    expect([on(false), on(true)]).toEqual(['woven', 'knit']);
  });
});
