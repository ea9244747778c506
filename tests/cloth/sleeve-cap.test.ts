import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CROWN_WITHIN, HIGHEST_CAP, sleeveCap } from '../../src/cloth/sleeve-cap.ts';
import { mm, toMm } from '../../src/length/index.ts';
import { edgeLength } from '../../src/shape/measure.ts';
import { made as good } from './good.ts';

const capInput = fc.record({
  front: fc.integer({ min: 180, max: 320 }).map(mm),
  back: fc.integer({ min: 180, max: 320 }).map(mm),
  wide: fc.integer({ min: 60, max: 90 }),
  ease: fc.integer({ min: 0, max: 40 }).map(mm),
  fullness: fc.integer({ min: 10, max: 25 }).map((tenths) => tenths / 10),
});

describe('the cap of a sleeve', () => {
  it('is as long as its armhole, times the fullness, and the ease, to well under half a millimetre', () => {
    fc.assert(
      fc.property(capInput, ({ wide, ...told }) => {
        const armhole = told.front + told.back;
        const made = good(sleeveCap({ ...told, wide: mm(((armhole / 1e6) * wide * told.fullness) / 100) }));
        const long = edgeLength(made.start, { name: 'cap', segments: made.curve });
        expect(Math.abs(toMm(long) - (armhole * told.fullness + told.ease) / 1e6)).toBeLessThan(0.25);
      }),
      { seed: 7 },
    );
  });

  it('has the shoulder where the armhole has it, as far as the crown may move', () => {
    fc.assert(
      fc.property(capInput, ({ wide, ...told }) => {
        const armhole = told.front + told.back;
        const width = mm(((armhole / 1e6) * wide * told.fullness) / 100);
        const { start, curve, crown, height } = good(sleeveCap({ ...told, wide: width }));
        expect(height).toBeLessThanOrEqual(width * HIGHEST_CAP.value);
        const [least, most] = CROWN_WITHIN.value;
        const part = crown.x / width;
        const behind = edgeLength(start, { name: 'back', segments: [curve[0]] });
        const whole = edgeLength(start, { name: 'cap', segments: curve });
        if (part > least + 0.001 && part < most - 0.001) {
          expect(behind / whole).toBeCloseTo(told.back / armhole, 3);
        } else {
          expect(Math.sign(behind / whole - told.back / armhole)).toBe(part < 0.5 ? 1 : -1);
        }
      }),
      { seed: 8 },
    );
  });

  it('is refused where it would be flat or steeper than it is wide', () => {
    const told = { front: mm(240), back: mm(250), ease: mm(0), fullness: 1 };
    const field = (made: ReturnType<typeof sleeveCap>) => (made.ok ? 'none' : made.error.field);
    expect(field(sleeveCap({ ...told, wide: mm(490) }))).toBe('wide');
    expect(field(sleeveCap({ ...told, wide: mm(480) }))).toBe('none');
    expect(field(sleeveCap({ ...told, wide: mm(180) }))).toBe('wide');
    expect(field(sleeveCap({ ...told, wide: mm(0) }))).toBe('wide');
    expect(field(sleeveCap({ ...told, wide: mm(350), ease: mm(-1) }))).toBe('ease');
    expect(field(sleeveCap({ ...told, wide: mm(350), fullness: 0.9 }))).toBe('fullness');
    expect(field(sleeveCap({ ...told, wide: mm(350), front: mm(0), back: mm(0) }))).toBe('armhole');
  });
});
