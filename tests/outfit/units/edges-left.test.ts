import { describe, expect, it } from 'vitest';
import { suggestPlaces } from '../../../src/outfit/changing/suggest-places.ts';
import { rawEdges } from '../../../src/outfit/raw-edges.ts';
import { UNITS } from '../../../src/outfit/units/all.ts';
import type { Unit } from '../../../src/outfit/units/unit.ts';
import { garmentOf, refusedAt } from './made-of.ts';
import { clothed, usuallyBefore, wear } from './what-follows.ts';

const FRONT = ['neck', 'armhole', 'shoulder', 'side', 'hem', 'opening', 'lap'];
const BACK = ['neck', 'armhole', 'hem'];
const SKIRT = ['waist', 'hem', 'opening'];
const SLEEVE = ['lower', 'upper'];

/** Edges that a unit leaves for the next one; none where it is not said. */
const LEFT: Readonly<Record<string, readonly string[]>> = {
  'plain-front': FRONT,
  'princess-front': FRONT,
  'panelled-bodice': ['neck', 'armhole', 'hem', 'opening', 'lap'],
  'plain-back': BACK,
  'princess-back': BACK,
  'plain-sleeve': ['lower'],
  'puffed-sleeve': SLEEVE,
  'lantern-sleeve': SLEEVE,
  'gathered-skirt': SKIRT,
  'circle-skirt': SKIRT,
};

/** What stands in its fields, and each answer to each of its choices. */
const answers = (unit: Unit): readonly Readonly<Record<string, string>>[] => [
  {},
  ...Object.entries(unit.fields).flatMap(([name, field]) =>
    field.kind === 'choice' ? field.options.map(({ value }) => ({ [name]: value })) : [],
  ),
];

describe('a unit that is put on', () => {
  it.each(UNITS.map((unit) => [unit.id, unit] as const))(
    'leaves no edge of %s raw that nothing follows',
    (id, unit) => {
      const outfit = wear(usuallyBefore(id), clothed(true));
      const had = new Set(garmentOf(outfit).pieces.map((piece) => piece.id));
      let made = 0;
      for (const entries of answers(unit)) {
        const at = suggestPlaces(garmentOf(outfit), unit);
        if (refusedAt(outfit, unit, { at, entries }).length > 0) continue;
        const raw = rawEdges(garmentOf(wear([[id, entries]], outfit))).filter(({ piece }) => !had.has(piece));
        const left = raw.filter(({ edge }) => !LEFT[id]?.includes(edge));
        expect(left.map(({ piece, edge }) => `${piece}.${edge} ${JSON.stringify(entries)}`)).toEqual([]);
        made += 1;
      }
      expect(made).toBeGreaterThan(0);
    },
  );

  it('leaves what it says it leaves', () => {
    for (const [id, edges] of Object.entries(LEFT)) {
      const outfit = wear(usuallyBefore(id), clothed(true));
      const raw = new Set<string>();
      const unit = UNITS.find((one) => one.id === id)!;
      for (const entries of answers(unit)) {
        if (refusedAt(outfit, unit, { at: suggestPlaces(garmentOf(outfit), unit), entries }).length > 0)
          continue;
        for (const { piece, edge } of rawEdges(garmentOf(wear([[id, entries]], outfit))))
          if (piece.startsWith(id)) raw.add(edge);
      }
      expect([id, [...raw].toSorted()]).toEqual([id, [...edges].toSorted()]);
    }
  });
});
