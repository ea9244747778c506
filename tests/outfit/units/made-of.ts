import { expect } from 'vitest';
import type { Fault } from '../../../src/fields/fields.ts';
import { add, type Length, mm, size, subtract, times, toMm } from '../../../src/length/length.ts';
import { fresh, runningOrder } from '../../../src/order/running.ts';
import type { Running } from '../../../src/order/running-types.ts';
import { disagreements } from '../../../src/outfit/agreement.ts';
import type { Chain, Garment, Outfit, Wearer } from '../../../src/outfit/outfit.ts';
import { writeProblem } from '../../../src/outfit/problem.ts';
import { chainLength } from '../../../src/outfit/units/place.ts';
import type { Built, Putting, Unit } from '../../../src/outfit/units/unit.ts';
import { forced } from '../../order/make.ts';

/** Measures of an invented wearer, in inches: somebody of middling size. */
export const MIDDLING: Readonly<Record<string, number>> = {
  height: 66,
  neck: 15,
  chest: 38,
  waist: 32,
  hip: 40,
  shoulder: 5,
  'across-back': 15,
  'back-waist': 16.5,
  armhole: 17,
  'upper-arm': 12,
  'arm-length': 23,
  wrist: 6.5,
  'waist-to-floor': 41,
};

/** An outfit of one empty garment, `garment`, for an invented wearer; with nobody measured where no measures are given. */
export function emptyOutfit(
  units: 'in' | 'mm' = 'in',
  measures?: Readonly<Record<string, number>>,
  name = 'Shirt',
): Outfit {
  const taken = Object.entries(measures ?? {}).map(([id, inch]) => [id, mm(inch * 25.4)] as const);
  const wearer: Wearer = { id: 'somebody', name: 'Somebody', measures: Object.fromEntries(taken) };
  const cloth = {
    id: 'lawn',
    name: 'Cotton lawn',
    width: mm(1400),
    fibre: 'cotton',
    stretch: { across: 0, along: 0 },
    iron: 200,
    oneWay: false,
    thread: 'ivory',
    needle: '70/10',
  } as const;
  return {
    id: 'invented',
    name: 'Invented outfit',
    about: '',
    invented: true,
    event: { name: 'The invented day', date: '2030-01-01' },
    units,
    cloths: [cloth, { ...cloth, id: 'lining', name: 'Lining', thread: 'grey' }],
    markers: [{ id: 'chalk', name: 'Tailor’s chalk', kind: 'chalk' }],
    wearers: [wearer],
    garments: [
      { id: 'garment', name, wearer: 'somebody', units: [], pieces: [], works: [], joins: [], gates: [] },
    ],
  };
}

/** The garment of such an outfit. */
export const garmentOf = (outfit: Outfit): Garment => outfit.garments[0]!;

const filled = (unit: Unit, use: Partial<Putting>): Putting => ({
  id: unit.id,
  name: unit.name,
  entries: {},
  at: {},
  cloths: {},
  ...use,
});

/** What a unit makes; throws with its faults where it cannot. */
export function built(outfit: Outfit, unit: Unit, use: Partial<Putting> = {}): Built {
  const made = unit.build({ outfit, garment: garmentOf(outfit) }, filled(unit, use));
  if (!made.ok) throw new Error(made.error.map((one) => `${one.field}: ${one.say}`).join('\n'));
  return made.value;
}

/** The fields at which a unit refuses. */
export function refusedAt(outfit: Outfit, unit: Unit, use: Partial<Putting> = {}): readonly string[] {
  const made = unit.build({ outfit, garment: garmentOf(outfit) }, filled(unit, use));
  return made.ok ? [] : made.error.map((one: Fault) => one.field);
}

/** The outfit with a unit put on its garment. */
export function put(outfit: Outfit, unit: Unit, use: Partial<Putting> = {}): Outfit {
  const putting = filled(unit, use);
  const made = built(outfit, unit, use);
  const garment = garmentOf(outfit);
  const caught = new Map(made.catches.map((one) => [one.join, one.caught]));
  const joins = garment.joins.map((join) => {
    const one = caught.get(join.id);
    return one ? { ...join, catches: [...join.catches, one] } : join;
  });
  const brought = [made.pieces, made.works, made.joins, made.gates].flat().map(({ id }) => id);
  const whole: Garment = {
    ...garment,
    units: [...garment.units, { ...putting, unit: unit.id, brought, own: [] }],
    pieces: [...garment.pieces, ...made.pieces],
    works: [...garment.works, ...made.works],
    joins: [...joins, ...made.joins],
    gates: [...garment.gates, ...made.gates],
  };
  return { ...outfit, garments: [whole] };
}

/** The running order of an outfit that agrees with itself; fails with what is wrong. */
export function soundOrder(outfit: Outfit): Running {
  expect(disagreements(outfit).map((one) => `${one.at}: ${writeProblem(one)}`)).toEqual([]);
  const running = runningOrder(outfit, fresh);
  if (!running.ok) throw new Error(running.error.say);
  return running.value;
}

/** Steps of the garment that are not forced into the order in which they are listed; empty where all are. */
export const outOfOrder = (running: Running, steps: readonly string[]): readonly string[] =>
  steps.flatMap((step, i) => {
    const last = steps[i - 1];
    return last === undefined || forced(running, last, step, 'garment') ? [] : [`${last} before ${step}`];
  });

/** Length of a chain once its gathers are drawn up. */
export function drawnUp(garment: Garment, chain: Chain): Length {
  return add(
    ...chain.map((ref) => {
      const gathers = garment.works.find(
        (work) => work.kind === 'gather' && work.on === ref.piece && work.edge === ref.edge,
      );
      const long = chainLength(garment, [ref]);
      return gathers?.kind === 'gather' ? times(long, 1 / gathers.fullness) : long;
    }),
  );
}

/** By how much the two sides of a join differ, in millimetres, gathers drawn up. */
export function differsBy(outfit: Outfit, id: string): number {
  const garment = garmentOf(outfit);
  const join = garment.joins.find((one) => one.id === id);
  if (!join) throw new Error(`no join ${id}`);
  return toMm(size(subtract(drawnUp(garment, join.this), drawnUp(garment, join.to))));
}
