import { describe, expect, it } from 'vitest';
import { ARMHOLE_TO_WAIST, WAIST_TO_HIP } from '../../src/fitting/body-levels.ts';
import type { Level, Role } from '../../src/fitting/entry.ts';
import { levelsOf, widthAt } from '../../src/fitting/levels.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import { inches, mm, nm, toInches, toMm } from '../../src/length/length.ts';
import type { Garment } from '../../src/outfit/outfit.ts';
import { first, garmentOf } from '../outfit/units/worn.ts';
import { demoGarment, pieceOf } from './demo-garments.ts';

const inInches = (role: Role, id: string): Partial<Record<Level, number>> =>
  Object.fromEntries(
    [...pieceOf(role, id).levels].map(([level, y]) => [level, Math.round(toInches(y) * 100) / 100]),
  );

describe('levels of pieces', () => {
  it('take the chest from the lowest point of the armhole and hand it over the panel seam', () => {
    const side = inInches('side-front', 'side-front');
    expect(side.chest).toBe(9.75);
    expect(side.waist).toBe(9.75 + toInches(ARMHOLE_TO_WAIST.value));
    expect(inInches('centre-front', 'centre-front').chest).toBeCloseTo(9.75, 1);
    expect(inInches('centre-back', 'back').chest).toBeCloseTo(9.75, 1);
    expect(inInches('centre-front', 'centre-front')).toMatchObject({ neck: 0, shoulder: 0.75, hem: 20 });
  });

  it('agree along a seam whose pieces are drawn at other heights', () => {
    const { garment } = demoGarment('harbour-clockmaker', 'shirt');
    const down = inches(7);
    const drop = <P extends { readonly x: number; readonly y: number }>(point: P): P => ({
      ...point,
      y: nm(point.y + down),
    });
    const dropped: Garment = {
      ...garment,
      pieces: garment.pieces.map((piece) =>
        piece.id === 'centre-front'
          ? {
              ...piece,
              outline: {
                start: drop(piece.outline.start),
                edges: piece.outline.edges.map((edge) => ({
                  ...edge,
                  segments: edge.segments.map((one) =>
                    one.kind === 'line'
                      ? { ...one, to: drop(one.to) }
                      : { ...one, first: drop(one.first), second: drop(one.second), to: drop(one.to) },
                  ),
                })),
              },
            }
          : piece,
      ),
    };
    const before = levelsOf(garment, rolesOf(garment)).get('centre-front')!;
    const after = levelsOf(dropped, rolesOf(dropped)).get('centre-front')!;
    for (const [level, y] of before) expect(toMm(after.get(level)!)).toBeCloseTo(toMm(y) + toMm(down), 3);
  });

  it('put the hips below the waist where a shirt is long enough', () => {
    const front = pieceOf('centre-front', 'front').levels;
    expect(toMm(front.get('hip')!)).toBeCloseTo(toMm(nm(front.get('waist')! + WAIST_TO_HIP.value)), 0);
    expect(pieceOf('centre-back', 'back').levels.has('hip')).toBe(false);
  });

  it('end a bodice at the waist where a skirt is sewn to it', () => {
    const { levels } = pieceOf('side-front', 'front-side');
    expect([...levels.keys()]).toEqual(['chest', 'waist']);
    expect(toMm(levels.get('waist')!)).toBeCloseTo(421.17, 1);
    expect([...pieceOf('skirt', 'skirt-front').levels.keys()]).toEqual(['waist', 'hip', 'hem']);
  });

  it('go over both parts of a leg', () => {
    expect([...pieceOf('leg', 'thigh').levels.keys()]).toEqual(['waist', 'hip', 'crotch', 'thigh', 'knee']);
    expect([...pieceOf('lower-leg', 'lower-leg').levels.keys()]).toEqual(['knee', 'calf', 'ankle']);
    expect(toMm(pieceOf('leg', 'thigh').levels.get('crotch')!)).toBe(268.5);
    expect(toMm(pieceOf('lower-leg', 'lower-leg').levels.get('ankle')!)).toBe(406.5);
  });

  it('have a leg in one piece with all of them, from the top down', () => {
    const { outfit } = demoGarment('harbour-clockmaker', 'hose');
    const give = { across: 70, along: 70 };
    const knitted = {
      ...outfit,
      cloths: outfit.cloths.map((one) => ({ ...one, stretch: give })),
      garments: [],
    };
    const made = first(garmentOf([{ unit: 'stretch-leg', name: 'Leg' }], knitted));
    const levels = levelsOf(made, rolesOf(made)).get('leg')!;
    expect([...levels.keys()]).toEqual(['waist', 'hip', 'crotch', 'thigh', 'knee', 'calf', 'ankle']);
    const heights = [...levels.values()];
    expect(heights).toEqual([...heights].sort((a, b) => a - b));
  });

  it('go down a sleeve with a cap and one without', () => {
    expect(inInches('sleeve', 'sleeve')).toEqual({ top: 0, 'upper-arm': 2.89, elbow: 8.5, wrist: 17 });
    const { garment } = demoGarment('plain-shirt', 'shirt');
    const capped = levelsOf(garment, rolesOf(garment)).get('sleeve')!;
    expect([...capped].map(([level, y]) => [level, toMm(y)])).toEqual([
      ['top', 0],
      ['upper-arm', 125],
      ['elbow', 342.5],
      ['wrist', 560],
    ]);
  });

  it('go over both parts of a sleeve', () => {
    const { garment } = demoGarment('glasshouse-astronomer', 'ballgown');
    const levels = levelsOf(garment, rolesOf(garment));
    expect([...levels.get('sleeve')!.keys(), ...levels.get('sleeve-lower')!.keys()]).toEqual([
      'top',
      'upper-arm',
      'elbow',
      'wrist',
    ]);
  });

  const ones: readonly (readonly [Role, string, Level])[] = [
    ['cuff', 'cuff-outer', 'wrist'],
    ['arm-band', 'upper-band', 'upper-arm'],
    ['collar', 'collar-under', 'neck'],
    ['frill', 'cuff-frill', 'wrist'],
    ['frill', 'knee-frill', 'knee'],
    ['frill', 'hem-frill-1', 'hem'],
  ];
  it.each(ones)('are one for a %s (%s)', (role, id, level) =>
    expect([...pieceOf(role, id).levels.keys()]).toEqual([level]),
  );
});

describe('the width at a level', () => {
  it('is measured from side to side, of a folded piece over the half', () => {
    expect(toInches(widthAt(pieceOf('cuff', 'cuff-outer').piece.outline, inches(1)))).toBe(9.5);
    expect(toInches(widthAt(pieceOf('centre-back', 'back').piece.outline, inches(20)))).toBe(4.25);
  });

  it('is nothing above and below a piece', () => {
    const { outline } = pieceOf('cuff', 'cuff-outer').piece;
    expect(widthAt(outline, mm(-1))).toBe(0);
    expect(widthAt(outline, mm(500))).toBe(0);
  });
});
