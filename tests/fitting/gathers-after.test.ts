import { describe, expect, it } from 'vitest';
import { altered } from '../../src/fitting/altered.ts';
import type { Level } from '../../src/fitting/entry.ts';
import { gathersAfter } from '../../src/fitting/gathers-after.ts';
import { inches, type Length } from '../../src/length/length.ts';
import type { Garment } from '../../src/outfit/outfit.ts';
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
    expect(fullness(gathersAfter(garment, wider))).toEqual({ 'upper-gathers': 1.5, 'lower-gathers': 2.375 });
  });
});
