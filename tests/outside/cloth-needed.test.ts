import { describe, expect, test } from 'vitest';
import { type ClothNeededInput, clothNeeded } from '../../src/cloth/cloth-needed.ts';
import { inches, type Length, mm } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const strips = (across: Length, along: Length, count: number, change: Partial<ClothNeededInput>) =>
  made(
    clothNeeded({
      pieces: [{ name: 'Strip', shape: { across, along }, cut: 'one', count }],
      width: mm(900),
      laid: 'single',
      oneWay: false,
      ...change,
    }),
  );

describe('cloth needed against published figures', () => {
  // NIMI Dress Making, Trade Practical, p. 203 (c) (c. 2024, seen as an excerpt): a pattern width of 236 cm from cloth of
  // 90 cm less 2 cm of seam takes 3 strips across the cloth; 3 x 15 cm = 45 cm of cloth.
  test('three strips of 15 cm across the cloth take 45 cm', () => {
    const count = Math.ceil(2360 / (900 - 20));
    expect(count).toBe(3);
    expect(strips(mm(880), mm(150), count, { selvage: mm(10) }).buy).toBe(mm(450));
  });

  // Math Central, University of Regina, question of 2007 (seen as an excerpt): running length is area over width;
  // cloth of 54 in is 1.5 yd wide, so square yards over 1.5 are running yards.
  test.each([3, 6, 12])(
    '%s square yards of 54 in cloth are that over 1.5 in running yards',
    (squareYards) => {
      const found = strips(inches(27), inches(36), (squareYards * 4) / 3, { width: inches(54) });
      expect(found.areaBound).toBe(inches((36 * squareYards) / 1.5));
      expect(found.length).toBe(found.areaBound);
    },
  );

  // NIMI Dress Making, Trade Theory, p. 32 (c. 2024, seen as an excerpt): marker efficiency is pattern area over marker area x 100.
  test('efficiency is pattern area over the area laid', () => {
    const { efficiency, length } = strips(mm(400), mm(500), 3, {});
    expect(length).toBe(mm(1000));
    expect(efficiency * 100).toBeCloseTo((100 * (3 * 40 * 50)) / (90 * 100), 9);
  });

  // Textiles and Clothing, Kate Heintz Watson, 1907, lines 1919-1928 of the Project Gutenberg text: single width 30 and 36 in,
  // double 45 and 54, velveteen 27. The same breadths 13 in wide fit as often as the width holds them.
  test.each([
    [27, 2],
    [30, 2],
    [36, 2],
    [45, 3],
    [54, 4],
  ])('cloth %s in wide holds %s breadths of 13 in', (width, across) => {
    const found = strips(inches(13), inches(40), 12, { width: inches(width), step: inches(36, 8) });
    expect(found.length).toBe(inches((12 / across) * 40));
    expect(found.buy / inches(36, 8)).toBe(Math.ceil(((12 / across) * 40) / 4.5));
  });

  // Same book, 1907, lines 4156-4162: with a nap, gores are cut on the lengthwise fold and lie all one way; on narrow cloth they
  // are cut singly and the pattern reversed for the other of the pair.
  test('gores of a napped cloth lie one way, doubled or singly', () => {
    const gore = [
      { x: inches(6), y: inches(0) },
      { x: inches(11), y: inches(0) },
      { x: inches(17), y: inches(40) },
      { x: inches(0), y: inches(40) },
    ];
    const pieces = [{ name: 'Gore', shape: gore, cut: 'pair' as const, count: 2 }];
    const wide = made(clothNeeded({ pieces, width: inches(54), laid: 'doubled', oneWay: true }));
    const narrow = { pieces, width: inches(30), oneWay: true };
    expect(clothNeeded({ ...narrow, laid: 'doubled' })).toMatchObject({
      ok: false,
      error: { field: 'width' },
    });
    const single = made(clothNeeded({ ...narrow, laid: 'single' }));
    for (const { places } of [...wide.parts, ...single.parts]) {
      expect(places.every(({ turned }) => turned === 0)).toBe(true);
    }
    expect(single.parts[0]?.places.map(({ mirrored }) => mirrored)).toEqual([false, true, false, true]);
    // Without a nap every other gore may stand on its head, and the four go closer.
    const plain = made(clothNeeded({ ...narrow, oneWay: false, laid: 'single' }));
    expect(plain.length).toBeLessThan(single.length);
  });
});
