import { clothNeeded } from '../../cloth/cloth-needed.ts';
import type { ClothPiece } from '../../cloth/cloth-needed-pieces.ts';
import type { StitchType } from '../../cloth/stitches.ts';
import { type SewnSeam, threadUsed } from '../../cloth/thread-used.ts';
import { type Length, nm, zero } from '../../length/length.ts';
import { FOLD } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Cloth, Outfit, Piece } from '../../outfit/outfit.ts';
import { flattenOutline } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import { addAllowance } from '../../shape/offset.ts';
import { drawingOf } from '../card/drawing.ts';
import { readoutOf } from '../card/readout.ts';
import { subjectOf } from '../card/subject.ts';
import type { Running } from '../running-types.ts';
import type { Step } from '../step.ts';
import { prepareUndoing } from './prepare.ts';
import type { Prepared } from './prepared.ts';
import { and, BOTH, countOf, LEFT, RIGHT, type Sides, sidesNamed } from './sides.ts';
import type { Undoing } from './undoing-types.ts';

/** What has to be bought or found for doing it again. */
export interface SuppliesAgain {
  /** Of each cloth (its id): the pieces, and what to buy at its width. */
  readonly cloth: readonly {
    readonly cloth: string;
    readonly pieces: readonly string[];
    readonly length: Length;
  }[];
  /** Thread for the machine seams that are sewn again, of all colours together. */
  readonly thread: Length;
  readonly beads: readonly { readonly name: string; readonly count: number }[];
}

/** Cloth for the pieces that are cut again, thread for the seams sewn again by machine, and beads as the cards count them. */
export function suppliesAgain(outfit: Outfit, running: Running, undoing: Undoing): SuppliesAgain {
  const prepared = prepareUndoing(outfit, running);
  return {
    cloth: clothAgain(outfit, undoing),
    thread: threadAgain(prepared, undoing),
    beads: beadsAgain(prepared, undoing),
  };
}

/** The sides on which a piece is altered; both where it is not known. */
function sidesOf(undoing: Undoing, garment: string, pieces: readonly string[]): Sides {
  let sides: Sides = 0;
  for (const one of undoing.alterations)
    if (one.garment === garment && pieces.includes(one.piece)) sides = and(sides, sidesNamed(one.side));
  return sides === 0 ? BOTH : sides;
}

function clothAgain(outfit: Outfit, undoing: Undoing): SuppliesAgain['cloth'] {
  const byCloth = new Map<
    string,
    { readonly piece: Piece; readonly sides: Sides; readonly garment: string }[]
  >();
  for (const { garment: id, action, pieces } of undoing.rework.undo) {
    if (action !== 'cut-anew') continue;
    const garment = outfit.garments.find((one) => one.id === id);
    for (const piece of garment?.pieces.filter((one) => pieces.includes(one.id)) ?? []) {
      const list = byCloth.get(piece.cloth) ?? [];
      list.push({ piece, sides: sidesOf(undoing, id, [piece.id]), garment: id });
      byCloth.set(piece.cloth, list);
    }
  }
  return [...byCloth].flatMap(([id, cut]) => {
    const cloth = outfit.cloths.find((one) => one.id === id);
    if (!cloth) return [];
    const shapes = cut.map(({ piece, sides, garment }) => shapeOf(outfit, garment, piece, sides));
    return { cloth: id, pieces: cut.map(({ piece }) => piece.id), length: toBuy(cloth, shapes) };
  });
}

function toBuy(cloth: Cloth, pieces: readonly ClothPiece[]): Length {
  const laid = clothNeeded({ pieces, width: cloth.width, laid: 'single', oneWay: cloth.oneWay });
  if (laid.ok) return laid.value.buy;
  // Wider than the cloth: then it has to be pieced, and takes no less than all of them one below the other.
  const long = pieces.reduce((sum, { shape, cut }) => {
    const along = 'along' in shape ? shape.along : boundingBox(shape).bottom - boundingBox(shape).top;
    return sum + along * (cut === 'pair' ? 2 : 1);
  }, 0);
  return nm(long);
}

/** A piece as it is cut: with its allowance, or as a block with what its tucks and folds take up. */
function shapeOf(outfit: Outfit, garment: string, piece: Piece, sides: Sides): ClothPiece {
  const cut = piece.cut === 'pair' && countOf(sides) === 1 ? 'one' : piece.cut;
  const about = {
    name: piece.name,
    cut,
    ...(piece.grain === undefined ? {} : { grain: piece.grain }),
  } as const;
  const around = addAllowance(piece.outline, new Map([[FOLD, zero]]), piece.allowance);
  if (!piece.cutAfterWork && around.ok) return { ...about, shape: around.value };
  const box = boundingBox(flattenOutline(piece.outline));
  const taken = takenUp(outfit, garment, piece);
  const sidesAcross = piece.cut === 'fold' ? 1 : 2;
  return {
    ...about,
    shape: {
      across: nm(box.right - box.left + sidesAcross * piece.allowance + taken.across),
      along: nm(box.bottom - box.top + 2 * piece.allowance + taken.along),
    },
  };
}

/** Each tuck takes up twice its depth, square to its fold. */
function takenUp(
  outfit: Outfit,
  garment: string,
  piece: Piece,
): { readonly across: number; readonly along: number } {
  let [across, along] = [0, 0];
  for (const work of outfit.garments.find(({ id }) => id === garment)?.works ?? []) {
    if (work.on !== piece.id) continue;
    const families =
      work.kind === 'tucks' ? [work.family] : work.kind === 'crossed-tucks' ? work.families : [];
    for (const { depths, angle } of families) {
      const cloth = 2 * depths.reduce((sum, depth) => sum + depth, 0);
      const turned = (angle * Math.PI) / 180;
      across += cloth * Math.abs(Math.cos(turned));
      along += cloth * Math.abs(Math.sin(turned));
    }
    if (work.kind === 'folded-band') across += work.firstTurn + work.secondTurn;
  }
  return { across, along };
}

function threadAgain(prepared: Prepared, undoing: Undoing): Length {
  const opened = new Map(undoing.opened.map((one) => [one.id, one]));
  const seams: SewnSeam[] = [];
  for (const { step: id } of undoing.rework.again) {
    const step = prepared.running.steps.get(id);
    if (!step || (step.setUp.station !== 'machine' && step.setUp.station !== 'overlocker')) continue;
    const undone = undoing.rework.undo.find(
      ({ garment, of }) => garment === step.garment && of.id === step.of.id,
    );
    const open = undone && opened.get(step.of.id);
    const length = open ? open.length * undone.times : lengthOfWork(prepared, undoing, step);
    if (length > 0) seams.push({ name: step.say, type: stitchOf(step), length: nm(length) });
  }
  if (seams.length === 0) return zero;
  const used = threadUsed({ seams });
  return used.ok ? used.value.needed : zero;
}

const stitchOf = (step: Step): StitchType =>
  step.setUp.station === 'overlocker' ? 504 : step.setUp.tool.includes('zigzag') ? 304 : 301;

/** How long the stitching of a work is that runs along an edge or along tucks. */
function lengthOfWork(prepared: Prepared, undoing: Undoing, step: Step): number {
  const room = prepared.rooms.get(step.garment);
  const sub = room?.subs.get(step.of.id);
  const work = sub?.work;
  if (!room || !sub || !work) return 0;
  const sides = step.times === 2 ? countOf(sidesOf(undoing, step.garment, [work.on])) : 1;
  const mirrored = room.looked.pieces.get(work.on)?.cut === 'fold' ? 2 : 1;
  if (work.kind === 'tucks' || work.kind === 'crossed-tucks') {
    const on = subjectOf(prepared.outfit, step);
    const lines = on ? drawingOf(on).flatMap((piece) => piece.lines) : [];
    const all = lines.reduce((sum, { from, to }) => sum + Math.hypot(to.x - from.x, to.y - from.y), 0);
    // Both directions are drawn; each is stitched in a step of its own.
    return (all * sides * mirrored) / (work.kind === 'crossed-tucks' ? 2 : 1);
  }
  if (!('edge' in work)) return 0;
  const rows = work.kind === 'gather' || work.kind === 'applied-tape' ? 2 : 1;
  return room.length({ piece: work.on, edge: work.edge }) * sides * rows;
}

function beadsAgain(prepared: Prepared, undoing: Undoing): SuppliesAgain['beads'] {
  const counts = new Map<string, number>();
  for (const { step: id } of undoing.rework.again) {
    const step = prepared.running.steps.get(id);
    const on = step && subjectOf(prepared.outfit, step);
    if (on?.work?.kind !== 'lattice-beads') continue;
    const found = readoutOf(on);
    if (!found.ok || found.value.readout.kind !== 'count') continue;
    const { of, lines } = found.value.readout;
    const sides = sidesOf(undoing, on.garment.id, [on.work.on]);
    const left = sides === BOTH ? '' : sides === LEFT ? 'left/' : sides === RIGHT ? 'right/' : '';
    const count = lines
      .filter(({ item }) => !item.includes('/') || item.startsWith(left))
      .reduce((sum, { target }) => sum + target, 0);
    counts.set(lower(of), (counts.get(lower(of)) ?? 0) + count);
  }
  return [...counts].map(([name, count]) => ({ name, count }));
}
