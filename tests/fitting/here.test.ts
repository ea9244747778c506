import { describe, expect, it } from 'vitest';
import { ENTRIES } from '../../src/fitting/entries/all.ts';
import type { Place, View } from '../../src/fitting/entry.ts';
import { checksFor, entriesFor } from '../../src/fitting/here.ts';
import { LIES_OVER } from '../../src/fitting/places.ts';
import type { Garment } from '../../src/outfit/outfit.ts';
import { demo, FITTED } from './demos.ts';

const VIEWS: readonly View[] = ['front', 'back', 'side'];
const PLACES = Object.keys(LIES_OVER) as Place[];
const fitted = FITTED.map(([file, id]) => ({ name: `${file} ${id}`, garment: demo(file, id) }));
const ids = (garment: Garment, place?: Place, view?: View) =>
  entriesFor(garment, place, view).map(({ id }) => id);

const shirt = demo('harbour-clockmaker', 'shirt');
const sleeves = demo('harbour-clockmaker', 'sleeves');
const hose = demo('harbour-clockmaker', 'hose');
const plain = demo('plain-shirt', 'shirt');
const ballgown = demo('glasshouse-astronomer', 'ballgown');

describe('what can be seen on a garment', () => {
  it('is there for what the worked cases begin with', () => {
    expect(ids(shirt, 'upper side', 'side')).toContain('surplus-at-the-upper-side');
    expect(ids(shirt, 'chest', 'front')).toEqual(
      expect.arrayContaining(['tucks-not-straight', 'frill-too-far-in']),
    );
    expect(ids(shirt, 'front opening', 'front')).toContain('band-gapes');
    expect(ids(hose, 'crotch', 'front')).toContain('crotch-low');
    expect(ids(hose, 'ankle', 'front')).toContain('ankle-folds');
    expect(ids(sleeves, 'wrist', 'front')).toContain('cuff-tight');
    expect(ids(sleeves, 'upper arm', 'side')).toEqual(
      expect.arrayContaining(['heavy-sleeve-droops', 'sleeve-slides-down']),
    );
  });

  it('asks for pieces of its roles', () => {
    expect(ids(hose).filter((id) => /collar|sleeve|cuff|skirt/.test(id))).toEqual([]);
    expect(ids(shirt).filter((id) => /crotch|knee|sleeve|cuff/.test(id))).toEqual([]);
    expect(ids(sleeves).filter((id) => /neck|hem|waist|armhole|cap-/.test(id))).toEqual([]);
  });

  it('asks for what the entry needs', () => {
    expect(ids(plain).filter((id) => /tucks|frill/.test(id))).toEqual([]);
    expect(ids(sleeves)).toContain('beads-drag');
    expect(ids(ballgown)).not.toContain('band-gapes');
    expect(ids(ballgown)).not.toContain('beads-drag');
    expect(ids(hose)).toContain('crotch-seam-pops');
    const stiff: Garment = { ...hose, joins: hose.joins.map((join) => ({ ...join, seam: 'plain' })) };
    expect(ids(stiff)).not.toContain('crotch-seam-pops');
    const bare: Garment = { ...shirt, works: shirt.works.filter(({ kind }) => kind !== 'tucks') };
    expect(
      ids(shirt)
        .filter((id) => !ids(bare).includes(id))
        .sort(),
    ).toEqual(['back-tucks-not-straight', 'tucks-not-straight', 'tucks-spread-open', 'tucks-take-too-much']);
  });

  it('sees a frill only where it is sewn', () => {
    expect(ids(hose, 'knee')).toContain('knee-frill-uneven');
    expect(ids(sleeves, 'wrist')).toContain('cuff-frill-uneven');
    expect(ids(ballgown)).not.toContain('cuff-frill-uneven');
    expect(ids(shirt)).not.toContain('cuff-frill-uneven');
    const loose: Garment = {
      ...shirt,
      joins: shirt.joins.map((join) => ({ ...join, catches: [] })),
    };
    expect(ids(loose).filter((id) => id.startsWith('frill'))).toEqual([]);
  });

  it('puts what turns up often first', () => {
    const turns = ['often', 'now and then', 'seldom'];
    for (const { garment } of fitted) {
      const at = entriesFor(garment).map(({ often }) => turns.indexOf(often));
      expect(at).toEqual([...at].sort((a, b) => a - b));
    }
  });

  it('is all there is, place by place and view by view', () => {
    for (const { garment, name } of fitted) {
      const all = PLACES.flatMap((place) => entriesFor(garment, place));
      expect(new Set(all), name).toEqual(new Set(entriesFor(garment)));
      const seen = VIEWS.flatMap((view) => entriesFor(garment, undefined, view));
      expect(new Set(seen), name).toEqual(new Set(all));
    }
  });

  it('is at most nine at a place from one side', () => {
    for (const { garment, name } of fitted)
      for (const view of VIEWS)
        for (const place of PLACES)
          expect(ids(garment, place, view).length, `${name}, ${place}, ${view}`).toBeLessThanOrEqual(9);
  });

  it('has something at every place, and every entry somewhere but for a waistband', () => {
    const seen = new Set(fitted.flatMap(({ garment }) => ids(garment)));
    for (const place of PLACES)
      expect(
        fitted.some(({ garment }) => ids(garment, place).length > 0),
        place,
      ).toBe(true);
    expect(ENTRIES.map(({ id }) => id).filter((id) => !seen.has(id))).toEqual(['waistband-tight']);
  });

  it('ends where the garment ends', () => {
    expect(ids(plain, 'hips', 'front')).toContain('hips-tight');
    expect(ids(shirt, 'hips', 'front')).toEqual([]);
    expect(ids(ballgown, 'hips', 'front')).toContain('skirt-tight-hips');
    expect(ids(ballgown)).not.toContain('hips-tight');
    expect(ids(ballgown)).not.toContain('hem-tight');
  });

  it('is nothing for a garment without pieces', () => {
    expect(entriesFor({ ...shirt, pieces: [], works: [], joins: [] })).toEqual([]);
  });
});

describe('the checks that come first', () => {
  it('fit the garment, the most basic first', () => {
    const of = (garment: Garment) => checksFor(garment).map(({ id }) => id);
    expect(of(shirt).slice(0, 4)).toEqual([
      'as-worn',
      'grain-level',
      'side-seams-plumb',
      'shoulder-seam-on-top',
    ]);
    expect(of(shirt)).toContain('collar-one-finger');
    expect(of(ballgown)).not.toContain('collar-one-finger');
    expect(of(sleeves)).toContain('band-stays');
    expect(of(hose)).toEqual(['as-worn', 'waist-stays', 'tension-even', 'leg-seams-straight']);
  });
});
