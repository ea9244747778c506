import { describe, expect, test } from 'vitest';
import type { Entries } from '../../../src/fields/fields.ts';
import { closedCuff } from '../../../src/reckon/sleeves/closed-cuff.ts';
import { figure, marksOf, refusedAt, worked } from '../frills/worked.ts';

describe('cuff without opening', () => {
  const cuff: Entries = {
    wrist: '160',
    hand: '220',
    ease: '60',
    depth: '50',
    sleeve: '330',
    allowance: '10',
  };

  test('in one piece, in millimetres', () => {
    const made = worked(closedCuff, cuff);
    expect(figure(made, 'Cut length')).toBe(240);
    expect(figure(made, 'Cut width')).toBe(120);
    expect(figure(made, 'Sleeve gathered')).toBe('1.5 times');
    expect(marksOf(made, 0)).toEqual([0, 55, 110, 165, 220]);
  });

  test('as two pieces, in inches', () => {
    const made = worked(closedCuff, { pieces: '2', depth: '2', allowance: '1/2' }, 'in');
    expect(figure(made, 'Cut width', 'in')).toBe(3);
    expect(figure(made, 'Pieces')).toBe(2);
  });

  test.each<[Entries, string]>([
    [{ wrist: '0' }, 'wrist'],
    [{ hand: '230' }, 'ease'],
    [{ depth: '0' }, 'depth'],
    [{ sleeve: '150' }, 'sleeve'],
    [{ allowance: '-1' }, 'allowance'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(refusedAt(closedCuff, { ...cuff, ...entries })).toEqual([field]);
  });
});
