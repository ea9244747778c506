import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { buttonBand } from '../../../src/outfit/units/button-band.ts';
import { bandFigures, lapOf } from '../../../src/outfit/units/button-band-figures.ts';
import { findPlace } from '../../../src/outfit/units/place.ts';
import { garmentOf } from './made-of.ts';
import { plainBody } from './plain-body.ts';

const placed = (edge: string) => {
  const found = findPlace(garmentOf(plainBody()), buttonBand.places.opening!, [edge]);
  if (!found.ok || found.value.kind !== 'edges') throw new Error('no such edge');
  return found.value;
};

test('figures come from the opening, each with its reason', () => {
  const figures = bandFigures(placed('front.opening'));
  expect(figures.width?.value).toBe(mm(26));
  // From 15 mm to five sixths of 668 mm is room for seven buttons some 85 mm apart.
  expect(figures.buttons?.value).toBe(7);
  expect(figures.held?.value).toBe(mm(265 - 92));
  for (const { because } of Object.values(figures)) expect(because).toMatch(/^[A-Z]/);
});

test('without a lap or an armhole a usual band is proposed and nothing is held', () => {
  const at = placed('front.opening');
  const [piece] = at.pieces;
  const edges = piece!.outline.edges.map((edge) =>
    edge.name === 'lap'
      ? { ...edge, name: 'step' }
      : edge.name === 'armhole'
        ? { ...edge, name: 'arm' }
        : edge,
  );
  const figures = bandFigures({ ...at, pieces: [{ ...piece!, outline: { ...piece!.outline, edges } }] });
  expect(figures.width?.value).toBe(25_400_000);
  expect(figures).not.toHaveProperty('held');
  expect(bandFigures(undefined)).toEqual({});
  expect(lapOf(piece!)).toBe(mm(13));
});
