import { type Advice, advise } from '../../cloth/advice.ts';
import { latticeBeads } from '../../cloth/beads.ts';
import { buttonholeLength } from '../../cloth/buttonhole.ts';
import { fastenings } from '../../cloth/fastenings.ts';
import { type LatticeMade, lattice } from '../../cloth/lattice.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { tucks } from '../../cloth/tucks.ts';
import { add, inches, type Length, mm, nm, times, zero } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import type { Chain, EdgeRef, Piece, TuckFamily, Work } from '../../outfit/outfit.ts';
import { directionOf } from '../../shape/clip.ts';
import { edgeStarts, flattenOutline, type Polygon, pointOf } from '../../shape/flatten.ts';
import { boundingBox, edgeLengths } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';
import type { MarkSet } from '../card-types.ts';
import { lower } from '../expand/made.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Marks with what a maker had better know of them. */
export interface MarksFound {
  readonly sets: readonly MarkSet[];
  readonly advice: readonly Advice[];
}

type WorkOf<K extends Work['kind']> = Extract<Work, { kind: K }>;

/** Where tucks are measured from, and which way they follow each other. */
export interface TuckDatum {
  readonly corner: Point;
  /** Unit vector across the tucks, into the piece. */
  readonly across: { readonly x: number; readonly y: number };
  /** In words: `the opening edge`, or the end of an edge where the tucks run aslant to it. */
  readonly say: string;
}

/** The end of the edge `from` that most of the piece lies beyond, measured square to the tucks. */
export function tuckDatum(piece: Piece, angle: number, from: string): TuckDatum {
  const box = boundingBox(flattenOutline(piece.outline));
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const start = edgeStarts(piece.outline).get(from) ?? piece.outline.start;
  const end = piece.outline.edges.find((edge) => edge.name === from)?.segments.at(-1)?.to ?? start;
  const square = directionOf(angle);
  const beyond = (corner: Point, way: number): number =>
    way * ((middle.x - corner.x) * square.x + (middle.y - corner.y) * square.y);
  let best = { corner: start, way: 1 };
  for (const corner of [start, end]) {
    for (const way of [1, -1])
      if (beyond(corner, way) > beyond(best.corner, best.way) + 1) best = { corner, way };
  }
  const long = Math.hypot(end.x - start.x, end.y - start.y) || 1;
  const lean = Math.abs(((end.x - start.x) * square.x + (end.y - start.y) * square.y) / long);
  const edge = `the ${from.replaceAll('-', ' ')} edge`;
  const upright = Math.abs(end.y - start.y) > Math.abs(end.x - start.x);
  const other = best.corner === start ? end : start;
  const which = upright
    ? best.corner.y < other.y
      ? 'upper'
      : 'lower'
    : best.corner.x < other.x
      ? 'left'
      : 'right';
  return {
    corner: best.corner,
    across: { x: best.way * square.x, y: best.way * square.y },
    say: lean < 0.3 ? edge : `the ${which} end of ${edge}, square to the tucks`,
  };
}

/** Fold lines of tucks on the flat cloth, from the edge that they are measured from. */
export function tuckMarks(
  on: CardSubject,
  families: readonly TuckFamily[],
  from: string,
): Result<MarksFound, Refusal> {
  const sets: MarkSet[] = [];
  const advice = new Map<string, Advice>();
  for (const side of sidesOf(on.step)) {
    for (const [f, family] of families.entries()) {
      const made = tucks({
        depth: family.depths,
        spacing: family.spacing,
        first: family.first,
        pressed: family.pressed,
      });
      if (!made.ok) return made;
      for (const a of made.value.advice) advice.set(a.say, a);
      const last = made.value.tucks.at(-1);
      const direction = families.length > 1 ? (f === 0 ? 'first direction, ' : 'second direction, ') : '';
      const halves = on.piece?.cut === 'fold' ? ', on both sides' : '';
      sets.push({
        name: onSide(side, on.piece, `${direction}tuck folds${halves}`),
        from: on.piece ? tuckDatum(on.piece, family.angle, from).say : from,
        span: add(last?.secondStitching ?? zero, family.spacing),
        marks: made.value.tucks.map((tuck, i) => ({
          item: item(side, `${f + 1}-${i + 1}`),
          at: tuck.fold,
          name: `fold ${i + 1}`,
        })),
      });
    }
  }
  return good({ sets, advice: [...advice.values()] });
}

/** Tucks of a work, in the direction or directions that this step marks. */
export function tuckMarksOf(
  on: CardSubject,
  work: WorkOf<'tucks' | 'crossed-tucks'>,
): Result<MarksFound, Refusal> {
  if (work.kind === 'tucks') return tuckMarks(on, [work.family], work.from);
  const again = on.step.action === 'mark-again';
  const made = tuckMarks(on, again ? work.families.slice(1) : work.families, work.from);
  if (!made.ok || again) return made;
  const [a, b] = work.families;
  const aslant = Math.abs(Math.abs(a.angle - b.angle) - 90) > 0.01;
  if (!aslant) return made;
  const say =
    'These directions cross aslant: the second lines are straight only after the first tucks are pressed, so mark them then.';
  return good({ ...made.value, advice: [...made.value.advice, advise(say, practice)] });
}

/** Length of the run that an edge is sewn to: the other chain of its join, on one side. */
export function placeOf(
  on: CardSubject,
  piece: string,
  edge: string,
): { readonly name: string; readonly length: Length } | undefined {
  const is = (ref: EdgeRef) => ref.piece === piece && ref.edge === edge;
  for (const join of on.garment.joins) {
    const caught = join.catches.find((c) => is(c.trim));
    const chain = caught
      ? join[caught.basteTo]
      : join.this.some(is)
        ? join.to
        : join.to.some(is)
          ? join.this
          : undefined;
    if (chain) return { name: lower(join.name), length: chainLength(on, chain) };
  }
  return undefined;
}

/** Length of a chain along the seam line. */
export function chainLength(on: CardSubject, chain: Chain): Length {
  let length = zero;
  for (const ref of chain) {
    const piece = on.looked.pieces.get(ref.piece);
    if (!piece) continue;
    const one = edgeLengths(piece.outline).get(ref.edge) ?? zero;
    const overFold =
      on.looked.beside.get(`${ref.piece}.${ref.edge}`)?.includes('fold') && piece.cut === 'fold';
    length = add(length, overFold ? times(one, 2) : one);
  }
  return length;
}

/** Quarter or eighth marks on a gathered edge and on its place. */
export function gatherMarks(on: CardSubject, work: WorkOf<'gather'>): MarksFound {
  const { piece } = on;
  const chain: Chain = [{ piece: work.on, edge: work.edge, other: false }];
  const strip = chainLength(on, chain);
  const place = placeOf(on, work.on, work.edge);
  const parts = work.divide;
  const word = parts === 4 ? 'quarter' : 'eighth';
  const inner = Array.from({ length: parts - 1 }, (_, i) => i + 1);
  const set = (side: string, where: string, name: string, from: string, length: Length): MarkSet => ({
    name: onSide(side, piece, name),
    from,
    span: length,
    marks: inner.map((k) => ({
      item: item(side, `${where}-${k}`),
      at: nm((length * k) / parts),
      name: `${word} ${k}`,
    })),
  });
  const sets = sidesOf(on.step).flatMap((side) => [
    set(side, 'strip', `${lower(work.edge.replaceAll('-', ' '))} edge`, 'its seam line at one end', strip),
    ...(place ? [set(side, 'place', `its place in the ${place.name}`, 'where it begins', place.length)] : []),
  ]);
  const fullness = place && place.length > 0 ? strip / place.length : undefined;
  const advice =
    fullness === undefined
      ? []
      : [
          advise(
            `The edge is ${fullness.toFixed(2).replace(/\.?0+$/, '')} times as long as its place: match the marks first, then draw up between them`,
            practice,
          ),
        ];
  return { sets, advice };
}

/** Places of buttonholes, with their length. */
export function holes(on: CardSubject, work: WorkOf<'buttonholes'>) {
  const hole = buttonholeLength({ rule: 'flat', ...work.button });
  if (!hole.ok) return hole;
  const folded = on.garment.works.find(
    (w) => w.kind === 'folded-band' && w.on === work.on && w.edge === work.along,
  );
  // Without a folded band nothing says how wide the lap is; then the hole is not held to any.
  const half = folded?.kind === 'folded-band' ? times(folded.secondTurn, 1 / 2) : mm(1000);
  const made = fastenings({
    first: work.first,
    last: work.last,
    count: work.count,
    ...(work.held === undefined ? {} : { held: work.held }),
    direction: work.direction === 'along' ? 'vertical' : 'horizontal',
    hole: hole.value.length,
    diameter: work.button.diameter,
    outer: half,
    inner: half,
  });
  return made.ok ? good({ hole: hole.value, made: made.value }) : made;
}

/** Marks of buttonholes: where each begins, from the datum. */
export function holeMarks(on: CardSubject, work: WorkOf<'buttonholes'>): Result<MarksFound, Refusal> {
  const found = holes(on, work);
  if (!found.ok) return found;
  const { made } = found.value;
  const sets = sidesOf(on.step).map(
    (side): MarkSet => ({
      name: onSide(
        side,
        on.piece,
        work.direction === 'along' ? 'upper ends of the holes' : 'levels of the holes',
      ),
      from: work.from,
      span: add(work.last, inches(2)),
      marks: made.fastenings.map((fastening, i) => ({
        item: item(side, i + 1),
        at: fastening.hole.from.along,
        name: i === made.spacing.held ? `hole ${i + 1}, held at its level` : `hole ${i + 1}`,
      })),
    }),
  );
  return good({ sets, advice: made.advice });
}

/** Common practice, no source: beads stop this far from the seam line, so that the foot can pass. */
export const FOOT_ROOM: Length = mm(6);

/** The lattice of a work on the real outline of its piece, less the room for the foot. */
export function latticeOf(piece: Piece, work: WorkOf<'lattice-beads'>): Result<LatticeMade, Refusal> {
  const outline: Polygon = flattenOutline(piece.outline);
  const box = boundingBox(outline);
  const through = pointOf((box.left + box.right) / 2, (box.top + box.bottom) / 2);
  const [a, b] = work.families;
  return lattice({
    outline,
    clear: FOOT_ROOM,
    families: [
      { angle: a.angle + 90, spacing: a.spacing, through },
      { angle: b.angle + 90, spacing: b.spacing, through },
    ],
  });
}

/** Beads along the lattice of a work. */
export function beadsOf(piece: Piece, work: WorkOf<'lattice-beads'>) {
  const made = latticeOf(piece, work);
  if (!made.ok) return made;
  const clear = work.cluster ? work.cluster.bead.length : zero;
  const beads = latticeBeads({
    lattice: made.value,
    bead: work.line.length,
    pairs: work.line.atATime === 2,
    clear,
    cluster: work.cluster?.of ?? 0,
    clusterBead: work.cluster?.bead.length ?? work.line.length,
  });
  return beads.ok ? good({ lattice: made.value, beads: beads.value }) : beads;
}

/** Distances of the lattice lines from the middle line of each family. */
export function latticeMarks(on: CardSubject, work: WorkOf<'lattice-beads'>): Result<MarksFound, Refusal> {
  if (!on.piece) return good({ sets: [], advice: [] });
  const made = latticeOf(on.piece, work);
  if (!made.ok) return made;
  const outline = flattenOutline(on.piece.outline);
  const box = boundingBox(outline);
  const reach = Math.hypot(box.right - box.left, box.bottom - box.top) / 2;
  const sets = sidesOf(on.step).flatMap((side) =>
    work.families.map((family, f): MarkSet => {
      const lines = new Set(
        made.value.lines
          .filter((line) => line.family === f)
          .map((line) => Math.abs(Math.round(offset(line.from, box, family.angle) / family.spacing))),
      );
      const steps = [...lines].filter((k) => k > 0).sort((x, y) => x - y);
      return {
        name: onSide(
          side,
          on.piece,
          `${f === 0 ? 'first' : 'second'} direction, both sides of the middle line`,
        ),
        from: 'the middle line through the centre of the piece',
        span: nm(Math.max(reach, family.spacing)),
        marks: steps.map((k) => ({
          item: item(side, `${f + 1}-${k}`),
          at: times(family.spacing, k),
          name: `line ${k} on each side`,
        })),
      };
    }),
  );
  const say = `The lines run at ${work.families.map((family) => `${Math.abs(family.angle)}° ${family.angle < 0 ? 'left' : 'right'} of upright`).join(' and ')}, and stop 6 mm short of the seam line so that the foot can pass`;
  return good({ sets, advice: [advise(say, practice)] });
}

const offset = (
  p: { x: Length; y: Length },
  box: { left: number; right: number; top: number; bottom: number },
  angle: number,
): number => {
  const radians = (angle * Math.PI) / 180;
  return (
    (p.x - (box.left + box.right) / 2) * Math.cos(radians) +
    (p.y - (box.top + box.bottom) / 2) * Math.sin(radians)
  );
};
