import { crossings, edgeName, type Looked, lookUp } from '../../outfit/chains.ts';
import type { Chain, EdgeRef, Garment, Join, Outfit } from '../../outfit/outfit.ts';
import { edgeLengths } from '../../shape/measure.ts';
import { cuttingOf } from '../expand/garment.ts';
import { isUndo, isUnpicking } from '../rules/reworked.ts';
import type { Running } from '../running-types.ts';
import type { Step, StepId } from '../step.ts';
import type { Line, Over, Prepared, Room, Spot, Sub } from './prepared.ts';
import { BOTH, LEFT, RIGHT, type Sides, sidesOfRef } from './sides.ts';

/** Looks up once what every undoing needs to know of an outfit and its order of making. */
export function prepareUndoing(outfit: Outfit, running: Running): Prepared {
  const places = new Map(running.sequence.map((id, i) => [id, i]));
  const byGarment = new Map<string, Map<string, Step[]>>();
  const unpicked: Step[] = [];
  for (const step of running.steps.values()) {
    if (isUndo(step)) {
      if (isUnpicking(step)) unpicked.push(step);
      continue;
    }
    const subjects = byGarment.get(step.garment) ?? new Map<string, Step[]>();
    byGarment.set(step.garment, subjects);
    put(subjects, step.of.id, step);
  }
  const rooms = new Map(
    outfit.garments.map((garment) => [
      garment.id,
      roomOf(garment, byGarment.get(garment.id) ?? new Map(), places),
    ]),
  );
  return { outfit, running, rooms, places, unpicked };
}

function put<T>(map: Map<string, T[]>, key: string, value: T): void {
  const list = map.get(key);
  if (list) list.push(value);
  else map.set(key, [value]);
}

function roomOf(
  garment: Garment,
  steps: ReadonlyMap<string, readonly Step[]>,
  places: ReadonlyMap<StepId, number>,
): Room {
  const looked = lookUp(garment);
  const lengths = new Map<string, ReturnType<typeof edgeLengths>>();
  const length = (ref: Pick<EdgeRef, 'piece' | 'edge'>): number => {
    const piece = looked.pieces.get(ref.piece);
    if (!piece) return 0;
    const known = lengths.get(piece.id) ?? edgeLengths(piece.outline);
    lengths.set(piece.id, known);
    return known.get(ref.edge) ?? 0;
  };
  const subs = new Map<string, Sub>();
  const holding = new Map<string, Sub[]>();
  const over = new Map<string, Over[]>();
  const laidOver = new Map<string, Sub[]>();
  const cut = new Map<string, Step>();
  const room: Room = { garment, looked, subs, holding, over, laidOver, cut, length };

  const works = new Map(garment.works.map((work) => [work.id, work]));
  const gates = new Map(garment.gates.map((gate) => [gate.id, gate]));
  for (const [id, own] of steps) {
    const join = own[0]?.of.kind === 'join' ? looked.joins.get(id) : undefined;
    const work = own[0]?.of.kind === 'work' ? works.get(id) : undefined;
    const gate = own[0]?.of.kind === 'gate' ? gates.get(id) : undefined;
    const times = own.some((step) => step.times === 2) ? 2 : 1;
    const runs = join
      ? [join.this, join.to]
      : work && 'along' in work && work.kind !== 'buttonholes'
        ? [work.along]
        : [];
    const long = runs.map((chain) => chain.reduce((sum, ref) => sum + length(ref), 0)).filter((n) => n > 0);
    const sub: Sub = {
      room,
      id,
      steps: own,
      times,
      pieces: [...new Set(own.flatMap((step) => step.pieces))],
      join,
      work,
      gate,
      // The shorter side of a gathered seam is the length that is sewn.
      length: long.length > 0 ? Math.min(...long) : 0,
      lines:
        runs.length === 0
          ? []
          : times === 2
            ? [lineOf(room, runs, LEFT, join), lineOf(room, runs, RIGHT, join)]
            : [lineOf(room, runs, BOTH, join)],
      ring: join ? join.ring : work !== undefined && 'ring' in work && work.ring,
      place: Math.max(...own.map((step) => places.get(step.id) ?? 0)),
    };
    subs.set(id, sub);
    if (!gate && !(own[0]?.of.kind === 'piece' && id.startsWith('cut-')))
      for (const piece of sub.pieces) put(holding, piece, sub);
  }
  for (const piece of garment.pieces) {
    const step = steps.get(cuttingOf(piece.cloth))?.find((one) => one.action === 'cut');
    if (step) cut.set(piece.id, step);
  }
  for (const sub of subs.values()) {
    crossingsOf(sub, over);
    if (sub.join?.seam === 'laid-on') lain(sub, laidOver);
  }
  return room;
}

function lineOf(room: Room, runs: readonly Chain[], side: Sides, join: Join | undefined): Line {
  const { looked } = room;
  const spots: Spot[] = [];
  runs.forEach((chain, i) => {
    const whole = chain.reduce((sum, ref) => sum + room.length(ref), 0);
    let at = 0;
    chain.forEach((ref, n) => {
      const part = whole > 0 ? room.length(ref) / whole : 1 / chain.length;
      const to = n === chain.length - 1 ? 1 : at + part;
      spots.push({ ...spotOf(looked, chain, ref, side), chain: i === 0 ? 'this' : 'to', span: [at, to] });
      at = to;
    });
  });
  return {
    sides: side,
    spots,
    trims: (join?.catches ?? []).map(({ trim, basteTo }) => ({
      spot: besides(looked, trim, side),
      own: basteTo,
    })),
    cover: join?.cover && besides(looked, join.cover, side),
  };
}

const spotOf = (looked: Looked, chain: Chain, ref: EdgeRef, side: Sides): Spot => ({
  ref,
  key: edgeName(ref),
  // What is sewn once holds on the left what it names without “other”.
  sides: sidesOfRef(looked, chain, ref, side === BOTH ? LEFT : side),
  chain: 'this',
  span: [0, 1],
});

/** A trim or a cover lies along the whole seam, on the sides on which that is sewn. */
const besides = (looked: Looked, ref: EdgeRef, side: Sides): Spot => ({
  ...spotOf(looked, [ref], ref, side),
  ...(side === BOTH ? { sides: BOTH } : {}),
});

function crossingsOf(sub: Sub, over: Map<string, Over[]>): void {
  const { looked } = sub.room;
  const chains = sub.join
    ? [sub.join.this, sub.join.to]
    : sub.work && sub.lines.length > 0 && 'along' in sub.work && sub.work.kind !== 'buttonholes'
      ? [sub.work.along]
      : [];
  chains.forEach((chain, i) => {
    for (const { from, to, over: under } of crossings(looked, chain, sub.ring, sub.id)) {
      sub.lines.forEach((line, n) => {
        const spot = line.spots.find((one) => one.ref === from && one.chain === (i === 0 ? 'this' : 'to'));
        if (!spot) return;
        const side = line.sides === BOTH ? LEFT : line.sides;
        const ends = [from, to].map((ref) => ({ ref, sides: sidesOfRef(looked, chain, ref, side) }));
        for (const join of under) put(over, join.id, { sub, line: n, at: spot.span[1], ends });
      });
    }
  });
}

/** What is laid on along an edge lies over every other seam of that edge. */
function lain(sub: Sub, laidOver: Map<string, Sub[]>): void {
  const edges = new Set(sub.lines[0]?.spots.map(({ key }) => key));
  for (const other of sub.room.subs.values()) {
    if (other === sub || !other.join || other.join.seam === 'laid-on') continue;
    if (other.lines[0]?.spots.some(({ key }) => edges.has(key))) put(laidOver, other.id, sub);
  }
}
