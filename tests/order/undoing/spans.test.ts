import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { around, covered, overlaps, type Span } from '../../../src/order/undoing/spans.ts';

const span: fc.Arbitrary<Span> = fc
  .tuple(fc.nat(1000), fc.nat(1000))
  .map(([a, b]) => [Math.min(a, b) / 1000, Math.max(a, b) / 1000]);

describe('parts of a run', () => {
  it('cover together what they cover thousandth by thousandth', () => {
    fc.assert(
      fc.property(fc.array(span, { maxLength: 6 }), (spans) => {
        let counted = 0;
        for (let i = 0; i < 1000; i += 1) {
          const middle = (i + 0.5) / 1000;
          if (spans.some(([from, to]) => from < middle && middle < to)) counted += 1;
        }
        expect(covered(spans)).toBeCloseTo(counted / 1000, 9);
      }),
      { seed: 1 },
    );
    expect(covered([])).toBe(0);
    expect(
      covered([
        [0, 0.1 + 0.2],
        [0.3, 1 - 1e-9],
      ]),
    ).toBe(1);
  });

  it('overlap where they share more than a point', () => {
    expect(overlaps([0, 0.5], [[0.5, 1]])).toBe(false);
    expect(
      overlaps(
        [0, 0.5],
        [
          [0.8, 1],
          [0.4, 0.6],
        ],
      ),
    ).toBe(true);
    expect(overlaps([0, 1], [])).toBe(false);
  });

  it('reach to either side of a place, and round a ring', () => {
    expect(around(0.5, 0.1, false)).toEqual([[0.4, 0.6]]);
    expect(covered(around(1, 0.1, false))).toBeCloseTo(0.1);
    expect(covered(around(1, 0.1, true))).toBeCloseTo(0.2);
    expect(covered(around(0, 0.1, true))).toBeCloseTo(0.2);
    expect(covered(around(0.5, 3, true))).toBe(1);
  });
});
