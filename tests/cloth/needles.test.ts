import { describe, expect, test } from 'vitest';
import { needleFor, otherNumber, type SewnCloth } from '../../src/cloth/needles.ts';
import { made } from './good.ts';

const shirting: SewnCloth = { weight: 'light', knit: false, stretches: false };
const jersey: SewnCloth = { weight: 'medium', knit: true, stretches: true };

describe('needles', () => {
  test('the heaviest cloth decides the size, any knit the point', () => {
    expect(made(needleFor([shirting]))).toMatchObject({ metric: 70, other: 10, point: 'round' });
    expect(made(needleFor([shirting, jersey]))).toMatchObject({ metric: 80, other: 12, point: 'ball' });
    expect(made(needleFor([jersey, { ...shirting, weight: 'very heavy' }]))).toMatchObject({ metric: 100 });
  });

  test('refuses no cloth', () => {
    expect(needleFor([])).toMatchObject({ ok: false, error: { field: 'cloths' } });
  });

  test.each([55, 72, 115, 120, Number.NaN])('refuses the metric number %s', (metric) => {
    expect(otherNumber(metric)).toMatchObject({ ok: false, error: { field: 'metric' } });
  });
});
