import { describe, expect, it } from 'vitest';
import type { Role } from '../../src/fitting/entry.ts';
import { rolesOf } from '../../src/fitting/roles.ts';
import type { Garment, Outfit } from '../../src/outfit/outfit.ts';
import { UNITS } from '../../src/outfit/units/all.ts';
import { demo, demos } from '../outfit/demo-files.ts';
import { first, garmentOf, type PutOn } from '../outfit/units/worn.ts';

const roles = (garment: Garment): Record<string, Role> => Object.fromEntries(rolesOf(garment));
const demoGarment = (name: (typeof demos)[number], id: string): Garment =>
  demo(name).garments.find((one) => one.id === id)!;
const put = (...units: readonly string[]): readonly PutOn[] =>
  units.map((id) => ({ unit: id, name: UNITS.find((one) => one.id === id)!.name }));
/** An outfit whose cloth stretches. */
const knitted = (): Outfit => {
  const { cloths, ...rest } = demo('glasshouse-astronomer');
  const give = { across: 60, along: 60 };
  return { ...rest, cloths: cloths.map((one) => ({ ...one, stretch: give })), garments: [] };
};
const worn = (...units: readonly PutOn[]): Record<string, Role> => roles(first(garmentOf(units, knitted())));

describe('roles of pieces', () => {
  it('are found in a panelled shirt described by hand', () => {
    expect(roles(demoGarment('harbour-clockmaker', 'shirt'))).toEqual({
      'centre-front': 'centre-front',
      'side-front': 'side-front',
      'side-back': 'side-back',
      back: 'centre-back',
      frill: 'frill',
      'collar-upper': 'collar',
      'collar-under': 'collar',
    });
  });

  it('are found in detached sleeves', () => {
    expect(roles(demoGarment('harbour-clockmaker', 'sleeves'))).toEqual({
      sleeve: 'sleeve',
      'sleeve-head': 'sleeve-head',
      'upper-band': 'arm-band',
      'cuff-outer': 'cuff',
      'cuff-inner': 'cuff',
      'cuff-frill': 'frill',
    });
  });

  it('are found in hose of two cloths', () => {
    expect(roles(demoGarment('harbour-clockmaker', 'hose'))).toEqual({
      thigh: 'leg',
      'lower-leg': 'lower-leg',
      'knee-frill': 'frill',
    });
  });

  it('are found in a bow that is worn round the neck', () => {
    expect(roles(demoGarment('harbour-clockmaker', 'neckcloth'))).toEqual({
      bow: 'other',
      knot: 'other',
      neckband: 'collar',
    });
  });

  it('are found in a plain shirt', () => {
    expect(roles(demoGarment('plain-shirt', 'shirt'))).toEqual({
      front: 'centre-front',
      back: 'centre-back',
      sleeve: 'sleeve',
      'cuff-outer': 'cuff',
      'cuff-inner': 'cuff',
      'collar-upper': 'collar',
      'collar-under': 'collar',
      pocket: 'other',
    });
  });

  it('are found in a ball gown of ready-made units', () => {
    expect(roles(demoGarment('glasshouse-astronomer', 'ballgown'))).toEqual({
      'front-centre': 'centre-front',
      'front-side': 'side-front',
      'back-centre': 'centre-back',
      'back-side': 'side-back',
      'skirt-front': 'skirt',
      'skirt-back': 'skirt',
      sleeve: 'sleeve',
      'sleeve-lower': 'sleeve',
      'neck-facing-front-centre': 'other',
      'neck-facing-back-centre': 'other',
      'hem-frill-1': 'frill',
      'hem-frill-2': 'frill',
      leaves: 'other',
      bow: 'other',
      'bow-knot': 'other',
      'bow-tail': 'other',
      'wrist-float': 'other',
    });
  });

  it('follow from seams and edges where the names say nothing', () => {
    const shirt = demoGarment('harbour-clockmaker', 'shirt');
    const called = new Map(shirt.pieces.map(({ id }, i) => [id, `p${i}`]));
    const ref = <T extends { readonly piece: string }>(one: T): T => ({
      ...one,
      piece: called.get(one.piece)!,
    });
    const blind: Garment = {
      ...shirt,
      pieces: shirt.pieces.map((piece) => ({
        ...piece,
        id: called.get(piece.id)!,
        name: called.get(piece.id)!,
      })),
      works: shirt.works.map((work) => ({ ...work, on: called.get(work.on)! })),
      joins: shirt.joins.map((join) => ({
        ...join,
        this: join.this.map(ref),
        to: join.to.map(ref),
        catches: join.catches.map((one) => ({ ...one, trim: ref(one.trim) })),
      })),
    };
    expect(roles(blind)).toMatchObject({
      p0: 'centre-front',
      p1: 'side-front',
      p2: 'side-back',
      p3: 'centre-back',
      p4: 'frill',
    });
  });

  it('are the same whatever a ready-made unit was named', () => {
    const odd = put('princess-front', 'princess-back', 'plain-sleeve', 'buttoned-cuff').map((one, i) => ({
      ...one,
      name: `Zed ${'abcd'.charAt(i)}`,
    }));
    expect(Object.values(worn(...odd))).toEqual([
      'centre-front',
      'side-front',
      'centre-back',
      'side-back',
      'sleeve',
      'cuff',
      'cuff',
    ]);
  });
});

describe('roles in ready-made units', () => {
  const body = { front: 'centre-front', back: 'centre-back' } as const;
  const base = ['plain-front', 'plain-back'] as const;
  const cases: readonly (readonly [readonly string[], Readonly<Record<string, Role>>])[] = [
    [base, body],
    [
      ['panelled-bodice'],
      {
        'panelled-bodice-centre-front': 'centre-front',
        'panelled-bodice-side-front': 'side-front',
        'panelled-bodice-back': 'centre-back',
        'panelled-bodice-side-back': 'side-back',
      },
    ],
    [[...base, 'inset-frill'], { ...body, 'inset-frill': 'frill' }],
    [[...base, 'straight-frill'], { ...body, 'straight-frill': 'frill' }],
    [[...base, 'bias-frill'], { ...body, 'bias-frill': 'frill' }],
    [[...base, 'circular-frill'], { ...body, 'circular-frill-1': 'frill', 'circular-frill-2': 'frill' }],
    [[...base, 'flat-collar'], { ...body, 'flat-collar-upper': 'collar', 'flat-collar-under': 'collar' }],
    [
      [...base, 'standing-band'],
      { ...body, 'standing-band-outer': 'collar', 'standing-band-inner': 'collar' },
    ],
    [
      [...base, 'stand-and-collar'],
      {
        ...body,
        'shirt-collar-stand-outer': 'collar',
        'shirt-collar-stand-inner': 'collar',
        'shirt-collar-upper': 'collar',
        'shirt-collar-under': 'collar',
      },
    ],
    [[...base, 'bias-bound-neck'], { ...body, 'bias-bound-neck': 'other' }],
    [['neckcloth-bow'], { neckcloth: 'other' }],
    [['loop-bow'], { 'made-up-bow': 'other', 'made-up-bow-knot': 'other' }],
    [
      [...base, 'plain-sleeve', 'buttoned-cuff'],
      {
        ...body,
        'plain-sleeve': 'sleeve',
        'buttoned-cuff-outer': 'cuff',
        'buttoned-cuff-inner': 'cuff',
      },
    ],
    [[...base, 'puffed-sleeve'], { ...body, 'puffed-sleeve': 'sleeve' }],
    [[...base, 'lantern-sleeve'], { ...body, 'lantern-sleeve': 'sleeve', 'lantern-sleeve-lower': 'sleeve' }],
    [['stretch-leg'], { 'stretch-leg': 'leg' }],
    [
      [...base, 'gathered-skirt'],
      { ...body, 'gathered-skirt-front': 'skirt', 'gathered-skirt-back': 'skirt' },
    ],
    [['circle-skirt'], { 'circle-skirt-front': 'skirt', 'circle-skirt-back': 'skirt' }],
    [[...base, 'waistband'], { ...body, 'waistband-outer': 'waistband', 'waistband-inner': 'waistband' }],
    [[...base, 'facing'], { ...body, 'facing-front': 'other', 'facing-back': 'other' }],
    [[...base, 'lining'], { ...body, 'lining-front': 'other', 'lining-back': 'other' }],
    [[...base, 'applique-on-mesh'], { ...body, 'applique-on-mesh': 'other' }],
  ];
  it.each(cases)('%j', (units, found) => expect(worn(...put(...units))).toEqual(found));

  it('tells the two pieces of a stretch leg of two cloths apart', () => {
    expect(worn({ unit: 'stretch-leg', name: 'Hose', entries: { of: 'two' } })).toEqual({
      hose: 'leg',
      'hose-lower': 'lower-leg',
    });
  });

  it('knows a stretch sleeve head, a support and the band at the end of a puffed sleeve', () => {
    const found = worn(
      { unit: 'puffed-sleeve', name: 'Sleeve', entries: { held: 'head', ends: 'band' } },
      ...put('sleeve-head-stretch', 'sleeve-support'),
    );
    expect(found).toMatchObject({
      sleeve: 'sleeve',
      'sleeve-band': 'cuff',
      'stretch-sleeve-head': 'sleeve-head',
    });
    const support = Object.entries(found).filter(([id]) => id.startsWith('sleeve-support'));
    expect(support.length).toBeGreaterThan(0);
    expect(support.every(([, role]) => role === 'other')).toBe(true);
  });

  it('gives every piece of every demonstration a role', () => {
    for (const name of demos)
      for (const garment of demo(name).garments)
        expect([...rolesOf(garment).keys()]).toEqual(garment.pieces.map(({ id }) => id));
  });
});
