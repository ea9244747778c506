import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { disagreements } from '../../../src/outfit/agreement.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import { appliqueOnMesh } from '../../../src/outfit/units/applique-on-mesh.ts';
import { beadedLattice } from '../../../src/outfit/units/beaded-lattice.ts';
import { buttonedCuff } from '../../../src/outfit/units/buttoned-cuff.ts';
import { lanternSleeve } from '../../../src/outfit/units/lantern-sleeve.ts';
import { plainSleeve } from '../../../src/outfit/units/plain-sleeve.ts';
import { puffedSleeve } from '../../../src/outfit/units/puffed-sleeve.ts';
import { ribbonFrill } from '../../../src/outfit/units/ribbon-frill.ts';
import { sleeveHeadStretch } from '../../../src/outfit/units/sleeve-head-stretch.ts';
import { sleeveSupport } from '../../../src/outfit/units/sleeve-support.ts';
import { stretchLeg } from '../../../src/outfit/units/stretch-leg.ts';
import type { Unit } from '../../../src/outfit/units/unit.ts';
import { writeOutfit } from '../../../src/outfit/writing.ts';
import { bare, measured, put, putting, sleeveless } from './bodies.ts';

const armhole = { armhole: ['front.armhole', 'back.armhole'] };
const plain = put(sleeveless(measured), plainSleeve, {
  id: 'sleeve',
  at: armhole,
  entries: { ends: 'cuff' },
}).outfit;
const puff = put(bare(measured), puffedSleeve, { id: 'sleeve', entries: { held: 'head' } }).outfit;
const legs = put(bare(measured), stretchLeg, { id: 'leg', entries: { of: 'two' } }).outfit;

const all: readonly (readonly [Unit, Outfit, Readonly<Record<string, readonly string[]>>])[] = [
  [plainSleeve, sleeveless(measured), armhole],
  [puffedSleeve, sleeveless(measured), armhole],
  [lanternSleeve, sleeveless(), armhole],
  [lanternSleeve, bare(), {}],
  [buttonedCuff, plain, { lower: ['sleeve.lower'] }],
  [sleeveHeadStretch, puff, { top: ['sleeve.upper'] }],
  [sleeveSupport, plain, { sleeve: ['sleeve'] }],
  [beadedLattice, plain, { piece: ['sleeve'] }],
  [appliqueOnMesh, plain, { piece: ['sleeve'] }],
  [stretchLeg, bare(measured), {}],
  [ribbonFrill, legs, { seam: ['leg-knee'] }],
];

const odd = fc.oneof(
  fc.integer({ min: 1, max: 900 }).map(String),
  fc.constantFrom('0', '-3', '0.4', '1', '2', '3', '20000', '1000000'),
);

/** A few fields of a unit, written with figures that nobody may have meant. */
const entriesFor = (unit: Unit) =>
  fc.record(
    Object.fromEntries(
      Object.entries(unit.fields).map(([name, field]) => [
        name,
        field.kind === 'choice' ? fc.constantFrom(...field.options.map(({ value }) => value)) : odd,
      ]),
    ),
    { requiredKeys: [] },
  );

describe('figures that nobody meant', () => {
  test.each(all)(
    'are refused at a field of $name, or what comes of them agrees and can be written',
    (unit, outfit, at) => {
      const [garment] = outfit.garments;
      const places = [...Object.keys(unit.places).map((name) => `at.${name}`), 'cloth.main', 'cloth.lower'];
      fc.assert(
        fc.property(entriesFor(unit), (entries) => {
          const written = Object.fromEntries(Object.entries(entries).slice(0, 4)) as Record<string, string>;
          const built = unit.build(
            { outfit, garment: garment! },
            putting(unit, { id: 'new', at, entries: written }),
          );
          if (!built.ok) {
            for (const { field, say } of built.error) {
              expect([...Object.keys(unit.fields), ...places]).toContain(field);
              expect(say).toMatch(/^\S.*[.?]$/);
            }
            return;
          }
          const { pieces, works, joins, gates } = built.value;
          const made: Outfit = {
            ...outfit,
            garments: [
              {
                ...garment!,
                pieces: [...garment!.pieces, ...pieces],
                works: [...garment!.works, ...works],
                joins: [...garment!.joins, ...joins],
                gates: [...garment!.gates, ...gates],
              },
            ],
          };
          expect(disagreements(made)).toEqual([]);
          const read = readOutfit(JSON.parse(JSON.stringify(writeOutfit(made))));
          if (!read.ok) expect(read.error.map(({ at: where, wrong }) => `${where} ${wrong}`)).toEqual([]);
        }),
        { seed: 16, numRuns: 120 },
      );
    },
  );
});
