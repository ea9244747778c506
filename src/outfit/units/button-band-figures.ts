import { SECOND_TURN } from '../../cloth/bands.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { type Length, longer, mm, shorter, subtract, times } from '../../length/length.ts';
import { edgeStarts } from '../../shape/flatten.ts';
import { edgeLengths } from '../../shape/measure.ts';
import type { Piece } from '../outfit.ts';
import type { EdgesPlaced, Proposal } from './unit.ts';

/** Buttons of a front stand about so far apart. */
const APART = mm(85);
/** The first button stands so far below the top, and the last so far down the opening. */
const FIRST_AT = mm(15);
const LAST_AT = 5 / 6;

/** The edge beyond the centre front, across the top of the band. */
export const lapOf = (piece: Piece): Length | undefined => edgeLengths(piece.outline).get('lap');

/** Upper and lower end of an edge, counted down the piece. */
function levels(piece: Piece, edge: string): readonly [top: Length, bottom: Length] | undefined {
  const start = edgeStarts(piece.outline).get(edge)?.y;
  const end = piece.outline.edges.find((one) => one.name === edge)?.segments.at(-1)?.to.y;
  if (start === undefined || end === undefined) return undefined;
  return shorter(start, end) ? [start, end] : [end, start];
}

const say = (value: Length | number, because: string, source: Proposal['source'] = practice): Proposal => ({
  value,
  because,
  source,
});

/** Figures of a button band from the opening that it is folded on. */
export function bandFigures(
  at: EdgesPlaced | undefined,
): Readonly<Partial<Record<'width' | 'buttons' | 'first' | 'last' | 'held', Proposal>>> {
  const [piece] = at?.pieces ?? [];
  const edge = at?.chain[0]?.edge;
  if (!at || !piece || edge === undefined) return {};
  const { length } = at;
  const last = times(length, LAST_AT);
  const lap = lapOf(piece);
  const opening = levels(piece, edge);
  const armhole = levels(piece, 'armhole');
  const held = opening && armhole && subtract(armhole[1], opening[0]);
  const room = subtract(last, FIRST_AT);
  return {
    width:
      lap === undefined || lap <= 0
        ? say(SECOND_TURN.value, 'A usual band', SECOND_TURN.source)
        : say(times(lap, 2), 'Twice the lap, so that the centre front lies in its middle', geometry),
    ...(room > 0
      ? {
          buttons: say(Math.max(2, Math.round(room / APART) + 1), `About ${inBothRules(APART)} apart`),
          first: say(FIRST_AT, 'Close under the neck, clear of its seam'),
          last: say(last, 'Five sixths down the opening, clear of the hem'),
        }
      : {}),
    ...(held !== undefined && longer(held, FIRST_AT) && shorter(held, last)
      ? { held: say(held, 'Level with the end of the armhole, where a front pulls most') }
      : {}),
  };
}
