import { describe, expect, test } from 'vitest';
import { type CuffButtonsInput, cuffButtons } from '../../src/cloth/cuff-buttons.ts';
import { inches, toInches } from '../../src/length/index.ts';
import { made } from './good.ts';

const cuff: CuffButtonsInput = {
  depth: inches(2),
  overlap: inches(1),
  round: inches(8),
  buttons: 1,
  diameter: inches(1, 2),
  thickness: inches(1, 8),
};

describe('buttons on a cuff', () => {
  test('one sits in the middle of depth and overlap', () => {
    const { buttons, hole } = made(cuffButtons(cuff));
    expect(hole).toBe(inches(5, 8));
    // The hole begins 1/8 in past the middle, towards the end that lies on top.
    expect(buttons).toEqual([{ down: inches(1), hole: [inches(3, 8), inches(1)], button: inches(1, 2) }]);
  });

  test('three are even in the depth, as far from the edges as half a space', () => {
    const { buttons } = made(cuffButtons({ ...cuff, buttons: 3, depth: inches(3) }));
    expect(buttons.map(({ down }) => toInches(down))).toEqual([0.5, 1.5, 2.5]);
  });

  test('a narrow overlap is advised against', () => {
    expect(made(cuffButtons({ ...cuff, overlap: inches(3, 4) })).advice).toHaveLength(1);
    expect(made(cuffButtons(cuff)).advice).toHaveLength(0);
  });

  test.each<[Partial<CuffButtonsInput>, string]>([
    [{ buttons: 0 }, 'buttons'],
    [{ buttons: 4 }, 'buttons'],
    [{ diameter: inches(0) }, 'diameter'],
    [{ thickness: inches(2) }, 'thickness'],
    [{ overlap: inches(1, 4) }, 'overlap'],
    [{ round: inches(1, 4) }, 'diameter'],
  ])('refuses %j', (change, field) => {
    expect(cuffButtons({ ...cuff, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
