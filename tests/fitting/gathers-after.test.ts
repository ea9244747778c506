import { describe, expect, it } from 'vitest';
import { altered } from '../../src/fitting/altered.ts';
import type { Level } from '../../src/fitting/entry.ts';
import { gathersAfter, regathered } from '../../src/fitting/gathers-after.ts';
import { inches, type Length } from '../../src/length/length.ts';
import type { Garment } from '../../src/outfit/outfit.ts';
import { demo } from '../outfit/demo-files.ts';
import { cureAfter, saw } from './at-a-try-on.ts';
import { demoGarment } from './demo-garments.ts';

const fullness = (garment: Garment): Record<string, number> =>
  Object.fromEntries(
    garment.works.flatMap((work) => (work.kind === 'gather' ? [[work.id, work.fullness]] : [])),
  );

describe('gathers after a change', () => {
  const { garment } = demoGarment('harbour-clockmaker', 'sleeves');

  it('are as they were where nothing changed', () => {
    expect(gathersAfter(garment, garment)).toEqual(garment);
  });

  it('are as full as the longer cuff leaves them', () => {
    const levels = new Map<Level, Length>([['wrist', inches(1)]]);
    const wider: Garment = {
      ...garment,
      pieces: garment.pieces.map((piece) =>
        piece.id === 'cuff-outer'
          ? {
              ...piece,
              outline: altered(piece, 'cuff', levels, [{ kind: 'width', level: 'wrist', by: inches(1, 2) }]),
            }
          : piece,
      ),
    };
    // 23 3/4 in on 10 in instead of on 9 1/2 in.
    const after = gathersAfter(garment, wider);
    expect(fullness(after)).toEqual({ 'upper-gathers': 1.5, 'lower-gathers': 2.375 });
    expect(regathered(garment, after)).toEqual([
      {
        work: 'lower-gathers',
        say: expect.stringMatching(/ 2\.38 times as long as their place instead of 2\.5$/),
      },
    ]);
    expect(regathered(garment, gathersAfter(garment, garment))).toEqual([]);
  });
});

describe('gathers after a cure', () => {
  it('are drawn up to the longer cuff, and the description says so', () => {
    const outfit = demo('harbour-clockmaker');
    const { cures } = cureAfter(outfit, 'sleeves', 'sleeves/cuff-seam/press', [
      saw('sleeves', 'cuff-tight', inches(1, 2)),
    ]);
    const after = cures.best?.after.garments.find(({ id }) => id === 'sleeves');
    const [was, is] = [demoGarment('harbour-clockmaker', 'sleeves').garment, after].map(
      (one) => one && fullness(one)['lower-gathers'],
    );
    expect(cures.best?.changes.map(({ piece }) => piece)).toContain('cuff-outer');
    expect(is).toBeLessThan(was ?? 0);
    expect(is).toBeCloseTo(2.375, 3);
  });
});
