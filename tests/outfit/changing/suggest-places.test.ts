import { describe, expect, test } from 'vitest';
import { good } from '../../../src/length/result.ts';
import { removePart } from '../../../src/outfit/changing/parts.ts';
import { placeChoices, suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import type { Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { UNITS, unitCalled } from '../../../src/outfit/units/all.ts';
import { findPlace } from '../../../src/outfit/units/place.ts';
import { type PlaceAsked, unit } from '../../../src/outfit/units/unit.ts';
import { demo, demos } from '../demo-files.ts';
import { garmentOf, only, put } from './shirt.ts';

const edges = (like: string, more: Partial<PlaceAsked> = {}): PlaceAsked => ({
  kind: 'edges',
  label: 'the edge',
  like: [like],
  ...more,
});
const first = (garment: Garment, asked: PlaceAsked): readonly string[] =>
  placeChoices(garment, asked)[0]?.at ?? [];
/** The first garment of a demonstration without these parts. */
const without = (name: (typeof demos)[number], ...ids: readonly string[]): Garment =>
  ids.reduce((outfit: Outfit, id) => {
    const [garment] = outfit.garments;
    return removePart(outfit, garment!.id, id).outfit;
  }, demo(name)).garments[0]!;

const ROUND_NECK = ['front.neck', 'back.neck', 'other:back.neck', 'other:front.neck'];

describe('where a unit is likely to be put', () => {
  test('round the neck, from one front edge to the other, following the shoulder seams', () => {
    const shirt = without('plain-shirt', 'collar-upper', 'collar-under');
    expect(first(shirt, edges('neck', { round: true }))).toEqual(ROUND_NECK);
    expect(placeChoices(shirt, edges('neck', { round: true }))[0]?.say).toBe(
      'Front and back, neck, both sides',
    );
    expect(
      first(without('harbour-clockmaker', 'collar-upper', 'collar-under'), edges('neck', { round: true })),
    ).toEqual(['centre-front.neck', 'back.neck', 'other:back.neck', 'other:centre-front.neck']);
    expect(first(only(garmentOf('plain-front', 'plain-back')), edges('neck', { round: true }))).toEqual(
      ROUND_NECK,
    );
  });

  test('on one side only, where the place does not go round', () => {
    expect(first(without('plain-shirt', 'collar-upper', 'collar-under'), edges('neck'))).toEqual([
      'front.neck',
      'back.neck',
    ]);
  });

  test('round an armhole, on one side of the body', () => {
    expect(first(without('plain-shirt', 'sleeve'), edges('armhole', { ring: true }))).toEqual([
      'front.armhole',
      'back.armhole',
    ]);
  });

  test('an armhole that is not closed yet is no ring', () => {
    const open = without('plain-shirt', 'sleeve', 'underarm', 'shoulder');
    const rings = placeChoices(open, edges('armhole', { ring: true })).map(({ at }) => at.join(' '));
    expect(rings.filter((ring) => /armhole|hem|back\.neck/.test(ring))).toEqual([]);
    expect(first(open, edges('armhole'))).toEqual(['front.armhole']);
  });

  test('a hem through panels, once round the body', () => {
    expect(
      first(only(garmentOf('panelled-bodice')), edges('hem', { round: true })).map((ref) =>
        ref.replace('panelled-bodice-', ''),
      ),
    ).toEqual([
      'centre-front.hem',
      'side-front.hem',
      'side-back.hem',
      'back.hem',
      'other:back.hem',
      'other:side-back.hem',
      'other:side-front.hem',
      'other:centre-front.hem',
    ]);
  });

  test('a closed waist goes once round and not to and fro', () => {
    const skirt = put(garmentOf(), 'gathered-skirt', { at: {}, entries: { opens: 'closed' } });
    const run = first(only(skirt), edges('waist', { ring: true }));
    expect(run.length).toBeGreaterThan(1);
    expect(new Set(run).size).toBe(run.length);
    expect(findPlace(only(skirt), edges('waist', { ring: true }), run).ok).toBe(true);
  });

  test('nowhere where that edge is taken, nor on the other layer of what is sewn on', () => {
    expect(suggestPlaces(demo('plain-shirt').garments[0]!, unitCalled('flat-collar')!)).toEqual({});
  });

  test('on one edge alone where one alone will do', () => {
    expect(suggestPlaces(only(garmentOf('plain-front', 'plain-back')), unitCalled('button-band')!)).toEqual({
      opening: ['front.opening'],
    });
    expect(
      first(without('plain-shirt', 'collar-upper', 'collar-under'), edges('neck', { one: true })),
    ).toEqual(['front.neck']);
  });

  test('on pieces and in seams by their names, what is called so itself before what ends in it', () => {
    const body = only(garmentOf('panelled-bodice'));
    expect(first(body, { kind: 'piece', label: '', like: ['back'] })).toEqual(['panelled-bodice-back']);
    expect(
      first(demo('harbour-clockmaker').garments[0]!, { kind: 'piece', label: '', like: ['back'] }),
    ).toEqual(['back']);
    expect(first(body, { kind: 'seam', label: '', like: ['panel', 'panel-seam'] })).toEqual([
      'panelled-bodice-panel-seam',
    ]);
    const fronts = first(demo('harbour-clockmaker').garments[0]!, {
      kind: 'pieces',
      label: '',
      like: ['front'],
    });
    expect(fronts).toEqual(['centre-front', 'side-front']);
    expect(
      first(only(garmentOf('princess-front')), { kind: 'piece', label: '', like: ['yoke', 'front'] })[0],
    ).toMatch(/^princess-front/);
  });

  test('no edge is proposed for two places of one unit', () => {
    const twice = unit({
      id: 'twice',
      name: 'Twice',
      tells: 'Put on two edges.',
      group: 'Decoration',
      fields: {},
      places: { one: edges('side') as never, other: edges('side') as never },
      sketch: [],
      build: () => good({}),
    });
    expect(suggestPlaces(only(garmentOf('plain-front')), twice)).toEqual({ one: ['front.side'] });
  });

  test('whatever is proposed or offered can be found in the garment', () => {
    const garments = [
      ...demos.flatMap((name) => demo(name).garments),
      only(garmentOf('plain-front', 'plain-back')),
    ];
    let found = 0;
    for (const garment of garments) {
      for (const one of UNITS) {
        for (const [name, at] of Object.entries(suggestPlaces(garment, one))) {
          expect(findPlace(garment, one.places[name]!, at).ok, `${one.id}: ${at.join(' ')}`).toBe(true);
          found += 1;
        }
      }
      for (const { at } of placeChoices(garment, edges('hem', { round: true }))) {
        expect(findPlace(garment, edges('hem', { round: true }), at).ok, at.join(' ')).toBe(true);
      }
    }
    expect(found).toBeGreaterThan(30);
  });

  test('every place of the body is offered once, with its name', () => {
    const choices = placeChoices(only(garmentOf('plain-front', 'plain-back')), edges('hem'));
    const spelled = choices.map(({ at }) => at.join(' '));
    expect(new Set(spelled).size).toBe(spelled.length);
    expect(choices[0]).toEqual({ at: ['front.hem', 'back.hem'], say: 'Front and back, hem' });
    expect(spelled).toEqual(
      expect.arrayContaining(['front.hem', 'back.hem', 'front.neck back.neck', 'front.opening']),
    );
  });
});
