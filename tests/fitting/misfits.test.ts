import { describe, expect, it } from 'vitest';
import { entriesFor } from '../../src/fitting/here.ts';
import { GUESS_COUNTS_AS, GUESSED_CHANCE, likelyMisfits } from '../../src/fitting/misfits.ts';
import { demo, demos } from '../outfit/demo-files.ts';

const outfit = demo('harbour-clockmaker');
const shirt = outfit.garments.find(({ id }) => id === 'shirt')!;

describe('what may turn out not to fit', () => {
  it('is only what can be seen there, with pieces of the garment', () => {
    for (const name of demos)
      for (const garment of demo(name).garments) {
        const pieces = new Set(garment.pieces.map(({ id }) => id));
        const entries = new Set(entriesFor(garment).map(({ id }) => `${garment.id}/${id}`));
        const misfits = likelyMisfits(garment, [], 0);
        expect(new Set(misfits.map(({ id }) => id)).size).toBe(misfits.length);
        for (const { id, alterations } of misfits) {
          expect(entries.has(id), id).toBe(true);
          expect(alterations.length, id).toBeGreaterThan(0);
          for (const one of alterations) expect(pieces.has(one.piece), id).toBe(true);
        }
      }
  });

  it('is guessed until there are try-ons, then drawn towards what the maker saw', () => {
    const chance = (times: number, tried: number): number => {
      const seen = Array.from({ length: times }, () => ({ garment: 'shirt', entry: 'frill-too-far-in' }));
      return likelyMisfits(shirt, seen, tried).find(({ id }) => id === 'shirt/frill-too-far-in')!.chance;
    };
    const guess = chance(0, 0);
    expect(Object.values(GUESSED_CHANCE.value)).toContain(guess);
    expect(chance(0, 20)).toBeLessThan(guess);
    expect(chance(GUESS_COUNTS_AS.value, GUESS_COUNTS_AS.value)).toBeCloseTo((guess + 1) / 2, 9);
    expect(chance(300, 300)).toBeGreaterThan(0.95);
    expect(chance(40, 1)).toBeLessThanOrEqual(1);
  });

  it('does not count what was seen on another garment', () => {
    const elsewhere = [{ garment: 'hose', entry: 'frill-too-far-in' }];
    expect(likelyMisfits(shirt, elsewhere, 5)).toEqual(likelyMisfits(shirt, [], 5));
  });

  it('alters the centre front where the frill lies too far in', () => {
    const frill = likelyMisfits(shirt, [], 0).find(({ id }) => id === 'shirt/frill-too-far-in')!;
    expect(frill.alterations.map(({ piece, how }) => `${piece} ${how}`)).toEqual(['centre-front anew']);
  });
});
