import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { spell } from '../../../src/outfit/chains.ts';
import {
  bothHalves,
  edgeOn,
  layers,
  proposeAllowance,
  turnedSeam,
} from '../../../src/outfit/units/collar.ts';
import { foldedStrip } from '../../../src/outfit/units/rectangle.ts';

test('a run over both halves goes in along one and out along the other', () => {
  expect(bothHalves('upper', 'front-end', 'outer').map(spell)).toEqual([
    'upper.front-end',
    'upper.outer',
    'other:upper.outer',
    'other:upper.front-end',
  ]);
  expect(spell(edgeOn('upper', 'neck', true))).toBe('other:upper.neck');
});

test('layers are alike, on the fold, and sewn to each other right sides together', () => {
  const told = {
    ids: ['upper', 'under'],
    names: ['Upper', 'Under'],
    cloth: 'lawn',
    allowance: mm(10),
    outline: foldedStrip(mm(200), mm(30)),
  } as const;
  const [one, two] = layers(told);
  expect(one).toMatchObject({ id: 'upper', cut: 'fold', outline: two!.outline });
  expect(one).not.toHaveProperty('unit');
  expect(layers({ ...told, unit: 'collar' })[0]?.unit).toBe('collar');
  expect(turnedSeam('seam', 'Seam', ['upper', 'under'], ['upper'], mm(10))).toMatchObject({ seam: 'turned' });
});

test('an allowance is proposed where the edge has one', () => {
  expect(proposeAllowance(undefined)).toEqual({});
});
