import { describe, expect, test } from 'vitest';
import { lengthsFit } from '../../../src/outfit/lengths-fit.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { appliqueOnMesh } from '../../../src/outfit/units/applique-on-mesh.ts';
import { beadedLattice } from '../../../src/outfit/units/beaded-lattice.ts';
import { buttonedCuff } from '../../../src/outfit/units/buttoned-cuff.ts';
import { lanternSleeve } from '../../../src/outfit/units/lantern-sleeve.ts';
import { plainSleeve } from '../../../src/outfit/units/plain-sleeve.ts';
import { puffedSleeve } from '../../../src/outfit/units/puffed-sleeve.ts';
import { sleeveHeadStretch } from '../../../src/outfit/units/sleeve-head-stretch.ts';
import { sleeveSupport } from '../../../src/outfit/units/sleeve-support.ts';
import { stretchLeg } from '../../../src/outfit/units/stretch-leg.ts';
import type { Unit } from '../../../src/outfit/units/unit.ts';
import { broken, order } from '../../order/make.ts';
import { bare, measured, put, sleeveless } from './bodies.ts';

type Entries = Readonly<Record<string, string>>;

/** Every way to answer the choices of a unit together. */
const choices = (unit: Unit): readonly Entries[] =>
  Object.entries(unit.fields).reduce<readonly Entries[]>(
    (all, [name, field]) =>
      field.kind === 'choice'
        ? all.flatMap((one) => field.options.map(({ value }) => ({ ...one, [name]: value })))
        : all,
    [{}],
  );

const sewable = (outfit: Outfit): void => {
  const apart = lengthsFit(outfit, outfit.garments[0]!, { unit: 'mm', step: 0.5 }).filter(
    ({ within }) => !within,
  );
  expect(apart.map(({ say }) => say)).toEqual([]);
  const running = order(outfit);
  expect(broken(running)).toEqual([]);
  expect(running.sequence.length).toBeGreaterThan(5);
};

const at = { armhole: ['front.armhole', 'back.armhole'] };
const sleeve = { id: 'sleeve', name: 'Sleeve' };

describe('every answer to the choices', () => {
  test.each([plainSleeve, puffedSleeve, lanternSleeve])(
    'of a $name can be sewn, with all that is put on it',
    (unit) => {
      for (const entries of choices(unit)) {
        const worn = entries.held === undefined || entries.held === 'armhole';
        const from = worn ? sleeveless(measured) : bare(measured);
        let { outfit } = put(from, unit, { ...sleeve, ...(worn && { at }), entries });
        const lower = unit === lanternSleeve ? 'sleeve-lower.lower' : 'sleeve.lower';
        if (entries.ends === 'cuff')
          outfit = put(outfit, buttonedCuff, { id: 'cuff', name: 'Cuff', at: { lower: [lower] } }).outfit;
        if (entries.held === 'head')
          outfit = put(outfit, sleeveHeadStretch, {
            id: 'head',
            name: 'Head',
            at: { top: ['sleeve.upper'] },
          }).outfit;
        outfit = put(outfit, sleeveSupport, { id: 'net', name: 'Net', at: { sleeve: ['sleeve'] } }).outfit;
        outfit = put(outfit, beadedLattice, { id: 'beads', name: 'Beads', at: { piece: ['sleeve'] } }).outfit;
        sewable(outfit);
      }
    },
  );

  test.each([buttonedCuff, appliqueOnMesh])('of a $name can be sewn', (unit) => {
    const { outfit } = put(sleeveless(measured), plainSleeve, { ...sleeve, at, entries: { ends: 'cuff' } });
    const places = unit === buttonedCuff ? { lower: ['sleeve.lower'] } : { piece: ['sleeve'] };
    for (const entries of choices(unit))
      sewable(put(outfit, unit, { id: 'it', name: 'It', at: places, entries }).outfit);
  });

  test('of stretch legs can be sewn', () => {
    for (const entries of choices(stretchLeg))
      sewable(put(bare(measured), stretchLeg, { id: 'leg', name: 'Leg', entries }).outfit);
  });
});
