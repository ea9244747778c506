import { refusal } from '../../cloth/refusal.ts';
import {
  LEAST_STRETCH,
  MOST_ALONG,
  MOST_ROUND,
  reduced,
  reductions,
  SHARE_ROUND,
} from '../../cloth/stretch.ts';
import { inches, type Length, nm, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, line, place, sheet, words } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { inUnit } from './leg-drawing.ts';
import { percent } from './leg-figures.ts';

/** A gauge longer than this is a slip of the finger. */
const MOST_GAUGE = inches(120);

/** A strip of cloth at rest and drawn out, both from the same pin. */
function gauged(name: string, rest: Length, stretched: Length, top: Length, unit: Length): Drawn[] {
  const high = nm(unit * 2);
  const [second, under] = [nm(top + unit * 3), nm(top + unit * 5)];
  return [
    words(name, place(zero, nm(top - unit / 2)), unit),
    box('body', zero, top, rest, high),
    box('body', zero, second, stretched, high),
    line('mark', place(rest, top), place(rest, under)),
    line('mark', place(stretched, second), place(stretched, under)),
    line('grain', place(zero, nm(second + unit)), place(stretched, nm(second + unit))),
  ];
}

/** How much a cloth stretches both ways, and how much smaller a piece is cut for it. */
export const stretchOfACloth = reckoning({
  id: 'stretch-of-a-cloth',
  name: 'Stretch of a cloth',
  tells: 'How much a cloth gives round and along, and how much smaller to cut for it.',
  group: 'Stretch legs',
  fields: {
    rest: {
      kind: 'length',
      label: 'Marked on the cloth',
      means: 'Between two pins, the cloth lying still; the same both ways.',
      start: { in: '4', mm: '100' },
    },
    round: {
      kind: 'length',
      label: 'Drawn out, round',
      means: 'The way that goes round the body, as far as it goes without force.',
      start: { in: '7', mm: '180' },
    },
    along: {
      kind: 'length',
      label: 'Drawn out, along',
      means: 'The way that goes along the body; as marked if it does not give.',
      start: { in: '5 1/2', mm: '140' },
    },
    girth: {
      kind: 'length',
      label: 'A girth to cut',
      means: 'Of the body, such as the thigh.',
      start: { in: '24', mm: '610' },
    },
    share: {
      kind: 'number',
      label: 'Share used, round',
      means: 'Of the stretch round, by wearing; a third and at most 20 % less if left empty.',
      unit: '%',
      start: '',
      optional: true,
    },
    shareAlong: {
      kind: 'number',
      label: 'Share used, along',
      means: 'Of the stretch along; a tenth and at most 5 % less if left empty.',
      unit: '%',
      start: '',
      optional: true,
    },
  },
  blame: { 'gauge.round': 'round', 'gauge.along': 'along', shareRound: 'share' },
  work: ({ rest, round, along, girth, share, shareAlong }, unit) => {
    const cure = 'Mark 4 in, or 100 mm, on the cloth while it lies still.';
    if (rest <= 0) return bad(refusal('rest', 'The gauge has no length.', cure));
    if (rest > MOST_GAUGE) return bad(refusal('rest', 'The gauge is too long to draw out.', cure));
    for (const [name, length] of [
      ['round', round],
      ['along', along],
    ] as const) {
      if (length > rest * 5) {
        const less = `Give at most ${inUnit(nm(rest * 5), unit)}, which is five times the gauge.`;
        return bad(refusal(name, 'No cloth stretches so far.', less));
      }
    }
    if (girth <= 0 || girth > MOST_GAUGE) {
      const say = 'Give a girth above zero and at most 120 in, which is 3048 mm.';
      return bad(refusal('girth', 'This is not a girth of a body.', say));
    }
    const made = reductions({
      gauge: { round: { rest, stretched: round }, along: { rest, stretched: along } },
      ...(share !== undefined && { shareRound: share / 100 }),
      ...(shareAlong !== undefined && { shareAlong: shareAlong / 100 }),
    });
    if (!made.ok) return made;
    const { stretch, assumed } = made.value;
    const size = nm(Math.max(round, along) / 20);
    return good({
      figures: [
        { kind: 'words', name: 'Stretch round', words: percent(stretch.round) },
        { kind: 'words', name: 'Stretch along', words: percent(stretch.along) },
        { kind: 'words', name: 'Cut smaller, round', words: percent(made.value.round) },
        { kind: 'words', name: 'Cut smaller, along', words: percent(made.value.along) },
        { kind: 'length', name: 'That girth, cut', length: reduced(girth, made.value.round) },
      ],
      strips: [],
      drawing: sheet('The gauge at rest and drawn out', [
        ...gauged('round', rest, round, zero, size),
        ...gauged('along', rest, along, nm(size * 7), size),
      ]),
      sheets: [],
      advice: [],
      assumed: [...assumed, ...(along === rest ? ['The cloth does not give along the body.'] : [])],
      sources: [SHARE_ROUND.source, LEAST_STRETCH.source, MOST_ROUND.source, MOST_ALONG.source],
    });
  },
});
