import { expect, test } from 'vitest';
import { gathersInto } from '../../../src/outfit/units/gathers-into.ts';
import { turnedUp } from '../../../src/outfit/units/turned-up.ts';
import { sleeveless } from './bodies.ts';

const [garment] = sleeveless().garments;
const hem = [{ piece: 'back', edge: 'hem', other: false }];
const about = { id: (part = '') => `cuff-${part}`, name: 'Cuff', marker: 'chalk' };

test('an edge is gathered once, once for both sides, and not at all where it is hardly longer', () => {
  expect(gathersInto(garment!, hem, 1.01, about)).toEqual([]);
  const both = [...hem, { ...hem[0]!, other: true }];
  const [gather, ...more] = gathersInto(garment!, both, 2.5, about);
  expect(more).toEqual([]);
  expect(gather).toMatchObject({ kind: 'gather', id: 'cuff-gathers', on: 'back', fullness: 2.5, divide: 8 });
  const gathered = { ...garment!, works: [...garment!.works, gather!] };
  expect(gathersInto(gathered, hem, 2.5, about)).toEqual([]);
});

test('an edge that is hemmed is refused with the name of its hem', () => {
  expect(turnedUp(garment!, hem, 'lower')).toMatchObject({
    field: 'at.lower',
    wrong: 'This edge is turned up already (Shirt hem).',
  });
  expect(turnedUp(garment!, [{ piece: 'back', edge: 'armhole', other: false }], 'lower')).toBeUndefined();
});
