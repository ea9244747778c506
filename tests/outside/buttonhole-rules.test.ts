import { describe, expect, test } from 'vitest';
import { buttonholeLength } from '../../src/cloth/buttonhole.ts';
import { inches } from '../../src/length/index.ts';
import { made } from '../cloth/good.ts';

const diameter = inches(3, 4);

describe('older and other published lengths of a buttonhole', () => {
  // Clothing for Women, Laura I. Baldt, 1916, Constructive processes: stitches, part 6, buttonholes (seen as an
  // excerpt): 1/16 in longer than the button is wide.
  test('the diameter and a sixteenth', () => {
    expect(made(buttonholeLength({ rule: 'older', diameter })).length).toBe(inches(13, 16));
  });

  // Encyclopedia of Needlework, Th. de Dillmont, undated, Plain sewing, fig. 29: in linen exactly the diameter.
  test('in linen the diameter itself', () => {
    expect(made(buttonholeLength({ rule: 'linen', diameter })).length).toBe(diameter);
  });

  // Making Bound Buttonholes, tailoring series, undated, step I (seen as an excerpt): button width and 1/8 in.
  test('bound, the diameter and an eighth', () => {
    expect(made(buttonholeLength({ rule: 'bound', diameter })).length).toBe(inches(7, 8));
  });
});
