import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { gatheredFrill } from '../../../src/reckon/frills/gathered-frill.ts';
import { figure, marksOf, refusedAt, worked } from './worked.ts';

describe('gathered frill', () => {
  test('a cuff frill in inches', () => {
    const frill = worked(gatheredFrill, { place: '8', depth: '2' }, 'in');
    expect(figure(frill, 'Cut length of a strip', 'in')).toBe(21);
    expect(figure(frill, 'Cut depth', 'in')).toBe(2.75);
    expect(figure(frill, 'Strips and joins')).toBe('1 strip, 1 join');
    expect(figure(frill, 'Fullness')).toBe('2.5 times');
    expect(figure(frill, 'First gathering row', 'in')).toBe(0.125);
  });

  test('and in millimetres, with eighths on both edges', () => {
    const frill = worked(gatheredFrill, { place: '200', ends: 'open', parts: '8' });
    expect(figure(frill, 'Cut length of a strip')).toBe(524);
    expect(marksOf(frill, 0)).toEqual([0, 25, 50, 75, 100, 125, 150, 175, 200]);
    expect(marksOf(frill, 1)).toEqual([0, 62.5, 125, 187.5, 250, 312.5, 375, 437.5, 500]);
  });

  test('the joins stand among the marks of a long frill', () => {
    const frill = worked(gatheredFrill, { place: '1000', ends: 'open', grain: 'across' });
    expect(frill.strips[1]?.marks.map(({ name }) => name)).toContain('join 1');
    expect(frill.advice.map(({ say }) => say)).toContain('A strip cut along the grain gathers cleaner.');
  });

  test('a fullness of the maker goes before that of the kind', () => {
    const frill = worked(gatheredFrill, { place: '200', frill: 'sheer ruche', fullness: '2' });
    expect(figure(frill, 'Joined strip')).toBe(400);
    expect(figure(worked(gatheredFrill, { place: '200', frill: 'sheer ruche' }), 'Joined strip')).toBe(600);
  });

  test('a plain ruffle on the bias is less full', () => {
    const frill = worked(gatheredFrill, { frill: 'plain ruffle', grain: 'bias' });
    expect(figure(frill, 'Fullness')).toBe('1.29 times, the middle of 1.25 to 1.33');
  });

  test.each<[Entries, string]>([
    [{ place: '0' }, 'place'],
    [{ depth: '-1' }, 'depth'],
    [{ fullness: '12' }, 'fullness'],
    [{ clothWidth: '20' }, 'clothWidth'],
    [{ clothWidth: '20', grain: 'across' }, 'clothWidth'],
    [{ allowance: '5' }, 'allowance'],
    [{ allowance: '-20' }, 'allowance'],
    [{ hem: '-1' }, 'hem'],
    [{ clothLength: '20' }, 'clothLength'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(gatheredFrill, entries)).toEqual([field]);
  });
});
