import { type Advice, advise } from '../../cloth/advice.ts';
import type { TuckFamily as Opened } from '../../cloth/fold-map.ts';
import { openOutline } from '../../cloth/open-outline.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { type Length, longer, nm } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { directionOf } from '../../shape/clip.ts';
import { flattenOutline } from '../../shape/flatten.ts';
import { FOLD } from '../chains.ts';
import type { Garment, Piece, TuckFamily } from '../outfit.ts';
import { tuckDatum } from '../tuck-datum.ts';
import type { EdgesPlaced } from './unit.ts';

/** How deep each tuck is. */
export const TUCK_DEPTH = {
  kind: 'length',
  label: 'Depth of a tuck',
  means: 'From its stitching to its fold; it takes twice as much cloth.',
  start: { in: '1/8', mm: '3' },
} as const;

/** The piece that is tucked, and the edge that its tucks are measured from. */
export const TUCK_PLACES = {
  on: {
    kind: 'piece',
    label: 'the piece that is tucked',
    like: ['centre-front', 'front', 'yoke', 'bib', 'sleeve', 'back'],
  },
  from: {
    kind: 'edges',
    one: true,
    optional: true,
    label: 'the edge they are measured from',
    means: 'Left out: the fold, else the opening, else the first edge of the piece.',
    like: ['opening', 'panel', 'upper', 'waist'],
  },
} as const;

/** The edge that the tucks of a piece are measured from; refused where an edge of another piece was chosen. */
export function edgeFrom(piece: Piece, chosen: EdgesPlaced | undefined): Result<string, Refusal> {
  const ref = chosen?.chain[0];
  const names = piece.outline.edges.map((edge) => edge.name);
  if (ref && ref.piece !== piece.id) {
    const cure = `Choose an edge of the ${piece.name.toLowerCase()}.`;
    return bad(refusal('at.from', 'This edge is on another piece.', cure));
  }
  const usual = [FOLD, 'opening'].find((name) => names.includes(name)) ?? names[0] ?? '';
  return good(ref?.edge ?? usual);
}

/** How far a piece reaches from the datum of its tucks, across them. */
export function reachOf(piece: Piece, angle: number, from: string): Length {
  const { corner, degrees } = tuckDatum(piece, angle, from);
  const way = directionOf(degrees);
  return nm(
    Math.max(
      ...flattenOutline(piece.outline).map(({ x, y }) => (x - corner.x) * way.x + (y - corner.y) * way.y),
    ),
  );
}

/** A family of the description as the arithmetic of folds takes it. */
export function openedFamily(piece: Piece, family: TuckFamily, from: string): Opened {
  const { corner, degrees } = tuckDatum(piece, family.angle, from);
  const tucks = family.depths.map((depth, i) => ({ at: nm(family.first + i * family.spacing), depth }));
  return { datum: corner, across: degrees, tucks, pressed: family.pressed };
}

/**
 * Looks whether tucks can be sewn in a piece and its outline opened for them.
 *
 * Refused: tucks that reach beyond the piece; a second group where a piece has one. Where an edge runs so across the
 * tucks that no outline can be opened for them, the piece is to be cut out of tucked cloth: that is advised.
 * @param families each with the name of the field to blame where too many reach beyond the piece
 */
export function fits(
  garment: Garment,
  piece: Piece,
  families: readonly (readonly [TuckFamily, count: string])[],
  from: string,
): Result<readonly Advice[], Refusal> {
  const had = garment.works.find(
    (work) => work.on === piece.id && (work.kind === 'tucks' || work.kind === 'crossed-tucks'),
  );
  if (had) {
    const cure = `Change ${had.name} instead, or choose another piece.`;
    return bad(refusal('at.on', `${piece.name} is tucked already (${had.name}).`, cure));
  }
  for (const [family, count] of families) {
    const last = nm(family.first + (family.depths.length - 1) * family.spacing);
    const reach = reachOf(piece, family.angle, from);
    if (longer(last, reach)) {
      const cure = `Take fewer, or set them closer: the piece reaches ${inBothRules(reach, 'down')} from there.`;
      return bad(
        refusal(
          family.depths.length === 1 ? 'first' : count,
          `The last tuck would lie ${inBothRules(last)} from the edge, beyond the piece.`,
          cure,
        ),
      );
    }
  }
  const opened = openOutline(
    flattenOutline(piece.outline),
    families.map(([family]) => openedFamily(piece, family, from)),
  );
  return good(
    opened.ok || piece.cutAfterWork
      ? []
      : [
          advise(
            `Tuck a block of cloth first and cut the ${piece.name.toLowerCase()} out of it. ${opened.error.wrong}`,
            practice,
          ),
        ],
  );
}
