import { describe, expect, it } from 'vitest';
import { fitted } from '../../src/fitting/fitted.ts';
import { levelsOf } from '../../src/fitting/levels.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import { demoGarment } from './demo-garments.ts';

describe('a garment looked up for fitting', () => {
  const { garment } = demoGarment('harbour-clockmaker', 'shirt');

  it('is looked up once', () => {
    expect(fitted(garment)).toBe(fitted(garment));
  });

  it('is looked up anew once it is changed', () => {
    const shorter = { ...garment, pieces: garment.pieces.filter(({ id }) => id !== 'back') };
    expect(fitted(shorter).roles.has('back')).toBe(false);
    expect(fitted(garment).roles.has('back')).toBe(true);
  });

  it('has roles, levels and every seam by each of its pieces', () => {
    const { roles, levels, seams } = fitted(garment);
    expect(roles).toEqual(rolesOf(garment));
    expect(levels).toEqual(levelsOf(garment, roles));
    for (const seam of seams.alike)
      for (const piece of seam.edges.keys()) expect(seams.of.get(piece)).toContain(seam);
  });
});
