import type { Sourced } from '../cloth/advice.ts';
import { practice } from '../cloth/source.ts';
import { inches, type Length, toMm } from '../length/length.ts';
import { edgeName } from '../outfit/chains.ts';
import type { Garment, Piece } from '../outfit/outfit.ts';
import type { Cause, Entry, Role, Want } from './entry.ts';
import type { Observation } from './observation.ts';
import { facing, isCalled } from './panels.ts';
import { type Placed, placed, upright } from './sides.ts';
import { apart, type Change, type Taking } from './taking-part.ts';

/** What is seen is met when it is right to this much; and a change smaller than this cannot be marked and sewn. */
export const AS_GOOD_AS: Sourced<Length> = { value: inches(1, 8), source: practice };

/**
 * A cause is taken instead of the next likelier one only where that saves more than this.
 * @unit minutes
 */
export const LESS_LIKELY: Sourced<number> = { value: 60, source: practice };

/** A sum of changes of pieces that is asked for, before it is known in which ways they change. */
export interface Asked {
  readonly terms: readonly { readonly piece: string; readonly change: Change; readonly factor: number }[];
  readonly least: number;
  readonly most: number;
}

/** One explanation, before it is known in which ways pieces change. */
export interface Explaining {
  readonly cause: string;
  readonly asked: readonly Asked[];
  /** Minutes of what is sewn in besides. */
  readonly minutes: number;
}

type Reckoned = Exclude<Want, { readonly kind: 'add' }>;
type Longer = Extract<Want, { readonly kind: 'length' }>;

/** Bounds of a sum, in mm. */
function bounds(want: Reckoned, amount: Length | undefined): Pick<Asked, 'least' | 'most'> {
  const near = toMm(AS_GOOD_AS.value);
  const up = want.by > 0;
  if (want.bound === 'some') return up ? { least: near, most: Infinity } : { least: -Infinity, most: -near };
  const by = want.by * toMm(amount ?? (0 as Length));
  if (want.bound === 'exact') return { least: by - near, most: by + near };
  return up ? { least: by, most: Infinity } : { least: -Infinity, most: by };
}

/** Pieces that lie over one another or one below the other: sewn to each other across, or as layers. */
function together(garment: Garment, pieces: readonly Piece[]): readonly (readonly Piece[])[] {
  const edges = new Map<string, Placed>(
    pieces.flatMap((piece) =>
      placed(piece.outline).map((one) => [`${piece.id}.${one.edge.name}`, one] as const),
    ),
  );
  const group = new Map(pieces.map(({ id }) => [id, id]));
  const across = (ref: Parameters<typeof edgeName>[0]): boolean => {
    const edge = edges.get(edgeName(ref));
    // Shoulders lie across too, but there one piece goes on behind the other.
    return edge !== undefined && !upright(edge) && !isCalled(ref.edge, 'shoulder');
  };
  const join = (a: string, b: string): void => {
    const [from, to] = [group.get(a), group.get(b)];
    if (from === undefined || to === undefined || from === to) return;
    for (const [piece, its] of group) if (its === to) group.set(piece, from);
  };
  for (const seam of garment.joins) {
    const layers = seam.seam === 'turned' || seam.seam === 'ends';
    for (const [a, b] of facing(seam)) if (layers || (across(a) && across(b))) join(a.piece, b.piece);
    if (seam.cover) for (const ref of seam.to) join(ref.piece, seam.cover.piece);
  }
  const groups = new Map<string, Piece[]>();
  for (const piece of pieces) {
    const its = group.get(piece.id) ?? piece.id;
    groups.set(its, [...(groups.get(its) ?? []), piece]);
  }
  return [...groups.values()];
}

/** Of layers, the one that is sewn to the rest of the garment; the others follow it. */
function outermost(garment: Garment, layers: readonly Piece[]): Piece | undefined {
  const ids = new Set(layers.map(({ id }) => id));
  const sewn = layers.find(({ id }) =>
    garment.joins.some((join) => {
      const all = [...join.this, ...join.to];
      return all.some((ref) => ref.piece === id) && all.some((ref) => !ids.has(ref.piece));
    }),
  );
  return sewn ?? layers[0];
}

/** What goes round both sides of the body in one piece gives half of its change to each side. */
const ROUND_BOTH: readonly Role[] = [
  'collar',
  'waistband',
  'skirt',
  'centre-front',
  'centre-back',
  'frill',
  'other',
];
const halved = ({ piece, role }: Taking): number =>
  piece.cut === 'one' && ROUND_BOTH.includes(role) ? 0.5 : 1;

/** Everything that is needed to say what a want asks of which pieces. */
export interface Asking {
  readonly garment: Garment;
  readonly known: (piece: string) => Taking | undefined;
  readonly roles: ReadonlyMap<string, Role>;
  /** All lengths that anything seen may ask for. */
  readonly lengths: readonly Longer[];
}

/** Pieces that a want is about. A leg in one piece is its lower leg too. */
export function meant(
  { garment, roles }: Pick<Asking, 'garment' | 'roles'>,
  of: readonly Role[],
): readonly Piece[] {
  const having = (wanted: readonly Role[]): readonly Piece[] =>
    garment.pieces.filter(({ id }) => wanted.includes(roles.get(id) ?? 'other'));
  const found = having(of);
  return found.length === 0 && of.includes('lower-leg') ? having(['leg']) : found;
}

function widths(
  asking: Asking,
  want: Extract<Want, { kind: 'width' }>,
  amount: Length | undefined,
): readonly Asked[] {
  const has = meant(asking, want.of).filter(({ id }) => asking.known(id)?.levels.has(want.level) === true);
  const terms = together(asking.garment, has).flatMap((layers) => {
    const piece = outermost(asking.garment, layers);
    const one = piece && asking.known(piece.id);
    return one
      ? [{ piece: one.piece.id, change: { kind: 'width' as const, level: want.level }, factor: halved(one) }]
      : [];
  });
  return terms.length > 0 ? [{ terms, ...bounds(want, amount) }] : [];
}

function lengths(asking: Asking, want: Longer, amount: Length | undefined): readonly Asked[] {
  const pieces = meant(asking, want.of);
  return together(asking.garment, pieces).flatMap((column) => {
    const terms = column.flatMap(({ id }) => {
      const one = asking.known(id);
      if (!one) return [];
      const about = asking.lengths.filter((other) =>
        meant(asking, other.of).some((piece) => piece.id === id),
      );
      const inside = new Set(apart(one, [want]).flat());
      return apart(one, about).flatMap((levels) => {
        if (!levels.every((level) => inside.has(level))) return [];
        const level = longest(one, levels);
        return level ? [{ piece: id, change: { kind: 'length' as const, level }, factor: 1 }] : [];
      });
    });
    return terms.length > 0 ? [{ terms, ...bounds(want, amount) }] : [];
  });
}

/** Of neighbouring levels, the one with the longest way to the next. */
function longest({ levels }: Taking, some: readonly Change['level'][]): Change['level'] | undefined {
  const order = [...levels];
  const long = (level: Change['level']): number => {
    const i = order.findIndex(([one]) => one === level);
    return (order[i + 1]?.[1] ?? 0) - (order[i]?.[1] ?? 0);
  };
  return [...some].sort((a, b) => long(b) - long(a))[0];
}

/** Why a cause cannot be reckoned with. */
export type Unfit = 'nothing to change' | 'no amount' | 'no piece';

/** What a cause asks of the pieces, or why it cannot be reckoned with. */
export function explaining(asking: Asking, cause: Cause, seen: Observation): Explaining | Unfit {
  if (cause.wants.length === 0) return 'nothing to change';
  let minutes = 0;
  const asked: Asked[] = [];
  for (const want of cause.wants) {
    if (want.kind === 'add') {
      const on = meant(asking, want.on)[0];
      if (!on) return 'no piece';
      const times = on.cut === 'one' ? 1 : 2;
      minutes += times * want.steps.reduce((sum, step) => sum + step.minutes, 0);
      continue;
    }
    if (want.bound !== 'some' && seen.amount === undefined) return 'no amount';
    const found =
      want.kind === 'width' ? widths(asking, want, seen.amount) : lengths(asking, want, seen.amount);
    if (found.length === 0) return 'no piece';
    asked.push(...found);
  }
  return { cause: cause.id, asked, minutes };
}

/** The causes that are left of an entry: the one that is sure, or those that are not ruled out. */
export const causesLeft = (entry: Entry, seen: Observation): readonly Cause[] =>
  entry.causes.filter(({ id }) => (seen.sure === undefined ? !seen.out.includes(id) : id === seen.sure));
