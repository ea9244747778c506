import { describe, expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { findPlace } from '../../../src/outfit/units/place.ts';
import { armholeRuns, setInto, sleeveOutline, underArm } from '../../../src/outfit/units/sleeve-shape.ts';
import type { EdgesPlaced } from '../../../src/outfit/units/unit.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { finished, sleeveless } from './bodies.ts';

const [garment] = sleeveless().garments;
const placed = (...written: readonly string[]): EdgesPlaced => {
  const found = findPlace(garment!, { kind: 'edges', label: 'the armhole', like: [] }, written);
  if (!found.ok || found.value.kind !== 'edges') throw new Error('not found');
  return found.value;
};

describe('the armhole', () => {
  test('is told apart into front and back by the names of its pieces, whichever comes first', () => {
    const back = finished(garment!, [{ piece: 'back', edge: 'armhole', other: false }]);
    for (const written of [
      ['front.armhole', 'back.armhole'],
      ['back.armhole', 'front.armhole'],
    ]) {
      const runs = armholeRuns(garment!, placed(...written));
      expect(runs.back / 1e6).toBeCloseTo(back, 3);
      expect(runs.front + runs.back).toBe(placed(...written).length);
    }
  });

  test('is halved where no name says which is which', () => {
    const runs = armholeRuns(garment!, placed('front.armhole'));
    expect(Math.abs(runs.front - runs.back)).toBeLessThanOrEqual(1);
  });

  test('is needed by a sleeve that is set in, and left out by one that is not', () => {
    const at = placed('front.armhole', 'back.armhole');
    expect(setInto('armhole', at)).toEqual({ ok: true, value: at });
    expect(setInto('elastic', at)).toEqual({ ok: true, value: undefined });
    expect(setInto('armhole', undefined)).toMatchObject({ ok: false, error: { field: 'at.armhole' } });
  });
});

test('a sleeve without a cap closes, its long edges as long as each other', () => {
  const lengths = edgeLengths(sleeveOutline(mm(400), mm(250), mm(300), undefined));
  expect([...lengths.keys()]).toEqual(['upper', 'front-seam', 'lower', 'back-seam']);
  expect(lengths.get('front-seam')).toBe(lengths.get('back-seam'));
  expect(lengths.get('lower')).toBe(mm(250));
  expect(underArm(mm(300), undefined)).toEqual({ ok: true, value: mm(300) });
  expect(underArm(mm(2), undefined, 'toSeam')).toMatchObject({ ok: false, error: { field: 'toSeam' } });
});
