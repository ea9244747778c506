import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { type Length, nm } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Chain, Join, Piece, Work } from '../outfit.ts';
import { neckStay } from './body-joins.ts';
import { type Centre, type PanelSeam, panelOutlines } from './body-outlines.ts';
import { drawHalf, type HalfBody } from './half-body.ts';
import { asked, perhaps, usually } from './length-field.ts';
import { joinOf, pieceOf } from './parts.ts';
import { edgeOf } from './sleeve-made.ts';

/** What is asked of a body with panel seams besides what is asked of any: it follows the body down to the waist. */
export const PANELLED = {
  side: asked('Side seam', '8 1/2', '215', 'Along the seam, from the armhole to the hem.'),
  waist: perhaps(
    'Half width at the waist',
    'Half of what it is narrower goes at the panel seam. Left empty, the sides run straight.',
  ),
  panel: usually('Centre to panel seam', '4 1/4', '108', 'At the chest.'),
  below: usually('Length below the waist', '0', '0', 'How much of the side seam lies below the waist.'),
} as const;

/** Where a panel seam starts. */
export const PANEL_FROM = {
  from: {
    kind: 'choice',
    label: 'Panel seam starts at',
    options: [
      { value: 'shoulder', label: 'the shoulder' },
      { value: 'armhole', label: 'the armhole' },
    ],
    start: 'shoulder',
    usual: true,
  },
} as const;

/** Where along the shoulder a panel seam starts, from the neck end. */
const ALONG = 0.45;

/** Half a front or back in two pieces, and its panel seam. */
export interface Panelled {
  readonly pieces: readonly [centre: Piece, side: Piece];
  readonly works: readonly Work[];
  readonly seam: Join;
  readonly shoulder: Chain;
  readonly sides: Chain;
}

/** Draws half a front or back in a centre and a side piece. */
export function panelled(told: {
  readonly body: HalfBody;
  readonly panel: Length;
  readonly from: PanelSeam['from'];
  readonly neck: 'front' | 'back';
  readonly centre: Centre;
  readonly cloth: string;
  /** Ids of the two pieces and of the seam. */
  readonly ids: readonly [centre: string, side: string, seam: string];
}): Result<Panelled, Refusal> {
  const { body, from, neck, centre, panel: out, cloth, ids } = told;
  const narrower = body.waist === undefined ? 0 : Math.max(0, body.chest - body.waist);
  // Half of what the waist takes in goes at the side seam, a quarter at each edge of the panel seam.
  const waist = body.waist === undefined ? undefined : nm(body.waist + narrower / 2);
  const drawn = drawHalf({ ...body, waist }, neck, centre.lap);
  if (!drawn.ok) return drawn;
  const takes = nm(narrower / 4);
  const most = from === 'armhole' ? drawn.value.narrow.x : drawn.value.corner.x;
  if (out - takes <= 0 || out + takes + drawn.value.neckIn.x >= most)
    return bad(
      refusal(
        'panel',
        'One of the two panels would have no width.',
        `Write more than nothing, and less than the half width at the ${from === 'armhole' ? 'armhole' : 'chest'}.`,
      ),
    );
  const outlines = panelOutlines(drawn.value, centre, { from, along: ALONG, out, takes });
  const usual = { cloth, allowance: body.allowance };
  const middle = pieceOf({
    ...usual,
    id: ids[0],
    name: `Centre ${neck}`,
    cut: centre.name === 'fold' ? 'fold' : 'pair',
    outline: outlines.centre,
  });
  const flank = pieceOf({ ...usual, id: ids[1], name: `Side ${neck}`, cut: 'pair', outline: outlines.side });
  return good({
    pieces: [middle, flank],
    works: [neckStay(middle)],
    seam: joinOf({
      id: ids[2],
      name: neck === 'front' ? 'Front panel seam' : 'Back panel seam',
      this: [edgeOf(ids[0], 'panel')],
      to: [edgeOf(ids[1], 'panel')],
      depth: body.allowance,
      finish: 'overlock',
    }),
    shoulder:
      from === 'shoulder'
        ? [edgeOf(ids[0], 'shoulder'), edgeOf(ids[1], 'shoulder')]
        : [edgeOf(ids[0], 'shoulder')],
    sides: [edgeOf(ids[1], 'side')],
  });
}
