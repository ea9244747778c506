import { crossTucks } from '../cloth/cross-tucks.ts';
import { openMap, type TuckFamily } from '../cloth/fold-map.ts';
import { openLines, openOutline } from '../cloth/open-outline.ts';
import { type Refusal, refusal } from '../cloth/refusal.ts';
import type { MarkedLine } from '../cloth/tuck-lines.ts';
import { nm } from '../length/length.ts';
import { bad, good, type Result } from '../length/result.ts';
import type { Garment, Piece, TuckFamily as TucksOfWork } from '../outfit/outfit.ts';
import { tuckDatum } from '../outfit/tuck-datum.ts';
import { clipToPieces } from '../shape/clip.ts';
import type { Polygon } from '../shape/flatten.ts';
import { pointAcross } from './parallel-edge.ts';

/** The tucks of a piece, in the order in which they are sewn, as they lie on it when done. */
export const familiesOn = (garment: Garment, piece: Piece): readonly TuckFamily[] =>
  garment.works.flatMap((work): TuckFamily[] => {
    if (work.on !== piece.id) return [];
    if (work.kind === 'tucks') return [familyOn(piece, work.family, work.from)];
    if (work.kind === 'crossed-tucks') return work.families.map((one) => familyOn(piece, one, work.from));
    return [];
  });

function familyOn(piece: Piece, family: TucksOfWork, from: string): TuckFamily {
  const { corner, degrees } = tuckDatum(piece, family.angle, from);
  return {
    datum: corner,
    across: degrees,
    tucks: family.depths.map((depth, i) => ({ at: nm(family.first + i * family.spacing), depth })),
    pressed: family.pressed,
  };
}

/** A piece spread flat again: what to cut, and every line to stitch and fold by. */
export interface Opened {
  readonly cut: Polygon;
  /**
   * The seam line, that round the most cloth first. More than one line where a point of it ends inside a tuck: the
   * cloth there holds by the allowance. None where it cannot be opened.
   */
  readonly seams: readonly Polygon[];
  readonly lines: readonly MarkedLine[];
}

/**
 * Opens a piece through its tucks: its cutting line, its seam line and the lines of its tucks, true again when the tucks are sewn.
 *
 * Refused: what `openOutline` and `crossTucks` refuse for the cutting line; more than two groups of tucks on one piece.
 */
export function openedPiece(
  cut: Polygon,
  seam: Polygon,
  families: readonly TuckFamily[],
): Result<Opened, Refusal> {
  const [first, second, ...more] = families;
  if (!first || more.length > 0) {
    return bad(
      refusal(
        'tucks',
        'There are more than two groups of tucks on this piece.',
        'Open it on paper: fold the tucks in paper and cut the edge through them.',
      ),
    );
  }
  const within = openLines(seam, families);
  const seams = within.ok ? within.value : [];
  if (second) {
    const crossed = crossTucks({ first, second, outline: cut });
    if (!crossed.ok) return crossed;
    return good({
      cut: crossed.value.cut,
      seams,
      lines: [...crossed.value.first, ...crossed.value.second],
    });
  }
  const open = openOutline(cut, families);
  if (!open.ok) return open;
  const map = openMap(first);
  if (!map.ok) return map;
  const lines = map.value.marks.flatMap((mark, tuck) =>
    (
      [
        ['first stitching', mark.firstStitching],
        ['fold', mark.fold],
        ['second stitching', mark.secondStitching],
      ] as const
    ).map(([name, away]): MarkedLine => {
      const through = pointAcross(first.datum, first.across, away);
      const parts = clipToPieces(open.value, { through, angle: first.across + 90 });
      return { tuck, line: name, runs: parts.map(({ from, to }) => [from, to]) };
    }),
  );
  return good({ cut: open.value, seams, lines });
}
