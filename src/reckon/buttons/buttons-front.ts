import { BELOW_TOP, fastenings, lapFor, PAST_CENTRE } from '../../cloth/fastenings.ts';
import { refusal } from '../../cloth/refusal.ts';
import { published } from '../../cloth/source.ts';
import { add, type Length, longer, nm, subtract, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { arc, box, line, place, sheet, words } from '../../paper/drawing.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { slot } from './slot-drawing.ts';

/** Buttons and their holes down an opening. */
export const buttonsFront = reckoning({
  id: 'buttons-down-a-front',
  name: 'Buttons down a front',
  tells: 'Where each button and each hole goes, with one at bust and waist if you like.',
  group: 'Buttons and holes',
  fields: {
    length: {
      kind: 'length',
      label: 'Length of opening',
      means: 'From the neck edge to the hem edge, finished.',
      start: { in: '22', mm: '560' },
    },
    count: { kind: 'number', label: 'How many', whole: true, start: '7' },
    first: {
      kind: 'length',
      label: 'First, from the top',
      means: 'To the middle of the button.',
      start: { in: '3/4', mm: '20' },
    },
    last: { kind: 'length', label: 'Last, from the bottom', start: { in: '3', mm: '75' } },
    diameter: { kind: 'length', label: 'Button, across', start: { in: '1/2', mm: '12' } },
    hole: {
      kind: 'length',
      label: 'Length of hole',
      means: 'Across and thickness for a flat button.',
      start: { in: '5/8', mm: '15' },
    },
    direction: {
      kind: 'choice',
      usual: true,
      label: 'Holes lie',
      options: [
        { value: 'vertical', label: 'upright' },
        { value: 'horizontal', label: 'level' },
      ],
      start: 'vertical',
    },
    bust: {
      kind: 'length',
      label: 'One at bust',
      means: 'From the top; leave empty if it need not be.',
      start: { in: '', mm: '' },
      optional: true,
    },
    waist: {
      kind: 'length',
      label: 'One at waist',
      means: 'From the top; leave empty if it need not be.',
      start: { in: '', mm: '' },
      optional: true,
    },
  },
  blame: { outer: 'diameter', inner: 'hole', opening: 'first', levels: 'bust', held: 'bust' },
  work: ({ length: opening, count, first, last, diameter, hole, direction, bust, waist }) => {
    const lap = lapFor(diameter);
    if (!lap.ok) return lap;
    if (opening <= 0 || opening > 10_000_000_000) {
      return bad(refusal('length', 'This is not the length of an opening.', 'Give up to 10 m.'));
    }
    if (longer(diameter, opening)) {
      return bad(
        refusal('diameter', 'The button is wider than the opening is long.', 'Give a smaller button.'),
      );
    }
    const lowest = subtract(opening, last);
    const out = (field: 'bust' | 'waist', level: Length | undefined) =>
      level !== undefined && (level < first || level > lowest)
        ? bad(
            refusal(field, 'It is not between the first button and the last.', 'Move it, or leave it empty.'),
          )
        : undefined;
    const wrong = out('bust', bust) ?? out('waist', waist);
    if (wrong) return wrong;
    const levels = [bust, waist].filter((level) => level !== undefined);
    const outer = lap.value.least;
    const inner = nm(Math.max(outer, hole));
    const made = fastenings({
      direction,
      hole,
      diameter,
      outer,
      inner,
      opening,
      first,
      last: lowest,
      count,
      ...(levels.length === 0 ? {} : { levels }),
    });
    if (!made.ok) return made;
    const { spacing, fastenings: all, advice, assumed } = made.value;
    const upright = direction === 'vertical';
    const wide = add(inner, outer);
    const at = (p: { along: Length; across: Length }) => place(add(inner, p.across), p.along);
    const stitched = times(diameter, 0.14);
    const slots = all.flatMap(({ hole: h }) => slot(at(h.from), at(h.to), stitched));
    const band: Drawn[] = [
      box('cut', zero, zero, wide, opening),
      line('mark', place(inner, zero), place(inner, opening)),
    ];
    const letters = times(opening, 1 / 25);
    // Enough of both fronts to know them by.
    const shown = nm(Math.max(wide, opening * 0.2));
    const across = add(wide, times(letters, 3));
    const gaps: ReckonedFigure[] =
      levels.length === 0
        ? [{ kind: 'length', name: 'From button to button', length: spacing.above }]
        : [
            { kind: 'length', name: 'Spaces at the top', length: spacing.above },
            { kind: 'length', name: 'Spaces at the bottom', length: spacing.below },
          ];
    const one = all[0];
    return good({
      figures: [
        ...(count === 1 ? [] : gaps),
        { kind: 'length', name: 'First, from the top', length: first },
        { kind: 'length', name: 'Last, from the top', length: all.at(-1)?.button.along ?? first },
        { kind: 'length', name: 'Cloth beyond centre front, least', length: lap.value.least },
        { kind: 'length', name: 'Cloth beyond centre front, most', length: lap.value.most },
        ...(one
          ? [
              upright
                ? {
                    kind: 'length' as const,
                    name: 'Hole begins above its button',
                    length: subtract(one.button.along, one.hole.from.along),
                  }
                : {
                    kind: 'length' as const,
                    name: 'Hole begins past centre front',
                    length: one.hole.from.across,
                  },
            ]
          : []),
      ],
      strips: [
        {
          name: 'Buttons, down the centre front',
          from: 'the neck edge',
          span: opening,
          marks: all.map(({ button }, i) => ({ at: button.along, name: `button ${i + 1}` })),
        },
        {
          name: 'Buttonholes, down the centre front',
          from: 'the neck edge',
          span: opening,
          marks: all.flatMap(({ hole: h }, i) =>
            upright
              ? [
                  { at: h.from.along, name: `hole ${i + 1}, top`, stroke: 'stitch' as const },
                  { at: h.to.along, name: `hole ${i + 1}, bottom`, stroke: 'stitch' as const },
                ]
              : [{ at: h.from.along, name: `hole ${i + 1}` }],
          ),
        },
      ],
      drawing: sheet('Holes and buttons', [
        box('body', nm(wide - shown), zero, shown, opening),
        line('mark', place(inner, zero), place(inner, opening)),
        ...slots,
        box('body', across, zero, shown, opening),
        line('mark', place(nm(across + outer), zero), place(nm(across + outer), opening)),
        ...all.map(({ button }) =>
          arc('body', place(nm(across + outer), button.along), times(diameter, 1 / 2)),
        ),
        ...all
          .filter((_, i) => i === 0 || spacing.above > letters * 1.2)
          .map(({ button }, i) =>
            words(String(i + 1), place(nm(wide + letters), nm(button.along + letters * 0.35)), letters),
          ),
      ]),
      sheets: [
        sheet(
          'Buttonholes, true size',
          [...band, ...slots],
          [
            'Lay the top on the neck edge and the long line on the centre front.',
            'The outer edge is the least that should lie beyond the centre front.',
          ],
        ),
      ],
      advice,
      assumed: [
        'Distances count from the finished neck edge, along the centre front.',
        ...(upright
          ? ['The button rests 1/8 in below the top of its hole.']
          : ['The hole begins 1/8 in past the centre front, towards the edge.']),
        ...assumed,
      ],
      sources: [
        published('The New Dressmaker, Butterick', '1921', 'p. 112; seen as an excerpt'),
        PAST_CENTRE.source,
        BELOW_TOP.source,
      ],
    });
  },
});
