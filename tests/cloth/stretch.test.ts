import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type Gauge,
  MOST_ALONG,
  MOST_ROUND,
  reduced,
  reductions,
  stretchOf,
} from '../../src/cloth/stretch.ts';
import { mm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

const gauge = (percent: number): Gauge => ({ rest: mm(100), stretched: mm(100 + percent) });

describe('stretch', () => {
  test('of a gauge', () => {
    expect(made(stretchOf({ rest: mm(80), stretched: mm(100) }))).toBe(0.25);
    expect(made(stretchOf(gauge(0)))).toBe(0);
    expect(stretchOf({ rest: zero, stretched: mm(1) })).toMatchObject({ ok: false });
    expect(stretchOf({ rest: mm(100), stretched: mm(99) }, 'gauge.along')).toMatchObject({
      ok: false,
      error: { field: 'gauge.along' },
    });
  });

  test('a cloth that gives less than a fifth round the body is refused, one that gives a fifth is not', () => {
    expect(reductions({ gauge: { round: gauge(19), along: gauge(60) } })).toMatchObject({
      ok: false,
      error: { field: 'gauge.round' },
    });
    expect(made(reductions({ gauge: { round: gauge(20) } })).along).toBe(0);
  });

  test('usual shares are held to a fifth and a twentieth, and said', () => {
    const wide = made(reductions({ gauge: { round: gauge(150), along: gauge(150) } }));
    expect(wide).toMatchObject({ round: MOST_ROUND.value, along: MOST_ALONG.value });
    expect(wide.assumed).toEqual([
      expect.stringContaining('held to 20 %'),
      expect.stringContaining('held to 5 %'),
    ]);
    const own = made(
      reductions({ gauge: { round: gauge(150), along: gauge(150) }, shareRound: 0.5, shareAlong: 0 }),
    );
    expect(own).toMatchObject({ round: 0.75 / 1.75, along: 0, assumed: [] });
  });

  test.each([-0.1, 1.1, Number.NaN])('a share of %s is refused', (share) => {
    const cloth = { gauge: { round: gauge(50) } };
    expect(reductions({ ...cloth, shareRound: share })).toMatchObject({ error: { field: 'shareRound' } });
    expect(reductions({ ...cloth, shareAlong: share })).toMatchObject({ error: { field: 'shareAlong' } });
  });

  test('cut smaller and stretched by the share, a piece is the measure again', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 200 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.integer({ min: 100, max: 1500 }),
        (percent, shareRound, girth) => {
          const { round, stretch } = made(reductions({ gauge: { round: gauge(percent) }, shareRound }));
          const worn = toMm(reduced(mm(girth), round)) * (1 + shareRound * stretch.round);
          expect(worn).toBeCloseTo(girth, 4);
        },
      ),
    );
  });
});
