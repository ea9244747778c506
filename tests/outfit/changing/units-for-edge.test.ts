import { describe, expect, test } from 'vitest';
import { readEdge, spell } from '../../../src/outfit/chains.ts';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { putOn } from '../../../src/outfit/changing/units.ts';
import { unitsForEdge } from '../../../src/outfit/changing/units-for-edge.ts';
import { rawEdges } from '../../../src/outfit/raw-edges.ts';
import { unitCalled } from '../../../src/outfit/units/all.ts';
import { first, garmentOf } from '../units/worn.ts';

const blouse = garmentOf([
  { unit: 'plain-front', name: 'Front' },
  { unit: 'plain-back', name: 'Back' },
  { unit: 'plain-sleeve', name: 'Sleeve' },
]);
const garment = first(blouse);
const fits = (edge: string): readonly string[] =>
  unitsForEdge(blouse, garment.id, readEdge(edge)).map(({ id }) => id);

describe('ready-made parts for an edge that is still raw', () => {
  test('are those that are sewn to such an edge and finish it', () => {
    expect(fits('front.neck')).toEqual(
      expect.arrayContaining([
        'flat-collar',
        'standing-band',
        'stand-and-collar',
        'bias-bound-neck',
        'facing',
      ]),
    );
    expect(fits('sleeve.lower')).toEqual(expect.arrayContaining(['buttoned-cuff', 'hem', 'straight-frill']));
    expect(fits('front.opening')).toEqual(expect.arrayContaining(['button-band', 'facing']));
    expect(fits('front.neck')).not.toContain('buttoned-cuff');
    // Darts are sewn at an edge, and leave it as it is.
    expect(fits('front.hem')).not.toContain('darts');
    expect(fits('front.hem')).toContain('hem');
    expect(fits('sleeve.lower').at(-1)).toMatch(/frill$/);
    // The top of the lap is folded in with the band.
    expect(fits('front.lap')).toContain('button-band');
  });

  test('are put on just there, and it is raw no longer', () => {
    let put = 0;
    for (const edge of rawEdges(garment)) {
      for (const unit of unitsForEdge(blouse, garment.id, edge)) {
        const at = suggestPlaces(garment, unit, spell(edge));
        const made = putOn(blouse, garment.id, unit.id, { name: unit.name, entries: {}, at, cloths: {} });
        if (!made.ok) continue;
        expect(rawEdges(first(made.value.outfit)).map(spell)).not.toContain(spell(edge));
        put += 1;
      }
    }
    expect(put).toBeGreaterThan(20);
  });

  test('are none for an edge or a garment that is not there', () => {
    expect(fits('pocket.top')).toEqual([]);
    expect(unitsForEdge(blouse, 'none', readEdge('front.neck'))).toEqual([]);
  });

  test('leave the place as it is proposed where the edge that is meant cannot take them', () => {
    const cuff = unitCalled('buttoned-cuff')!;
    expect(suggestPlaces(garment, cuff, 'front.neck')).toEqual(suggestPlaces(garment, cuff));
    const hem = unitCalled('hem')!;
    expect(suggestPlaces(garment, hem).edges).toContain('front.hem');
    expect(suggestPlaces(garment, hem, 'sleeve.lower')).toEqual({ edges: ['sleeve.lower'] });
  });
});
