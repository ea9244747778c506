import fc from 'fast-check';
import { expect, test } from 'vitest';
import { circleFrill } from '../../src/cloth/circles.ts';
import { ringParts } from '../../src/cloth/flounce.ts';
import { ringMarks } from '../../src/cloth/ring-marks.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

test('one ring closed round a cuff', () => {
  const [ring] = made(ringMarks([1], mm(100 / Math.PI), mm(10)));
  expect(ring?.at.map(toMm).map(Math.round)).toEqual([0, 45, 90, 135, 180]);
  expect(ring?.turns.map((turn) => Math.round(turn * 1000))).toEqual([50, 275, 500, 725, 950]);
});

test('the rings of a frill cover their seam exactly', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 150, max: 2000 }),
      fc.integer({ min: 1, max: 14 }),
      fc.integer({ min: 0, max: 8 }),
      (seam, quarters, slit) => {
        const circles = quarters / 4;
        const frill = { seam: mm(seam), depth: mm(60), circles, allowance: zero, hem: zero, slit: mm(slit) };
        const { radius, cutInside, cutOutside } = made(circleFrill(frill));
        const turns = ringParts(circles, cutInside, cutOutside).map(({ turn }) => turn);
        const marks = ringMarks(turns, radius, mm(slit));
        if (!marks.ok) return;
        expect(Math.abs((marks.value.at(-1)?.at.at(-1) ?? 0) - mm(seam))).toBeLessThan(100);
        for (const [i, { at }] of marks.value.entries())
          if (i > 0) expect(at[0]).toBe(marks.value[i - 1]?.at.at(-1));
      },
    ),
  );
});

test('refuses a part that its allowances use up', () => {
  expect(ringMarks([1, 0.02], mm(50), mm(10))).toMatchObject({ ok: false, error: { field: 'circles' } });
});
