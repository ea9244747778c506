import { describe, expect, it } from 'vitest';
import type { TuckFamily } from '../../src/cloth/fold-map.ts';
import { mm } from '../../src/length/index.ts';
import { openedPiece } from '../../src/paper/tucked-piece.ts';
import { boundingBox } from '../../src/shape/index.ts';
import { at, rectangle } from '../shape/shapes.ts';

const family: TuckFamily = {
  datum: at(0, 0),
  across: 0,
  tucks: [{ at: mm(50), depth: mm(10) }],
  pressed: 'away',
};

describe('a piece opened through its tucks', () => {
  it('keeps its seam line where only the allowance holds the cloth together', () => {
    const made = openedPiece(rectangle(65, 40), rectangle(55, 30), [family]);
    if (!made.ok) throw new Error(made.error.wrong);
    expect(boundingBox(made.value.cut)).toMatchObject({ right: mm(85), bottom: mm(40) });
    expect(made.value.seams.map((seam) => boundingBox(seam))).toMatchObject([
      { left: mm(0), right: mm(55) },
      { left: mm(65), right: mm(75) },
    ]);
  });

  it('does so for crossed tucks too', () => {
    const made = openedPiece(rectangle(65, 65), rectangle(55, 65), [family, { ...family, across: 90 }]);
    if (!made.ok) throw new Error(made.error.wrong);
    expect(made.value.seams).toHaveLength(2);
  });

  it('is refused by its cutting line', () => {
    expect(openedPiece(rectangle(55, 40), rectangle(45, 30), [family])).toMatchObject({
      ok: false,
      error: { wrong: expect.stringContaining('tuck 1') },
    });
  });
});
