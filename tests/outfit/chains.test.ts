import { describe, expect, test } from 'vitest';
import {
  crossings,
  edgeName,
  link,
  lookUp,
  piecesOf,
  spell,
  standsForBoth,
  timesOf,
} from '../../src/outfit/chains.ts';
import type { Chain, EdgeRef } from '../../src/outfit/outfit.ts';
import { demo } from './demo-files.ts';

const clockmaker = demo('harbour-clockmaker');
const lookedOf = (id: string) => lookUp(clockmaker.garments.find((garment) => garment.id === id)!);
const shirt = lookedOf('shirt');
const sleeves = lookedOf('sleeves');
const hose = lookedOf('hose');

/** An edge as a file spells it. */
const ref = (written: string): EdgeRef => {
  const [piece = '', edge = ''] = written.replace('other:', '').split('.');
  return { piece, edge, other: written.startsWith('other:') };
};
const run = (...written: readonly string[]): Chain => written.map(ref);
const over = (found: ReturnType<typeof crossings>) =>
  found.map((crossing) => [
    spell(crossing.from),
    spell(crossing.to),
    crossing.over.map((join) => join.id).sort(),
  ]);

describe('spelling', () => {
  test('an edge is spelled as a file spells it', () => {
    for (const join of [...shirt.joins.values(), ...hose.joins.values()]) {
      for (const each of [...join.this, ...join.to]) expect(ref(spell(each))).toEqual(each);
    }
    expect(edgeName(ref('other:back.hem'))).toBe('back.hem');
  });
});

describe('looking up', () => {
  test('edges have the ones before and after them as neighbours, going round', () => {
    expect(shirt.beside.get('side-front.armhole')).toEqual(['shoulder', 'side']);
    expect(shirt.beside.get('side-front.shoulder')).toEqual(['panel', 'armhole']);
    expect(shirt.beside.get('side-front.panel')).toEqual(['hem', 'shoulder']);
  });
});

describe('how two edges come to lie end to end', () => {
  test('neighbours on one piece are one already, and an edge that meets the fold runs on into its mirror image', () => {
    expect(link(shirt, ref('collar-under.front-end'), ref('collar-under.outer'), false)).toBe('one');
    expect(link(shirt, ref('back.neck'), ref('other:back.neck'), false)).toBe('one');
    expect(link(shirt, ref('back.hem'), ref('other:back.hem'), false)).toBe('one');
  });

  test('over a join between the pieces, at the corner where they meet', () => {
    const joins = link(shirt, ref('centre-front.panel'), ref('back.panel'), false);
    expect(joins === 'one' ? joins : joins.map((join) => join.id)).toEqual(['centre-shoulder']);
  });

  test('edges that meet at both their ends: a ring needs both joins, an open run one', () => {
    const armhole = [ref('side-front.armhole'), ref('side-back.armhole')] as const;
    const ids = (ring: boolean) => {
      const joins = link(shirt, ...armhole, ring);
      return joins === 'one' ? joins : joins.map((join) => join.id);
    };
    expect(ids(true)).toEqual(['side-shoulder', 'side']);
    expect(ids(false)).toEqual(['side-shoulder']);
  });

  test('a sleeve set flat meets its armhole over the shoulder, not over the seam that will run across it', () => {
    const plain = lookUp(demo('plain-shirt').garments[0]!);
    const armhole = plain.joins.get('armhole')!;
    expect(over(crossings(plain, armhole.this, false, 'armhole'))).toEqual([
      ['front.armhole', 'back.armhole', ['shoulder']],
    ]);
    const underarm = plain.joins.get('underarm')!;
    expect(over(crossings(plain, underarm.this, false, 'underarm'))).toEqual([
      ['front.side', 'sleeve.front-seam', ['armhole']],
    ]);
  });

  test('not where no join meets both, nor where an edge does not reach the fold', () => {
    expect(link(shirt, ref('side-front.armhole'), ref('back.neck'), false)).toEqual([]);
    expect(link(shirt, ref('back.shoulder'), ref('other:back.shoulder'), false)).toEqual([]);
  });

  test('a seam does not carry itself', () => {
    expect(link(shirt, ref('centre-front.panel'), ref('back.panel'), false, 'centre-shoulder')).toEqual([]);
  });
});

describe('places where a run passes from piece to piece', () => {
  test('both sides of the panel seam pass over a shoulder seam of their own', () => {
    const panel = shirt.joins.get('panel')!;
    expect(over(crossings(shirt, panel.this, false, 'panel'))).toEqual([
      ['centre-front.panel', 'back.panel', ['centre-shoulder']],
    ]);
    expect(over(crossings(shirt, panel.to, false, 'panel'))).toEqual([
      ['side-front.panel', 'side-back.panel', ['side-shoulder']],
    ]);
  });

  test('the inseam runs from foot to foot over both knees and the rise', () => {
    const inseam = hose.joins.get('inseam')!;
    expect(crossings(hose, inseam.this, false, 'inseam').map((c) => c.over.map((join) => join.id))).toEqual([
      ['knee'],
      ['front-rise'],
      ['knee'],
    ]);
    expect(crossings(hose, inseam.to, false, 'inseam').map((c) => c.over.map((join) => join.id))).toEqual([
      ['knee'],
      ['back-rise'],
      ['knee'],
    ]);
  });

  test('a ring also passes from its end to its start', () => {
    const waist = run('thigh.waist', 'other:thigh.waist');
    expect(over(crossings(hose, waist, false))).toHaveLength(1);
    expect(over(crossings(hose, waist, true))).toEqual([
      ['thigh.waist', 'other:thigh.waist', ['back-rise', 'front-rise']],
      ['other:thigh.waist', 'thigh.waist', ['back-rise', 'front-rise']],
    ]);
  });

  test('a ring of one edge is closed by the seam between the edges beside it', () => {
    expect(over(crossings(sleeves, run('upper-band.upper'), true))).toEqual([
      ['upper-band.upper', 'upper-band.upper', ['sleeve-seam']],
    ]);
    expect(crossings(sleeves, run('upper-band.upper'), false)).toEqual([]);
    expect(crossings(sleeves, run('upper-band.upper'), true, 'sleeve-seam')[0]?.over).toEqual([]);
  });

  test('where nothing joins them the place is given with no join', () => {
    expect(over(crossings(shirt, run('centre-front.hem', 'back.hem'), false))).toEqual([
      ['centre-front.hem', 'back.hem', []],
    ]);
  });
});

describe('pieces and times', () => {
  test('a join holds its trims and its cover too', () => {
    expect(piecesOf(shirt.joins.get('panel')!)).toEqual([
      'centre-front',
      'back',
      'side-front',
      'side-back',
      'frill',
    ]);
    expect(piecesOf(sleeves.joins.get('cuff-seam')!)).toEqual(['sleeve', 'cuff-outer', 'cuff-inner']);
  });

  test('twice where there is a left and a right, once where the run goes over both', () => {
    const times = (looked: typeof shirt, id: string) => {
      const join = looked.joins.get(id)!;
      return timesOf(looked, join.this, join.to);
    };
    expect(times(shirt, 'centre-shoulder')).toBe(2);
    expect(times(shirt, 'neck')).toBe(1);
    expect(times(hose, 'knee')).toBe(2);
    expect(times(hose, 'inseam')).toBe(1);
    expect(timesOf(shirt, run('back.shoulder'))).toBe(2);
    expect(timesOf(shirt, run('back.hem'))).toBe(1);
    expect(timesOf(lookedOf('neckcloth'), run('bow.upper'))).toBe(1);
  });
});

describe('an edge at a fold', () => {
  const stands = (...written: readonly string[]) =>
    run(...written).map((one) => standsForBoth(shirt, run(...written), one));
  test('named by itself stands for its mirror image too', () => {
    expect(stands('back.hem')).toEqual([true]);
    expect(stands('other:back.hem')).toEqual([true]);
    expect(stands('collar-under.neck')).toEqual([true]);
  });
  test('stands for itself where both halves are named, or where it is done left and right', () => {
    expect(stands('back.hem', 'other:back.hem')).toEqual([false, false]);
    expect(stands('side-back.hem', 'back.hem')).toEqual([false, false]);
    expect(stands('back.panel')).toEqual([false]);
    expect(stands('centre-front.hem')).toEqual([false]);
  });
});
