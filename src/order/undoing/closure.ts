import type { EdgeRef } from '../../outfit/outfit.ts';
import { kindOf } from '../kinds.ts';
import type { Step } from '../step.ts';
import { liftWhatLiesOver, openAtCrossings } from './lying-over.ts';
import type { Prepared, Room, Spot, Sub } from './prepared.ts';
import { and, BOTH, LEFT, RIGHT, type Sides, shared, sidesNamed } from './sides.ts';
import { overlaps, type Span } from './spans.ts';
import type { Alteration, Forced } from './undoing-types.ts';
import { whyForced } from './why-forced.ts';

/** What is to happen to a piece: on which sides it is new, and which of its edges move on which sides. */
export interface Altered {
  anew: Sides;
  readonly edges: Map<string, Sides>;
}

/** How far a seam or hem is opened on one of its lines. */
export interface OpenLine {
  /** Along edges of altered pieces. */
  readonly along: Span[];
  readonly spots: Spot[];
  /** Where what it runs over is opened. */
  readonly crossed: Span[];
  /** The edge sewn over it is altered. */
  cover: boolean;
  /** Its own edges to which trims are basted, by trim. */
  readonly trims: Map<number, Span[]>;
}

/** What is taken out of a subject. */
export interface Open {
  readonly sub: Sub;
  /** Of what runs along edges. */
  readonly lines: readonly OpenLine[];
  /** Joins at whose crossings it is opened, and the edges that meet there. */
  readonly crossing: Map<string, readonly EdgeRef[]>;
  /** Of any other work: the sides on which it is done again. */
  sides: Sides;
  /** True where it is taken out of cloth that stays. */
  unpick: boolean;
}

/** Everything that an alteration reaches. */
export interface Closure {
  readonly altered: ReadonlyMap<Room, ReadonlyMap<string, Altered>>;
  readonly open: ReadonlyMap<Sub, Open>;
  readonly forced: readonly (Forced & { readonly room: Room; readonly sides: Sides })[];
}

type Sewn = (step: Step) => boolean;

/** Follows an alteration as far as it reaches, until nothing new is found. Linear in what it touches; never recursive. */
export function closureOf(prepared: Prepared, alterations: readonly Alteration[], sewn: Sewn): Closure {
  const altered = new Map<Room, Map<string, Altered>>();
  const forced: (Forced & { room: Room; sides: Sides })[] = [];
  const open = new Map<Sub, Open>();
  const waiting = new Set<Sub>();
  const alter = (room: Room, id: string, change: (was: Altered, all: Sides) => boolean): void => {
    const piece = room.looked.pieces.get(id);
    const cut = room.cut.get(id);
    if (!piece || !cut || !sewn(cut)) return;
    const here = altered.get(room) ?? new Map<string, Altered>();
    altered.set(room, here);
    const was = here.get(id) ?? { anew: 0 as Sides, edges: new Map<string, Sides>() };
    if (!change(was, piece.cut === 'pair' ? 0 : BOTH)) return;
    here.set(id, was);
    for (const sub of room.holding.get(id) ?? []) waiting.add(sub);
  };
  const renew = (room: Room, id: string, sides: Sides, because = ''): void =>
    alter(room, id, (was, all) => {
      const now = and(was.anew, and(sides, all));
      if (now === was.anew) return false;
      was.anew = now;
      if (
        because !== '' &&
        !forced.some((one) => one.room === room && one.piece === id && one.because === because)
      )
        forced.push({ piece: id, because, room, sides: and(sides, all) });
      return true;
    });

  for (const { garment, piece, how, edges, side } of alterations) {
    const room = prepared.rooms.get(garment);
    if (!room) continue;
    if (how === 'anew') renew(room, piece, sidesNamed(side));
    else
      alter(room, piece, (was) => {
        for (const edge of edges) was.edges.set(edge, and(was.edges.get(edge) ?? 0, sidesNamed(side)));
        return edges.length > 0;
      });
  }
  for (const sub of waiting) {
    waiting.delete(sub);
    const here = altered.get(sub.room);
    if (!here || !sub.steps.some(sewn)) continue;
    const found = openedBy(sub, here);
    if (!found) continue;
    open.set(sub, found);
    const final = sub.steps.find(
      (step) => step.final && sewn(step) && (sub.lines.length > 0 || concerns(sub, step, found.sides) > 0),
    );
    if (!final) continue;
    const because = whyForced(sub, final);
    if (sub.lines.length === 0)
      for (const piece of final.pieces) renew(sub.room, piece, found.sides, because);
    else for (const spot of forcedBy(sub, found)) renew(sub.room, spot.ref.piece, spot.sides, because);
  }
  // From here on in the order of making, so that it does not matter what was named first.
  const inTurn = new Map([...open].sort(([a], [b]) => a.place - b.place));
  liftWhatLiesOver(inTurn, sewn);
  openAtCrossings(inTurn, sewn);
  return { altered, open: inTurn, forced };
}

/** The sides on which an edge of a piece is altered. */
const altering = (here: ReadonlyMap<string, Altered>, { ref, sides }: Spot): Sides => {
  const one = here.get(ref.piece);
  return one ? shared(sides, and(one.anew, one.edges.get(ref.edge) ?? 0)) : 0;
};

function openedBy(sub: Sub, here: ReadonlyMap<string, Altered>): Open | undefined {
  if (sub.lines.length === 0) return takenOut(sub, here);
  let any = false;
  const lines = sub.lines.map((line): OpenLine => {
    const spots = line.spots.filter((spot) => altering(here, spot) > 0);
    const along: Span[] = spots.map(({ span }) => span);
    const trims = new Map<number, Span[]>();
    line.trims.forEach(({ spot, own }, i) => {
      if (altering(here, spot) > 0) {
        along.push([0, 1]);
        trims.set(i, [[0, 1]]);
      } else {
        const spans = spots.filter(({ chain }) => chain === own).map(({ span }) => span);
        if (spans.length > 0) trims.set(i, spans);
      }
    });
    const cover = line.cover !== undefined && altering(here, line.cover) > 0;
    if (along.length > 0 || cover) any = true;
    return { along, spots, crossed: [], cover, trims };
  });
  // A seam comes out of cloth that stays, and of the old piece too: that is laid flat to cut the new one by.
  return any ? { sub, lines, crossing: new Map(), sides: 0, unpick: true } : undefined;
}

/** A work on pieces, and not along a run of edges. */
function takenOut(sub: Sub, here: ReadonlyMap<string, Altered>): Open | undefined {
  const { work } = sub;
  let anew: Sides = 0;
  let moved: Sides = 0;
  let staying = false;
  for (const piece of sub.pieces) {
    const one = here.get(piece);
    anew = and(anew, one?.anew ?? 0);
    if (!one || one.anew === 0) staying = true;
    for (const [edge, sides] of one?.edges ?? []) {
      const late = work?.kind === 'own' && kindOf(work).when === 'late';
      if (late || isAlong(sub, piece, edge)) moved = and(moved, sides);
    }
  }
  const sides = and(anew, moved);
  if (sides === 0) return undefined;
  return { sub, lines: [], crossing: new Map(), sides, unpick: moved > 0 || staying };
}

function isAlong({ work }: Sub, piece: string, edge: string): boolean {
  switch (work?.kind) {
    case 'own':
      return (work.finishes ?? []).some((ref) => ref.piece === piece && ref.edge === edge);
    case 'buttonholes':
      return piece === work.on && work.along === edge;
    default:
      return work !== undefined && 'edge' in work && piece === work.on && work.edge === edge;
  }
}

/** On which sides a step of a work is concerned: holes are on the side that lies on top, buttons on the other. */
export function concerns({ work }: Sub, step: Pick<Step, 'action'>, sides: Sides): Sides {
  if (work?.kind !== 'buttonholes' || work.top === 'each') return sides;
  const buttons = step.action === 'mark-buttons' || step.action === 'buttons';
  return shared(sides, (work.top === 'left') === buttons ? RIGHT : LEFT);
}

/**
 * Trimmed allowances: a piece whose own seam line would move has none left to move it in. Of two layers that are turned
 * right side out, both are graded with what they catch, and their corners cut off to the stitches, so one is not sewn to
 * the other again.
 */
function* forcedBy(sub: Sub, found: Open): Iterable<Spot> {
  const corners = sub.join?.seam === 'turned' && sub.join.worked !== 'round';
  for (const [i, line] of sub.lines.entries()) {
    const opened = found.lines[i];
    if (!opened || opened.along.length === 0) continue;
    for (const spot of line.spots)
      if (corners ? overlaps(spot.span, opened.along) : opened.spots.includes(spot)) yield spot;
    if (corners) for (const { spot } of line.trims) yield spot;
  }
}
