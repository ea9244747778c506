import { type Length, nm } from '../../length/length.ts';
import { edgeName } from '../../outfit/chains.ts';
import type { EdgeRef } from '../../outfit/outfit.ts';
import { cuttingOf } from '../expand/garment.ts';
import type { AgainStep, UndoStep } from '../running-types.ts';
import type { Step, StepId } from '../step.ts';
import { type Closure, closureOf, type Open } from './closure.ts';
import type { Prepared, Sub } from './prepare.ts';
import { type Out, oneSided, type Reckoned, type Renewed, reckon, sidesOf } from './reckon.ts';
import { BOTH, countOf, LEFT } from './sides.ts';
import { covered, overlaps } from './spans.ts';
import type { Alteration, Extent, Forced, Opened, TrimStays, Undoing } from './undoing-types.ts';
import type { Now } from './unpicking.ts';
import { kindOfOpening, sayOnly, sayOut, sayRenewed } from './words.ts';

export { type Prepared, prepareUndoing } from './prepare.ts';

/** Where things stand: what is done, and the maker's own minutes by step where she has been timed. */
export interface At {
  readonly done: Iterable<StepId>;
  readonly own?: ReadonlyMap<StepId, number>;
}

/** No times of the maker's own. */
const untimed: ReadonlyMap<StepId, number> = new Map();

function nowOf(at: At): Now {
  const done = at.done instanceof Set ? at.done : new Set(at.done);
  // A step that is to be done again in part only still holds where it was left alone.
  return {
    sewn: (step: Step) => done.has(step.id) || (step.again?.only ?? '') !== '',
    own: at.own ?? untimed,
  };
}

/**
 * Everything that follows from altering some pieces, given what is done: what is opened, what is cut, what is done again,
 * in order and in words. `id` and `say` name the rework.
 */
export function undoing(
  prepared: Prepared,
  alterations: readonly Alteration[],
  at: At & { readonly id: string; readonly say: string },
): Undoing {
  const now = nowOf(at);
  const closure = closureOf(prepared, alterations, now.sewn);
  const reckoned = reckon(prepared, closure, now);
  const out = reckoned.out.toSorted(
    (a, b) => lastSewn(b.open.sub, prepared, now) - lastSewn(a.open.sub, prepared, now),
  );
  const all = allAlterations(alterations, closure);
  const renewed = [...reckoned.renewed].sort((a, b) =>
    a.action < b.action ? -1 : a.action > b.action ? 1 : 0,
  );
  const undo = [...out.map((one) => outStep(one, now)), ...renewed.map((one) => renewedStep(one, all))];
  return {
    alterations: all,
    forced: closure.forced.map(({ piece, because }): Forced => ({ piece, because })),
    opened: out.map(({ open }) => openedOf(open)),
    stays: staysOf(out),
    rework: { id: at.id, say: at.say, undo, again: againOf(prepared, closure, reckoned) },
    minutes: { undo: reckoned.undo, again: reckoned.redo, total: totalOf(reckoned) },
  };
}

/** What altering these pieces would cost in minutes, as {@link undoing} reckons it, without its words: for asking often. */
export function undoingMinutes(prepared: Prepared, alterations: readonly Alteration[], at: At): number {
  const now = nowOf(at);
  return totalOf(reckon(prepared, closureOf(prepared, alterations, now.sewn), now));
}

const totalOf = ({ undo, redo }: Reckoned): number => Math.round((undo + redo) * 10) / 10;

function lastSewn(sub: Sub, { places }: Prepared, now: Now): number {
  let last = -1;
  for (const step of sub.steps) if (now.sewn(step)) last = Math.max(last, places.get(step.id) ?? -1);
  return last;
}

function allAlterations(asked: readonly Alteration[], closure: Closure): readonly Alteration[] {
  const all = [...asked];
  for (const { room, piece, sides } of closure.forced) {
    const garment = room.garment.id;
    const there = all.findIndex((one) => one.garment === garment && one.piece === piece);
    const was = all[there];
    const side = sides === BOTH ? 'both' : sides === LEFT ? 'left' : 'right';
    const now: Alteration = { garment, piece, how: 'anew', edges: [], side, say: was?.say ?? '' };
    if (!was) all.push(now);
    else if (was.how === 'edges' || (was.side !== side && was.side !== 'both'))
      all[there] = { ...now, side: was.side === side ? side : 'both' };
  }
  return all;
}

function outStep({ open, minutes }: Out, now: Now): UndoStep {
  const { sub } = open;
  const [step] = sub.steps;
  const kind = kindOfOpening(open);
  const sewn = sub.steps.some(
    (one) =>
      now.sewn(one) &&
      !one.action.startsWith('baste') &&
      ['machine', 'hand', 'overlocker'].includes(one.setUp.station),
  );
  const edges = edgesOf(open);
  return {
    garment: sub.room.garment.id,
    of: step?.of ?? { kind: 'join', id: sub.id },
    action: kind === 'whole' ? 'unpick' : 'open',
    say: sayOut(open, !sewn),
    pieces:
      edges.length > 0
        ? [...new Set([...edges.map((edge) => edge.split('.')[0] ?? ''), ...trimsIn(sub)])]
        : sub.pieces,
    edges,
    times: sub.times === 2 && oneSided(open) === BOTH ? 2 : 1,
    minutes,
  };
}

const trimsIn = ({ join }: Sub): readonly string[] => (join?.catches ?? []).map(({ trim }) => trim.piece);

/** The edges that lie where it is opened, on both sides of the seam. */
function edgesOf(open: Open): readonly string[] {
  const keys = new Set<string>();
  open.lines.forEach((line, n) => {
    for (const spot of open.sub.lines[n]?.spots ?? [])
      if (overlaps(spot.span, line.along)) keys.add(spot.key);
    const cover = open.sub.lines[n]?.cover;
    if (line.cover && cover) keys.add(cover.key);
  });
  for (const refs of open.crossing.values()) for (const ref of refs) keys.add(edgeName(ref));
  if (open.lines.length === 0) for (const edge of open.sub.steps[0]?.edges ?? []) keys.add(edge);
  return [...keys];
}

function renewedStep(one: Renewed, alterations: readonly Alteration[]): UndoStep {
  const garment = one.room.garment.id;
  const pair = one.pieces.some(
    ([id, altered]) => one.room.looked.pieces.get(id)?.cut === 'pair' && countOf(sidesOf(altered)) === 2,
  );
  const saying = (piece: string): string =>
    [
      ...new Set(
        alterations
          .filter((a) => a.garment === garment && a.piece === piece && a.say !== '')
          .map((a) => a.say),
      ),
    ].join(', ');
  return {
    garment,
    of: { kind: 'piece', id: cuttingOf(one.cloth) },
    action: one.action,
    say: sayRenewed(one, saying),
    pieces: one.pieces.map(([id]) => id),
    edges: one.pieces.flatMap(([id, { edges, anew }]) =>
      anew === 0 ? [...edges.keys()].map((edge) => `${id}.${edge}`) : [],
    ),
    times: pair ? 2 : 1,
    minutes: one.minutes,
  };
}

function openedOf(open: Open): Opened {
  const { sub, lines } = open;
  const long = lines.reduce(
    (most, line) => {
      const part = covered([...line.along, ...line.crossed, ...(line.cover ? [[0, 1] as const] : [])]);
      return Math.max(most, part * sub.length);
    },
    lines.length === 0 ? edgeLength(sub) : 0,
  );
  return {
    kind: sub.join ? 'join' : 'work',
    id: sub.id,
    name: sub.join?.name ?? sub.work?.name ?? sub.id,
    extent: extentOf(open),
    length: nm(long) as Length,
  };
}

const edgeLength = ({ work, room }: Sub): number =>
  work && 'edge' in work ? room.length({ piece: work.on, edge: work.edge }) : 0;

function extentOf(open: Open): Extent {
  const kind = kindOfOpening(open);
  if (kind === 'whole') return { kind };
  if (kind === 'crossing') return { kind, joins: [...open.crossing.keys()] };
  const refs = new Map<string, EdgeRef>();
  const put = (ref: EdgeRef) => refs.set(`${ref.other} ${edgeName(ref)}`, ref);
  open.lines.forEach((line, n) => {
    for (const { ref } of line.spots) put(ref);
    const cover = open.sub.lines[n]?.cover;
    if (line.cover && cover) put(cover.ref);
  });
  return { kind: 'along', edges: [...refs.values()] };
}

/** Trims in opened seams that keep a part of their basting at least. */
function staysOf(out: readonly Out[]): readonly TrimStays[] {
  return out.flatMap(({ open: { sub, lines } }) =>
    (sub.join?.catches ?? []).flatMap(({ trim, basteTo }, i): readonly TrimStays[] => {
      const gone = (key: string): boolean =>
        sub.lines.every(
          (line, n) =>
            lines[n]?.along.length === 0 ||
            line.spots.every((spot) => spot.key !== key || overlaps(spot.span, lines[n]?.trims.get(i) ?? [])),
        );
      const own = (sub.join?.[basteTo] ?? []).filter((ref) => !gone(edgeName(ref)));
      const on = [...new Set(own.map(({ piece }) => piece))];
      return on.length > 0 ? [{ join: sub.id, trim: trim.piece, on }] : [];
    }),
  );
}

function againOf(prepared: Prepared, closure: Closure, { again }: Reckoned): readonly AgainStep[] {
  return again
    .map((one): AgainStep => {
      const { room } = one.sub;
      const isOpen = (id: string): boolean => {
        const sub = room.subs.get(id);
        return sub !== undefined && closure.open.has(sub);
      };
      const only = sayOnly(one, room, isOpen);
      return { step: one.step.id, ...(only === undefined ? {} : { only }), minutes: one.minutes };
    })
    .sort((a, b) => (prepared.places.get(a.step) ?? 0) - (prepared.places.get(b.step) ?? 0));
}
