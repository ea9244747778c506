import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { easeNotches } from '../../src/cloth/ease-notches.ts';
import { inches, mm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const neck = { seam: mm(200), radius: mm(80), allowance: mm(15), curve: 'inward' as const };

describe('notches in a curved seam', () => {
  test('an inward curve is clipped, an outward one loses wedges', () => {
    expect(made(easeNotches(neck)).cut).toBe('clip');
    expect(made(easeNotches({ ...neck, curve: 'outward' })).cut).toBe('wedge');
  });

  test('the gaps make up the whole difference of the two edges', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 20, max: 900 }),
        fc.integer({ min: 3, max: 19 }),
        (seam, radius, allowance) => {
          const notches = made(
            easeNotches({ ...neck, seam: mm(seam), radius: mm(radius), allowance: mm(allowance) }),
          );
          const whole = notches.gap * (notches.at.length + 1);
          expect(Math.abs(whole - mm((seam * allowance) / radius))).toBeLessThan(1000);
          expect(notches.apart).toBeLessThanOrEqual(inches(1, 2));
          for (const at of notches.at) expect(at > 0 && at < mm(seam)).toBe(true);
        },
      ),
    );
  });

  test.each([
    [{ seam: zero }, 'seam'],
    [{ radius: zero }, 'radius'],
    [{ allowance: mm(1) }, 'allowance'],
    [{ allowance: mm(80) }, 'allowance'],
  ])('refuses %j', (change, field) => {
    expect(easeNotches({ ...neck, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
