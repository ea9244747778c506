import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { buttonholeLength } from '../../src/cloth/buttonhole.ts';
import { inches, mm, nm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('the rules for a buttonhole', () => {
  test.each(['older', 'linen', 'bound', 'ball'] as const)('the rule called %s says what it does', (rule) => {
    const hole = made(buttonholeLength({ rule, diameter: inches(1) }));
    expect(hole.says).not.toBe('');
    expect(hole.source.kind).toBe('published');
    expect(buttonholeLength({ rule, diameter: zero })).toMatchObject({ error: { field: 'diameter' } });
  });

  test('no rule makes a hole that the button is wider than', () => {
    fc.assert(
      fc.property(fc.integer({ min: 4_000_000, max: 80_000_000 }), (d) => {
        const diameter = nm(d);
        const lengths = [
          ...(['older', 'linen', 'bound', 'ball'] as const).map((rule) =>
            buttonholeLength({ rule, diameter }),
          ),
          ...(['flat', 'bulky'] as const).map((rule) =>
            buttonholeLength({ rule, diameter, thickness: mm(2) }),
          ),
        ].map((hole) => made(hole).length);
        expect(Math.min(...lengths)).toBe(diameter);
      }),
    );
  });
});
