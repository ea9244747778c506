import { describe, expect, test } from 'vitest';
import { band } from '../../src/cloth/bands.ts';
import { inches, subtract } from '../../src/length/index.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('folded bands against published figures', () => {
  // Clothing for Women, Baldt, 1916, Openings and plackets 1 (seen as an excerpt): cut allowance is the width of the plait
  // and a 1/4 in turn, stitched 1/8 in from the fold.
  test('a plait front: its width and the turn', () => {
    const made1 = made(band({ secondTurn: inches(3, 2), firstTurn: inches(1, 4) }));
    expect(made1.addition).toBe(inches(7, 4));
    expect(subtract(made1.stitching, made1.innerFold)).toBe(inches(1, 8));
  });

  // Common practice, no source: pressed over 1/2 in and then 1 in.
  test('without other wishes half an inch is pressed and then an inch', () => {
    expect(made(band()).press).toEqual([inches(1, 2), inches(1)]);
  });

  // Standards of Quality for Custom Clothing, Association of Sewing and Design Professionals (2008), Closures (seen as an
  // excerpt): overlap at least half a button and 1/4 in. The usual 1 in band takes a 1/2 in button.
  test('an inch-wide band has the lap that a half-inch button needs', () => {
    expect(made(band()).lap).toBe(inches(1, 4) + inches(1, 4));
  });
});
