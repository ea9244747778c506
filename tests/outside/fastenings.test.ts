import { describe, expect, test } from 'vitest';
import { buttonholeLength } from '../../src/cloth/buttonhole.ts';
import { fastenings } from '../../src/cloth/fastenings.ts';
import { spaced } from '../../src/cloth/spacing.ts';
import { inches, mm, times, zero } from '../../src/length/index.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

// Published rules for the length of a hole differ; each test names the rule it follows.
describe('buttonholes against published rules', () => {
  // Buttons and Buttonholes, Extension Bulletin 576, 1965, Size and placement (seen as an excerpt); the same in
  // Buttonholes and Pockets, Clothing Leaflet 9, Rocke, Nebraska 4-H, 1965 (seen as an excerpt).
  test('flat: diameter and thickness', () => {
    expect(
      made(buttonholeLength({ rule: 'flat', diameter: inches(1), thickness: inches(1, 8) })).length,
    ).toBe(inches(9, 8));
  });

  test('bulky cloth: 1/8 in more', () => {
    expect(
      made(buttonholeLength({ rule: 'bulky', diameter: inches(5, 8), thickness: inches(1, 8) })).length,
    ).toBe(inches(7, 8));
  });

  // Machine Buttonholes Made Easy, Guide C-231, Haynes, New Mexico State University Extension, p. 2 (seen as an excerpt):
  // half the tape and 1/8 in. For a flat disc it agrees with the rule for bulky cloth (derived).
  test.each([
    [inches(5, 8), inches(1, 8)],
    [inches(1), inches(1, 16)],
    [mm(22), mm(3)],
  ])('tape: agrees with the bulky rule for a flat disc', (diameter, thickness) => {
    const round = times(diameter, 2) + times(thickness, 2);
    expect(made(buttonholeLength({ rule: 'tape', round: times(inches(1), round / inches(1)) })).length).toBe(
      made(buttonholeLength({ rule: 'bulky', diameter, thickness })).length,
    );
  });

  // Textiles and Clothing, Kate Heintz Watson, 1907, Fastenings: making button holes.
  test('ball: one and a quarter times the diameter', () => {
    expect(made(buttonholeLength({ rule: 'ball', diameter: inches(1, 2) })).length).toBe(inches(5, 8));
  });
});

describe('placing against published figures', () => {
  const front = {
    direction: 'horizontal' as const,
    first: inches(1),
    last: inches(7),
    count: 3,
    hole: inches(9, 8),
    diameter: inches(1),
    outer: inches(3, 4),
    inner: inches(3, 2),
  };

  // Buttons and Buttonholes, Extension Bulletin 576, 1965, markings: begins 1/8 in beyond the centre line. With a 1 in
  // button 1/8 in thick the hole runs from 1/8 in outside to 1 in inside the line (derived).
  test('a horizontal hole for a 1 in button', () => {
    const [one] = made(fastenings(front)).fastenings;
    expect([one!.hole.from.across, one!.hole.to.across]).toEqual([inches(1, 8), inches(-1)]);
  });

  // Standards of Quality for Custom Clothing, Association of Sewing and Design Professionals (2008), Closures (seen as an
  // excerpt): a button rests within 1/8 in of the top of a vertical hole; lap at least half a button and 1/4 in.
  test('a button rests within 1/8 in of the top of a vertical hole', () => {
    const [one] = made(fastenings({ ...front, direction: 'vertical' })).fastenings;
    expect(one!.button.along - one!.hole.from.along).toBeLessThanOrEqual(inches(1, 8));
    expect(one!.button.across).toBe(zero);
  });

  test('a lap of half a button and 1/4 in passes without advice, less does not', () => {
    expect(made(fastenings(front)).advice).toEqual([]);
    expect(made(fastenings({ ...front, outer: inches(11, 16) })).advice).toHaveLength(1);
  });

  // The New Dressmaker, Butterick, 1921, ch. 24, p. 112 (seen as an excerpt): mark top and bottom and divide the distance
  // into the wanted number of spaces, one fewer than the buttons.
  test('n buttons make n - 1 spaces', () => {
    const { positions, above } = made(spaced({ first: inches(1), last: inches(16), count: 6 }));
    expect(positions).toHaveLength(6);
    expect(above).toBe(inches(3));
  });

  // NIMI Dress Making, Trade Practical, exercise 48, p. 209 (c. 2024, seen as an excerpt): 39 cm, margins 1.5 each, 1.2 cm
  // apart: 30 gaps, 31 items.
  test('thirty-one over 36 cm are 1.2 cm apart', () => {
    expect(made(spaced({ first: mm(15), last: mm(375), count: 31 })).above).toBe(mm(12));
  });
});
