import { describe, expect, test } from 'vitest';
import { buttonholeLength } from '../../src/cloth/buttonhole.ts';
import { coveredButton } from '../../src/cloth/covered-button.ts';
import { fastenings, lapFor } from '../../src/cloth/fastenings.ts';
import { spaced } from '../../src/cloth/spacing.ts';
import { inches, mm, subtract, times } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const flat = (diameter = inches(5, 8), thickness = inches(1, 8)) =>
  made(buttonholeLength({ rule: 'flat', diameter, thickness })).length;

describe('lengths of holes, each by the rule that it names', () => {
  // Buttonholes and Pockets, Clothing Leaflet 9, Helen Rocke, Nebraska 4-H, 1965 (seen as an excerpt): diameter and thickness.
  test.each([
    [inches(1, 2), inches(1, 16), inches(9, 16)],
    [inches(3, 4), inches(1, 8), inches(7, 8)],
    [inches(7, 8), inches(3, 16), inches(17, 16)],
  ])('rule of diameter and thickness: %s and %s nm', (diameter, thickness, wanted) => {
    expect(flat(diameter, thickness)).toBe(wanted);
  });

  // Machine Buttonholes Made Easy, Guide C-231, Haynes, New Mexico State University Extension, undated, p. 2 (seen as an
  // excerpt): a domed button needs a longer hole than a flat one of the same diameter. A dome is taken as half a ball (derived).
  test('rule of the tape: a domed button takes a longer hole than a flat one as wide', () => {
    const diameter = inches(5, 8);
    const round = times(diameter, 1 + Math.PI / 2);
    const domed = made(buttonholeLength({ rule: 'tape', round })).length;
    const flatRound = times(inches(1), 2 * (5 / 8 + 1 / 16));
    expect(domed).toBeGreaterThan(made(buttonholeLength({ rule: 'tape', round: flatRound })).length);
  });

  // The same guide against Extension Bulletin 576, 1965 (both seen as excerpts): d 5/8, t 1/8: C = 1 1/2, C/2 + 1/8 = 7/8 (derived).
  test('a tape of 1 1/2 in round gives 7/8 in', () => {
    expect(made(buttonholeLength({ rule: 'tape', round: inches(3, 2) })).length).toBe(inches(7, 8));
  });

  // Textiles and Clothing, Kate Heintz Watson, 1907, Fastenings: a ball takes a quarter more; flat buttons a little more than
  // their diameter.
  test('a ball takes a longer hole than a flat button as wide', () => {
    const ball = made(buttonholeLength({ rule: 'ball', diameter: inches(5, 8) })).length;
    expect(ball).toBe(inches(25, 32));
    expect(ball).toBeGreaterThan(flat());
    expect(flat()).toBeGreaterThan(inches(5, 8));
  });
});

describe('buttons near the edge', () => {
  // Buttons and Buttonholes, Extension Bulletin 576, 1965 (seen as an excerpt, its lower figure garbled): half the button and 1/4
  // to 1/2 in beyond the centre line.
  test.each([
    [inches(1, 2), inches(1, 2), inches(3, 4)],
    [inches(3, 4), inches(5, 8), inches(7, 8)],
    [inches(1), inches(3, 4), inches(1)],
  ])('lap for a button of %s nm', (diameter, least, most) => {
    expect(made(lapFor(diameter))).toMatchObject({ least, most });
  });

  // Buttonholes and Pockets, Clothing Leaflet 9, Rocke, Nebraska 4-H, 1965 (seen as an excerpt): the button's edge about 1/4 in, or a
  // third of the diameter, from the garment's edge. Both are the same for a 3/4 in button (derived).
  test.each([inches(1, 2), inches(3, 4), inches(1)])(
    'a button of %s nm ends 1/4 in from the edge',
    (diameter) => {
      expect(subtract(made(lapFor(diameter)).least, times(diameter, 1 / 2))).toBe(inches(1, 4));
    },
  );
  test('a third of a 3/4 in button is that 1/4 in (the same leaflet, 1965)', () => {
    const { least } = made(lapFor(inches(3, 4)));
    expect(subtract(least, inches(3, 8))).toBe(times(inches(3, 4), 1 / 3));
  });

  const front = { first: inches(1), last: inches(16), inner: inches(3, 2), thickness: inches(1, 8) };
  // Textiles and Clothing, Kate Heintz Watson, 1907, Making button holes; the same in Second Year's Sewing, part 2, undated (seen
  // as an excerpt): a hole ends 1/4 in from the edge. With our lap it lies at least that far in.
  test.each([inches(1, 2), inches(3, 4), inches(1)])(
    'a hole for %s nm ends no less than 1/4 in from the edge',
    (diameter) => {
      const outer = made(lapFor(diameter)).least;
      const placed = made(
        fastenings({
          ...front,
          direction: 'horizontal',
          count: 4,
          hole: times(diameter, 9 / 8),
          diameter,
          outer,
        }),
      );
      for (const { hole } of placed.fastenings)
        expect(subtract(outer, hole.from.across)).toBeGreaterThanOrEqual(inches(1, 4));
    },
  );

  // Standards of Quality for Custom Clothing, Association of Sewing and Design Professionals, 2008, Closures (seen as an excerpt):
  // within 1/8 in of the centre front for horizontal holes.
  test('a button on a horizontal hole rests within 1/8 in of the centre line', () => {
    const placed = made(
      fastenings({
        ...front,
        direction: 'horizontal',
        count: 4,
        hole: inches(7, 8),
        diameter: inches(3, 4),
        outer: inches(5, 8),
      }),
    );
    for (const { hole, button } of placed.fastenings) {
      expect(Math.abs(button.across)).toBeLessThanOrEqual(inches(1, 8));
      expect(subtract(hole.from.across, button.across)).toBeLessThanOrEqual(inches(1, 8));
    }
  });

  // Buttons and Buttonholes, Extension Bulletin 576, 1965 (seen as an excerpt): one button at the natural waist, one at about the
  // fullest part of the bust.
  test('waist and bust each have a button', () => {
    const levels = [inches(5), inches(14)];
    const placed = made(
      fastenings({
        ...front,
        direction: 'vertical',
        count: 6,
        hole: inches(3, 4),
        diameter: inches(5, 8),
        outer: inches(5, 8),
        levels,
      }),
    );
    const at = placed.fastenings.map(({ button }) => button.along);
    for (const level of levels) expect(at).toContain(level);
  });
});

describe('spacing and lines', () => {
  // The New Dressmaker, Butterick, 1921, ch. 24, p. 112 (seen as an excerpt): the distance divided into the wanted number of spaces.
  test.each([
    [2, 15],
    [4, 5],
    [11, 1.5],
  ])('%s buttons over 15 in lie %s in apart', (count, apart) => {
    const { positions, above } = made(spaced({ first: inches(1), last: inches(16), count }));
    expect(positions).toHaveLength(count);
    expect(above).toBe(inches(apart));
  });

  // Sizes, Inc., entry Buttons, undated (seen as an excerpt): 40 lines to the inch. The millimetres are derived.
  test.each([
    [16, 10.16],
    [24, 15.24],
    [32, 20.32],
    [60, 38.1],
  ])('%s lines are %s mm', (lines, wide) => {
    expect(made(coveredButton({ lines })).form).toBe(mm(wide));
  });
});
