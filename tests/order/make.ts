import { fresh, runningOrder } from '../../src/order/running.ts';
import type { Running, Standing } from '../../src/order/running-types.ts';
import type { Constraint, StepId } from '../../src/order/step.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { writeProblem } from '../../src/outfit/problem.ts';
import { readOutfit } from '../../src/outfit/reading.ts';

/** Plain data as in an outfit file. */
export type Data = Readonly<Record<string, unknown>>;

/** `half-a-piece` as a name: `Half a piece`. */
const nameFrom = (id: string): string => {
  const words = id.replaceAll('-', ' ');
  return words.charAt(0).toUpperCase() + words.slice(1);
};

/**
 * A piece with these edges in order round it: corners on a circle, so that any number of edges closes. A piece on the
 * fold gets its `fold` as last edge.
 */
export function piece(id: string, edges: string, extra: Data = {}): Data {
  const names = edges.split(' ');
  if (extra.cut === 'fold') names.push('fold');
  const corner = (i: number): readonly [number, number] => {
    const angle = (2 * Math.PI * (i % names.length)) / names.length;
    return [Math.round(200 * Math.cos(angle)), Math.round(200 * Math.sin(angle))];
  };
  return {
    id,
    name: nameFrom(id),
    cloth: 'cotton',
    cut: 'one',
    allowance: '15 mm',
    outline: {
      unit: 'mm',
      start: corner(0),
      edges: names.map((name, i) => ({ name, to: corner(i + 1) })),
    },
    ...extra,
  };
}

/** A left and a right. */
export const pair = (id: string, edges: string, extra: Data = {}): Data =>
  piece(id, edges, { cut: 'pair', ...extra });

/** A seam between two chains, written as edges with blanks between: `front.shoulder back.shoulder`. */
export const join = (id: string, one: string, other: string, extra: Data = {}): Data => ({
  id,
  name: nameFrom(id),
  this: one.split(' '),
  to: other.split(' '),
  depth: '15 mm',
  ...extra,
});

/** A work of a kind on a piece. */
export const work = (kind: string, id: string, on: string, extra: Data = {}): Data => ({
  kind,
  id,
  name: nameFrom(id),
  on,
  ...extra,
});

/** A try-on after these joins. */
export const gate = (id: string, after: string, extra: Data = {}): Data => ({
  id,
  name: nameFrom(id),
  after: after.split(' ').filter(Boolean),
  checks: ['It hangs straight'],
  ...extra,
});

/** One family of two tucks. */
export const twoTucks: Data = { depths: ['5 mm', '5 mm'], spacing: '20 mm', first: '10 mm' };
/** What every row of buttonholes needs. */
export const holes: Data = {
  along: 'opening',
  count: 2,
  first: '20 mm',
  last: '80 mm',
  from: 'the neck edge',
  button: { diameter: '11 mm', thickness: '2 mm' },
  direction: 'along',
  top: 'left',
  marker: 'chalk',
};
/** A lattice of one family each way, with clusters. */
export const lattice: Data = {
  families: [
    { angle: 45, spacing: '20 mm' },
    { angle: -45, spacing: '20 mm' },
  ],
  line: { name: 'Bugle beads', length: '4 mm', atATime: 2 },
};

/** The parts of a garment as plain data. */
export interface Parts {
  readonly pieces: readonly Data[];
  readonly works?: readonly Data[];
  readonly joins?: readonly Data[];
  readonly gates?: readonly Data[];
}

const cotton: Data = {
  id: 'cotton',
  name: 'Cotton',
  width: '1.4 m',
  fibre: 'cotton',
  iron: 200,
  thread: 'white',
  needle: '80/12',
};
const knit: Data = {
  ...cotton,
  id: 'knit',
  name: 'Knit',
  thread: 'black',
  needle: '75/11',
  stretch: { across: 60, along: 40 },
};
const markers: readonly Data[] = (
  ['chalk', 'thread', 'heat-fading', 'air-fading', 'water-fading'] as const
).map((kind) => ({ id: kind, name: `${nameFrom(kind)} marker`, kind }));

/** The plain data of an outfit of these garments, named `a`, `b`, … unless a part gives an `id`. */
export const data = (...garments: readonly (Parts & { readonly id?: string })[]): Data => ({
  format: 'slipbaste-outfit',
  version: 1,
  id: 'tiny',
  name: 'Tiny',
  event: { name: 'The invented day', date: '2030-01-01' },
  cloths: [cotton, knit],
  markers,
  garments: garments.map((parts, i) => ({
    id: String.fromCharCode(97 + i),
    name: `Garment ${i + 1}`,
    ...parts,
  })),
});

/** An outfit read from these garments, as any file is. */
export function outfit(...garments: readonly (Parts & { readonly id?: string })[]): Outfit {
  const read = readOutfit(data(...garments));
  if (!read.ok) throw new Error(read.error.map((p) => `${p.at}: ${writeProblem(p)}`).join('\n'));
  return read.value;
}

/** The running order of an outfit, which must have one. */
export function order(of: Outfit, standing: Partial<Standing> = {}): Running {
  const running = runningOrder(of, { ...fresh, ...standing });
  if (!running.ok) throw new Error(running.error.say);
  return running.value;
}

/** The running order of one garment of these parts. */
export const orderOf = (parts: Parts, standing: Partial<Standing> = {}): Running =>
  order(outfit(parts), standing);

/** Place of a step in the sequence, by its id without the garment: `side/stitch`. Throws where there is none. */
export function placeOf(running: Running, step: string, garment = 'a'): number {
  const place = running.sequence.indexOf(`${garment}/${step}`);
  if (place < 0) {
    throw new Error(`no step ${garment}/${step}; there are\n${running.sequence.join('\n')}`);
  }
  return place;
}

/** The steps of a list that do not come in the order in which they are listed, as `a before b`; empty where all do. */
export function outOfTurn(running: Running, steps: readonly string[], garment = 'a'): readonly string[] {
  const places = steps.map((step) => placeOf(running, step, garment));
  return places.flatMap((place, i) =>
    i > 0 && (places[i - 1] ?? 0) >= place ? [`${steps[i - 1]} before ${steps[i]}`] : [],
  );
}

/** What a rule found, as `before → after`, without the garment. */
export const foundBy = (running: Running, rule: string): readonly string[] =>
  running.constraints.filter((c) => c.rule === rule).map((c) => `${short(c.before)} → ${short(c.after)}`);

const short = (id: StepId): string => id.slice(id.indexOf('/') + 1);

/** True where the constraints in force alone, whatever the arrangement, put one step before the other. */
export function forced(running: Running, before: string, after: string, garment = 'a'): boolean {
  const followers = new Map<StepId, StepId[]>();
  for (const c of running.constraints) followers.set(c.before, [...(followers.get(c.before) ?? []), c.after]);
  const goal = `${garment}/${after}`;
  const start = `${garment}/${before}`;
  if (!running.steps.has(start) || !running.steps.has(goal)) throw new Error(`no step ${start} or ${goal}`);
  const seen = new Set<StepId>();
  const open = [start];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const next of followers.get(at) ?? []) {
      if (next === goal) return true;
      if (!seen.has(next)) {
        seen.add(next);
        open.push(next);
      }
    }
  }
  return false;
}

/** Constraints in force that the sequence breaks. */
export function broken(running: Running): readonly Constraint[] {
  const place = new Map(running.sequence.map((id, i) => [id, i]));
  return running.constraints.filter(
    (c) => (place.get(c.before) ?? -1) >= (place.get(c.after) ?? Number.POSITIVE_INFINITY),
  );
}
