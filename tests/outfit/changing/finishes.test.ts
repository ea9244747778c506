import { describe, expect, test } from 'vitest';
import { putPart, removePart, renameEdge } from '../../../src/outfit/changing/parts.ts';
import type { Outfit, Work } from '../../../src/outfit/outfit.ts';
import { garmentOf, made, only, wrongWith } from './shirt.ts';

/** A shirt with steps of the maker's own on its front, which finish the hems of the front and the back. */
function shirt(): Outfit {
  const outfit = garmentOf('plain-front', 'plain-back');
  const work: Work = {
    kind: 'own',
    id: 'rolled',
    name: 'Rolled hem',
    on: 'front',
    with: [],
    when: 'late',
    finishes: [
      { piece: 'front', edge: 'hem', other: false },
      { piece: 'back', edge: 'hem', other: false },
    ],
    steps: [{ say: 'Roll the hem', station: 'hand', minutes: 40, rest: 0, final: false, wets: false }],
  };
  return made(putPart(outfit, 'shirt', 'works', work));
}
const finished = (outfit: Outfit) =>
  only(outfit).works.flatMap((work) =>
    work.kind === 'own' ? (work.finishes ?? []).map(({ piece, edge }) => `${piece}.${edge}`) : [],
  );

describe('edges that steps of the maker’s own finish', () => {
  test('follow when they are given another name', () => {
    const renamed = made(renameEdge(shirt(), 'shirt', 'back', 'hem', 'lower'));
    expect(finished(renamed)).toEqual(['front.hem', 'back.lower']);
    expect(wrongWith(renamed)).toEqual([]);
  });

  test('are left out with their piece, and the steps stay for the others', () => {
    const { outfit, also } = removePart(shirt(), 'shirt', 'back');
    expect(also.map(({ id }) => id)).not.toContain('rolled');
    expect(finished(outfit)).toEqual(['front.hem']);
    expect(wrongWith(outfit)).toEqual([]);
  });

  test('are no more where the piece that the steps are done to is taken out', () => {
    const { outfit, also } = removePart(shirt(), 'shirt', 'front');
    expect(also.map(({ id }) => id)).toContain('rolled');
    expect(wrongWith(outfit)).toEqual([]);
  });
});
