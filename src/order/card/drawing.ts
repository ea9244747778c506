import type { Piece, TuckFamily } from '../../outfit/outfit.ts';
import { holesOf } from '../../outfit/piece-holes.ts';
import { latticeOf } from '../../outfit/piece-lattice.ts';
import { tuckDatum } from '../../outfit/tuck-datum.ts';
import { clipToPieces } from '../../shape/clip.ts';
import { edgeStarts, flattenOutline, pointOf } from '../../shape/flatten.ts';
import { boundingBox } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';
import type { DrawnPiece } from '../card-types.ts';
import type { CardSubject } from './subject.ts';

/** Most pieces that a small screen shows with profit. */
const MOST = 4;

/** The pieces of a step with the edges in question, from their outlines; half pieces are mirrored. */
export function drawingOf(on: CardSubject): readonly DrawnPiece[] {
  const { step, looked } = on;
  const named = [...new Set(step.edges.map((edge) => edge.split('.')[0] ?? ''))];
  const ids = (named.length > 0 ? named : [...step.pieces]).slice(0, MOST);
  return ids.flatMap((id) => {
    const piece = looked.pieces.get(id);
    if (!piece) return [];
    return {
      name: piece.name,
      outline: piece.outline,
      mirrored: piece.cut === 'fold',
      picked: step.edges.filter((edge) => edge.startsWith(`${id}.`)).map((edge) => edge.slice(id.length + 1)),
      lines: linesOn(on, piece),
    };
  });
}

type Lines = DrawnPiece['lines'];

/** Tucks, lattice and holes of the step's work, as they lie on the finished piece. */
function linesOn(on: CardSubject, piece: Piece): Lines {
  const { work } = on;
  if (!work || work.on !== piece.id) return [];
  switch (work.kind) {
    case 'tucks':
      return tuckLines(piece, work.family, work.from);
    case 'crossed-tucks':
      return work.families.flatMap((family) => tuckLines(piece, family, work.from));
    case 'lattice-beads': {
      const made = latticeOf(piece, work);
      return made.ok ? made.value.lines.map(({ from, to }) => ({ from, to, kind: 'bead' as const })) : [];
    }
    case 'buttonholes': {
      const found = holesOf(on.garment, work);
      return found.ok
        ? found.value.made.fastenings.flatMap((f) => holeLine(piece, work.along, f.hole.from, f.hole.to))
        : [];
    }
    default:
      return [];
  }
}

/** Stitching lines of tucks across the piece, from the edge that they are measured from. */
function tuckLines(piece: Piece, family: TuckFamily, from: string): Lines {
  const outline = flattenOutline(piece.outline);
  const { corner, across } = tuckDatum(piece, family.angle, from);
  return family.depths.flatMap((_, i) => {
    const away = family.first + i * family.spacing;
    const through = pointOf(corner.x + across.x * away, corner.y + across.y * away);
    return clipToPieces(outline, { through, angle: family.angle + 90 }).map((part) => ({
      from: part.from,
      to: part.to,
      kind: 'fold' as const,
    }));
  });
}

/** A hole beside the edge along which the row runs, drawn a little inside it. */
function holeLine(
  piece: Piece,
  along: string,
  from: { along: number; across: number },
  to: { along: number; across: number },
): Lines {
  const start = edgeStarts(piece.outline).get(along);
  const end = piece.outline.edges.find((edge) => edge.name === along)?.segments.at(-1)?.to;
  if (!start || !end) return [];
  const box = boundingBox(flattenOutline(piece.outline));
  const down = end.y >= start.y;
  const top = down ? start : end;
  const bottom = down ? end : start;
  const long = Math.hypot(bottom.x - top.x, bottom.y - top.y) || 1;
  const way = { x: (bottom.x - top.x) / long, y: (bottom.y - top.y) / long };
  const side = (box.left + box.right) / 2 > (top.x + bottom.x) / 2 ? 1 : -1;
  const inside = (box.right - box.left) * 0.06;
  const at = (p: { along: number; across: number }): Point =>
    pointOf(top.x + way.x * p.along + side * (inside - p.across) * Math.abs(way.y), top.y + way.y * p.along);
  return [{ from: at(from), to: at(to), kind: 'hole' }];
}
