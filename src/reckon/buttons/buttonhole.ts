import { buttonholeLength, type HoleLength, type HoleRule } from '../../cloth/buttonhole.ts';
import { linesOf } from '../../cloth/covered-button.ts';
import { lapFor } from '../../cloth/fastenings.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { type Length, longest, mm, nm, times, zero } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { arc, box, place, sheet } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { reckoning } from '../reckoning.ts';
import { slot } from './slot-drawing.ts';

interface Button {
  readonly rule: HoleRule['rule'];
  readonly diameter: Length;
  readonly thickness: Length;
  readonly round: Length | undefined;
}

function holeOf({ rule, diameter, thickness, round }: Button): Result<HoleLength, Refusal> {
  if (rule !== 'tape') return buttonholeLength({ rule, diameter, thickness });
  if (round === undefined) {
    const cure = 'Lay a tape once round the button and give its length.';
    return bad(refusal('round', 'The way round the button is not given.', cure));
  }
  return buttonholeLength({ rule, round });
}

/** The button from above and from its edge, with its hole below. */
function drawn(diameter: Length, thickness: Length, hole: Length): Drawn[] {
  const r = times(diameter, 1 / 2);
  const eye = times(diameter, 0.05);
  const eyes = [-1, 1].flatMap((x) => [-1, 1].map((y) => place(nm(x * r * 0.25), nm(y * r * 0.25))));
  const high = longest(thickness, mm(0.5));
  const below = nm(r * 1.3);
  return [
    arc('body', place(zero, zero), r),
    ...eyes.map((at) => arc('body', at, eye)),
    box('body', nm(r * 1.4), nm(-r), high, diameter),
    ...slot(place(nm(-r), below), place(nm(hole - r), below), times(diameter, 0.14)),
  ];
}

/** How long to make a buttonhole, by the rule that the maker chooses. */
export const buttonhole = reckoning({
  id: 'buttonhole-length',
  name: 'Length of a buttonhole',
  tells: 'How long to make the hole, and how far the fronts should lap.',
  group: 'Buttons and holes',
  fields: {
    diameter: { kind: 'length', label: 'Button, across', start: { in: '1/2', mm: '12' } },
    thickness: {
      kind: 'length',
      label: 'Button, thickness',
      means: 'Its height off the table; counts for flat and bulky.',
      start: { in: '1/8', mm: '3' },
    },
    rule: {
      kind: 'choice',
      label: 'Rule',
      means: 'The first serves most: it lets the button stand on its edge in the hole.',
      options: [
        { value: 'flat', label: 'flat button: across and thickness' },
        { value: 'bulky', label: 'bulky cloth: 1/8 in more' },
        { value: 'tape', label: 'by a tape round it: domed or odd' },
        { value: 'ball', label: 'ball: 1 1/4 times across' },
        { value: 'bound', label: 'bound hole: across and 1/8 in' },
        { value: 'older', label: 'older rule: across and 1/16 in' },
        { value: 'linen', label: 'linen, by hand: as the button' },
      ],
      start: 'flat',
    },
    round: {
      kind: 'length',
      label: 'Tape round it',
      means: 'Only for the rule by a tape: once round the button.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  blame: { lines: 'diameter' },
  work: (given) => {
    const { diameter, thickness } = given;
    const lap = lapFor(diameter);
    if (!lap.ok) return lap;
    const size = linesOf(diameter);
    if (!size.ok) return size;
    const hole = holeOf(given);
    if (!hole.ok) return hole;
    const { length, says, source } = hole.value;
    const picture = drawn(diameter, nm(Math.min(Math.max(0, thickness), 2 * diameter)), length);
    return good({
      figures: [
        { kind: 'length', name: 'Length of the hole', length },
        { kind: 'length', name: 'Cloth beyond centre front, least', length: lap.value.least },
        { kind: 'length', name: 'Cloth beyond centre front, most', length: lap.value.most },
        { kind: 'number', name: 'Button size', number: Math.round(size.value * 10) / 10, of: 'lines' },
      ],
      strips: [],
      drawing: sheet('Button and its hole', picture),
      sheets: [sheet('Button and its hole', picture, ['Lay the button on the circle: they should agree.'])],
      advice: [{ say: 'Sew one on a scrap of the same layers first and try the button.', source: practice }],
      assumed: [`${says}.`],
      sources: [source, lap.value.source],
    });
  },
});
