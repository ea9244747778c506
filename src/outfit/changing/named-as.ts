import type { Garment, Outfit, Piece } from '../outfit.ts';
import { renameEdge } from './parts.ts';

interface Named {
  readonly id: string;
  readonly name: string;
}

const called = <T extends Named>(list: readonly T[], as: readonly Named[]): readonly T[] => {
  const names = new Map(as.map(({ id, name }) => [id, name]));
  return list.map((one) => ({ ...one, name: names.get(one.id) ?? one.name }));
};

/** Edges that lie where they lay and are only called otherwise. */
const edgesCalled = (was: Piece, now: Piece): readonly (readonly [string, string])[] => {
  const [old, fresh] = [was.outline.edges, now.outline.edges];
  if (old.length !== fresh.length) return [];
  return old.flatMap((edge, i) => {
    const name = fresh[i]?.name ?? edge.name;
    const same = JSON.stringify(edge.segments) === JSON.stringify(fresh[i]?.segments);
    return same && name !== edge.name && !old.some((one) => one.name === name) ? [[edge.name, name]] : [];
  });
};

const garmentCalled = (garment: Garment, as: Garment): Garment => ({
  ...garment,
  name: as.name,
  pieces: called(garment.pieces, as.pieces),
  works: called(garment.works, as.works),
  joins: called(garment.joins, as.joins),
  gates: called(garment.gates, as.gates),
});

/**
 * An outfit as it was before a change, with everything called what it is called after it: garments, their parts, edges
 * that kept their place, cloths, markers and wearers. What differs from it then is other work, not another name.
 */
export function namedAs(before: Outfit, after: Outfit): Outfit {
  let outfit: Outfit = {
    ...before,
    name: after.name,
    cloths: called(before.cloths, after.cloths),
    markers: called(before.markers, after.markers),
    wearers: called(before.wearers, after.wearers),
    garments: before.garments.map((garment) => {
      const as = after.garments.find(({ id }) => id === garment.id);
      return as ? garmentCalled(garment, as) : garment;
    }),
  };
  for (const garment of after.garments) {
    for (const now of garment.pieces) {
      const was = outfit.garments.find(({ id }) => id === garment.id)?.pieces.find(({ id }) => id === now.id);
      for (const [old, name] of was ? edgesCalled(was, now) : []) {
        const made = renameEdge(outfit, garment.id, now.id, old, name);
        if (made.ok) outfit = made.value;
      }
    }
  }
  return outfit;
}
