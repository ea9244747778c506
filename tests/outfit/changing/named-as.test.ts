import { describe, expect, test } from 'vitest';
import { namedAs } from '../../../src/outfit/changing/named-as.ts';
import { renameEdge } from '../../../src/outfit/changing/parts.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { demo } from '../demo-files.ts';

const shirt = demo('plain-shirt');
/** The shirt with everything in it called otherwise. */
const renamed: Outfit = {
  ...shirt,
  name: 'A lamp bearer’s shirt',
  cloths: shirt.cloths.map((one) => ({ ...one, name: `${one.name}, bleached` })),
  markers: shirt.markers.map((one) => ({ ...one, name: `my ${one.name}` })),
  garments: shirt.garments.map((garment) => ({
    ...garment,
    name: 'Smock',
    pieces: garment.pieces.map((one) => ({ ...one, name: `${one.name} of the smock` })),
    works: garment.works.map((one) => ({ ...one, name: `${one.name}, once more` })),
    joins: garment.joins.map((one) => ({ ...one, name: `${one.name} of the smock` })),
    gates: garment.gates.map((one) => ({ ...one, name: 'Look at it' })),
  })),
};

describe('an outfit with the names of another', () => {
  test('is the same where only names differ', () => {
    expect(namedAs(shirt, renamed)).toEqual(renamed);
    expect(namedAs(shirt, shirt)).toEqual(shirt);
  });

  test('keeps what else differs as it was, and parts that are gone', () => {
    const [garment] = renamed.garments;
    const fewer = { ...renamed, garments: [{ ...garment!, pieces: garment!.pieces.slice(1), works: [] }] };
    const found = namedAs(shirt, fewer).garments[0]!;
    expect(found.pieces.map(({ id }) => id)).toEqual(shirt.garments[0]!.pieces.map(({ id }) => id));
    expect(found.pieces[0]!.name).toBe(shirt.garments[0]!.pieces[0]!.name);
    expect(found.works).toEqual(shirt.garments[0]!.works);
  });

  test('calls an edge that kept its place by its new name, wherever it is named', () => {
    const made = renameEdge(shirt, 'shirt', 'front', 'shoulder', 'yoke-line');
    if (!made.ok) throw new Error(JSON.stringify(made.error));
    const found = namedAs(shirt, made.value);
    expect(found).toEqual(made.value);
    expect(found.garments[0]!.joins.find(({ id }) => id === 'shoulder')!.this[0]!.edge).toBe('yoke-line');
  });

  test('leaves an edge alone that lies elsewhere now', () => {
    const [garment] = shirt.garments;
    const [front, ...others] = garment!.pieces;
    const edges = front!.outline.edges.map((edge) =>
      edge.name === 'shoulder' ? { name: 'slope', segments: [...edge.segments, ...edge.segments] } : edge,
    );
    const now = {
      ...shirt,
      garments: [{ ...garment!, pieces: [{ ...front!, outline: { ...front!.outline, edges } }, ...others] }],
    };
    expect(namedAs(shirt, now)).toEqual(shirt);
  });
});
