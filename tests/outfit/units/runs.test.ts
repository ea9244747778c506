import { expect, test } from 'vitest';
import { readEdge, spell } from '../../../src/outfit/chains.ts';
import { eachOf, isGathered, mate, runOf } from '../../../src/outfit/units/runs.ts';
import { garmentOf } from './made-of.ts';
import { changed, HEM, NECK, plainBody } from './plain-body.ts';

const garment = garmentOf(plainBody());
const run = (...written: readonly string[]) => runOf(garment, written.map(readEdge));

test('a run named as far as the fold goes on over it, from either end', () => {
  expect(run('front.neck', 'back.neck').chain.map(spell)).toEqual(NECK);
  expect(run('back.neck', 'front.neck').chain.map(spell)).toEqual([
    'other:front.neck',
    'other:back.neck',
    'back.neck',
    'front.neck',
  ]);
  expect(run('back.hem').chain.map(spell)).toEqual(['back.hem', 'other:back.hem']);
  expect(run(...NECK).chain.map(spell)).toEqual(NECK);
  expect(run('front.neck').chain.map(spell)).toEqual(['front.neck']);
});

test('all of it counts, and what is gathered counts as it is drawn up', () => {
  expect(run('back.hem').length).toBe(2 * 277 * 1e6);
  const gathers = {
    kind: 'gather',
    id: 'g',
    name: 'G',
    on: 'back',
    edge: 'hem',
    fullness: 2,
    divide: 4,
    marker: 'chalk',
  } as const;
  const gathered = garmentOf(changed(plainBody(), () => ({ works: [gathers] })));
  expect(runOf(gathered, [readEdge('back.hem')]).length).toBe(277 * 1e6);
  expect(isGathered(gathered, [readEdge('back.hem')])).toBe(true);
  expect(isGathered(gathered, [readEdge('front.hem')])).toBe(false);
});

test('it is a ring where seams close it, and done twice where it is on one side', () => {
  expect(run('front.armhole', 'back.armhole')).toMatchObject({ ring: true, cut: 'pair' });
  expect(run(...NECK)).toMatchObject({ ring: false, cut: 'one', worked: 'flat' });
  expect(run('back.neck')).toMatchObject({ ring: false, cut: 'one' });
});

test('over a seam that closes the garment it is sewn along in the round', () => {
  expect(run(...HEM).worked).toBe('round');
});

test('words and mates', () => {
  expect([eachOf('pair', 'Cuff frill'), eachOf('one', 'Hem frill')]).toEqual([
    'each cuff frill',
    'the hem frill',
  ]);
  expect(spell(mate(readEdge('back.neck')))).toBe('other:back.neck');
  expect(mate(mate(readEdge('back.neck')))).toEqual(readEdge('back.neck'));
});
