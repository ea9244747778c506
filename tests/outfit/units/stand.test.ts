import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { readEdge } from '../../../src/outfit/chains.ts';
import { findPlace } from '../../../src/outfit/units/place.ts';
import { runOf } from '../../../src/outfit/units/runs.ts';
import { fallOnStand, proposeClosing, standFor } from '../../../src/outfit/units/stand.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { garmentOf } from './made-of.ts';
import { NECK, plainBody } from './plain-body.ts';

const garment = garmentOf(plainBody());
const stand = (closing: 'meets' | 'buttoned', written: readonly string[] = NECK) =>
  standFor({
    id: (part) => `stand-${part}`,
    name: 'Stand',
    garment,
    run: runOf(garment, written.map(readEdge)),
    cloth: 'shirting',
    allowance: mm(10),
    height: mm(30),
    values: { closing, rise: mm(12), diameter: mm(11), thickness: mm(2), top: 'right', stiffening: 'none' },
    marker: 'chalk',
  });

test('a stand goes over the lap as far as the lap is wide', () => {
  const neck = (closing: 'meets' | 'buttoned') => {
    const made = stand(closing);
    return made.ok ? edgeLengths(made.value.pieces[0]!.outline).get('neck')! / 1e6 : 0;
  };
  expect(neck('buttoned') - neck('meets')).toBeCloseTo(13, 2);
});

test('its upper edge is told from the centre back to the centre front', () => {
  const made = stand('buttoned');
  expect(made.ok && made.value.upper).toBe(
    made.ok && edgeLengths(made.value.pieces[0]!.outline).get('upper'),
  );
  expect(made.ok && made.value.works.at(-1)).toMatchObject({ top: 'right', first: mm(15), last: mm(15) });
});

test('is not buttoned on a run that does not end at a lap on both sides', () => {
  expect(stand('buttoned', ['back.neck', 'other:back.neck'])).toMatchObject({ error: { field: 'closing' } });
  expect(stand('meets', ['back.neck', 'other:back.neck']).ok).toBe(true);
});

test('is proposed buttoned where the front laps', () => {
  const at = findPlace(garment, { kind: 'edges', label: 'the neck', like: [] }, NECK);
  expect(at.ok && at.value.kind === 'edges' && proposeClosing(garment, at.value)).toMatchObject({
    closing: { value: 'buttoned' },
  });
  expect(proposeClosing(garment, undefined)).toEqual({});
});

test('a fall is sewn to the outer layer, and the inner one covers the seam', () => {
  const told = {
    id: (part: string) => part,
    name: 'Collar',
    under: 'n',
    outer: 'o',
    inner: 'i',
    allowance: mm(10),
  };
  const [ends, fall] = fallOnStand(told);
  expect(ends).toMatchObject({ seam: 'ends', this: [{ piece: 'o' }], to: [{ piece: 'i' }] });
  expect(fall).toMatchObject({ seam: 'covered', cover: { piece: 'i', edge: 'upper' } });
});
