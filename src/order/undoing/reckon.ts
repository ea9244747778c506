import { cuttingOf } from '../expand/garment.ts';
import type { Step } from '../step.ts';
import type { Altered, Closure, Open } from './closure.ts';
import { AGAIN_AT_LEAST, CUT_ANEW, LINES_ANEW } from './paces.ts';
import type { Prepared, Room, Sub } from './prepared.ts';
import { and, countOf, type Sides } from './sides.ts';
import { covered } from './spans.ts';
import { type Now, ownPace, shareOf, unpicking } from './unpicking.ts';

/** A step that is done again, and how much of it. */
export interface Redone {
  readonly sub: Sub;
  readonly step: Step;
  /** Part of the whole step, 0 to 1. */
  readonly share: number;
  readonly minutes: number;
  readonly open: Open | undefined;
}

/** Something that is unpicked. */
export interface Out {
  readonly open: Open;
  readonly minutes: number;
}

/** Pieces of one cloth that are cut again, or whose seam lines move. */
export interface Renewed {
  readonly room: Room;
  readonly cloth: string;
  readonly action: 'cut-anew' | 'lines-anew';
  readonly pieces: readonly (readonly [string, Altered])[];
  readonly minutes: number;
}

/** What an alteration comes to, still without words. */
export interface Reckoned {
  readonly out: readonly Out[];
  readonly renewed: readonly Renewed[];
  readonly again: readonly Redone[];
  readonly undo: number;
  readonly redo: number;
}

/** Everything that is unpicked, cut and done again, with its minutes: the maker's own first. */
export function reckon(prepared: Prepared, closure: Closure, now: Now): Reckoned {
  const pace = ownPace(prepared, now);
  const out: Out[] = [];
  const again: Redone[] = [];
  for (const open of closure.open.values()) {
    const minutes = unpicking(open, now);
    if (minutes > 0) out.push({ open, minutes: tenth(minutes * pace) });
    for (const step of open.sub.steps) {
      if (step.action === 'sample' || !now.sewn(step)) continue;
      const share = shareOf(open, step);
      if (share > 0) again.push(redone(open.sub, step, share, now, open));
    }
  }
  // A gathered edge is drawn up anew wherever the seam that holds it is opened.
  for (const [gathers, share] of gathersOpened(closure, out)) {
    const rows = gathers.steps.find(({ action }) => action === 'rows');
    if (rows && now.sewn(rows)) again.push(redone(gathers, rows, share, now, undefined));
  }
  const renewed: Renewed[] = [];
  for (const [room, pieces] of closure.altered) {
    renewed.push(...cutAgain(room, pieces, now));
    again.push(...triedAgain(room, pieces, closure, now));
  }
  return {
    out,
    renewed,
    again,
    undo: sum(out) + sum(renewed),
    redo: sum(again),
  };
}

const sum = (all: readonly { readonly minutes: number }[]): number =>
  tenth(all.reduce((minutes, one) => minutes + one.minutes, 0));

const tenth = (minutes: number): number => Math.round(minutes * 10) / 10;

function redone(sub: Sub, step: Step, share: number, now: Now, open: Open | undefined): Redone {
  const whole = now.own.get(step.id) ?? step.again?.minutes ?? step.minutes;
  const minutes = share >= 1 ? whole : Math.max(share * whole, Math.min(whole, AGAIN_AT_LEAST.value));
  return { sub, step, share, minutes: tenth(minutes), open };
}

/** Gathers in an opened seam with the part that is opened; what is basted as a trim keeps its gathers. */
function gathersOpened(closure: Closure, out: readonly Out[]): ReadonlyMap<Sub, number> {
  const found = new Map<Sub, number>();
  for (const {
    open: { sub, lines },
  } of out) {
    if (!sub.join) continue;
    for (const spot of sub.lines[0]?.spots ?? []) {
      for (const gathers of sub.room.holding.get(spot.ref.piece) ?? []) {
        const { work } = gathers;
        if (work?.kind !== 'gather' || work.on !== spot.ref.piece || work.edge !== spot.ref.edge) continue;
        if (closure.open.has(gathers)) continue;
        const part = lines.reduce((all, { along }) => all + within(along, spot.span), 0) / lines.length;
        if (part > 0) found.set(gathers, Math.min(1, Math.max(part, found.get(gathers) ?? 0)));
      }
    }
  }
  return found;
}

/** How much of a span these others cover, 0 to 1. */
function within(others: Open['lines'][number]['along'], [from, to]: readonly [number, number]): number {
  if (to <= from) return 0;
  return (
    covered(
      others.flatMap(([a, b]) => (b > from && a < to ? [[Math.max(a, from), Math.min(b, to)] as const] : [])),
    ) /
    (to - from)
  );
}

function* cutAgain(room: Room, altered: ReadonlyMap<string, Altered>, now: Now): Iterable<Renewed> {
  const byCloth = new Map<string, (readonly [string, Altered])[]>();
  for (const one of altered) {
    const cloth = room.looked.pieces.get(one[0])?.cloth ?? '';
    byCloth.set(cloth, [...(byCloth.get(cloth) ?? []), one]);
  }
  for (const [cloth, pieces] of byCloth) {
    const cutting = room.subs.get(cuttingOf(cloth));
    const step = (action: string) => cutting?.steps.find((one) => one.action === action && now.sewn(one));
    const own = (one: Step | undefined): number =>
      one && one.minutes > 0 ? (now.own.get(one.id) ?? one.minutes) / one.minutes : 1;
    const anew = pieces.filter(([, { anew }]) => anew > 0);
    if (anew.length > 0)
      yield {
        room,
        cloth,
        action: 'cut-anew',
        pieces: anew,
        minutes: tenth(own(step('cut')) * CUT_ANEW.value * each(room, anew)),
      };
    const lines = step('lines');
    if (lines)
      yield {
        room,
        cloth,
        action: 'lines-anew',
        pieces,
        minutes: tenth(own(lines) * LINES_ANEW.value * each(room, pieces)),
      };
  }
}

/** How many pieces of cloth: a left and a right are two. */
const each = (room: Room, pieces: readonly (readonly [string, Altered])[]): number =>
  pieces.reduce(
    (all, [id, one]) => all + (room.looked.pieces.get(id)?.cut === 'pair' ? countOf(sidesOf(one)) : 1),
    0,
  );

/** The sides on which anything is altered. */
export const sidesOf = ({ anew, edges }: Altered): Sides =>
  [...edges.values()].reduce<Sides>((all, sides) => and(all, sides), anew);

/** Try-ons that looked at what is opened or altered. */
function* triedAgain(
  room: Room,
  altered: ReadonlyMap<string, Altered>,
  closure: Closure,
  now: Now,
): Iterable<Redone> {
  const isOpen = (id: string): boolean => {
    const sub = room.subs.get(id);
    const open = sub && closure.open.get(sub);
    return (
      open !== undefined && (open.lines.length === 0 || open.lines.some(({ along }) => along.length > 0))
    );
  };
  for (const sub of room.subs.values()) {
    // A trial in cheap cloth is over once the good cloth is cut.
    if (!sub.gate || sub.gate.trial) continue;
    const fit = sub.steps.find((step) => step.action === 'fit');
    if (!fit || !now.sewn(fit)) continue;
    const { after, tack } = sub.gate;
    const seen = sub.steps.some((step) => step.pieces.some((piece) => altered.has(piece)));
    if (!seen && ![...after, ...tack].some(isOpen)) continue;
    const tacked = tack.filter(isOpen).length / Math.max(1, tack.length);
    for (const step of sub.steps) {
      const share = step.action === 'fit' ? 1 : tacked;
      if (share > 0 && now.sewn(step)) yield redone(sub, step, share, now, undefined);
    }
  }
}
