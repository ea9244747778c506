import { advise } from '../../cloth/advice.ts';
import { band } from '../../cloth/bands.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { shorter } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Work } from '../outfit.ts';
import { holesOf } from '../piece-holes.ts';
import { BAND_FIELDS } from './button-band-fields.ts';
import { bandFigures, lapOf } from './button-band-figures.ts';
import { stepOf } from './parts.ts';
import { unit } from './unit.ts';

/** A band folded at an opening edge, with its buttonholes and buttons. */
export const buttonBand = unit({
  id: 'button-band',
  name: 'Button band',
  tells: 'The opening edge folded over twice, with buttonholes and buttons.',
  group: 'Front and fastening',
  places: {
    opening: {
      kind: 'edges',
      one: true,
      label: 'the opening edge',
      means: 'The finished front edge of a left and a right piece.',
      like: ['opening', 'front-edge', 'centre-front', 'centre-back'],
    },
  },
  fields: BAND_FIELDS,
  blame: {
    count: 'buttons',
    secondTurn: 'width',
    lap: 'width',
    outer: 'width',
    inner: 'width',
    hole: 'diameter',
    opening: 'last',
  },
  propose: ({ at }) => bandFigures(at.opening),
  build: ({ values, at, garment, marker, id, name }) => {
    const { buttons, diameter, thickness, width, firstTurn, first, last, held, direction, top } = values;
    const [ref, more] = at.opening.chain;
    const [piece] = at.opening.pieces;
    if (!ref || !piece || more) {
      const cure = 'Choose the one edge that opens, on one side; the other side follows.';
      return bad(refusal('at.opening', 'A band is folded on one edge.', cure));
    }
    if (piece.cut !== 'pair') {
      const cure = 'Choose an edge of a piece that is cut as a left and a right.';
      return bad(refusal('at.opening', `${piece.name} has no mate to button it to.`, cure));
    }
    const taken = garment.works.some(
      (work) => work.kind === 'folded-band' && work.on === piece.id && work.edge === ref.edge,
    );
    if (taken) return bad(refusal('at.opening', 'This edge has a band.', 'Choose another edge.'));
    const lap = lapOf(piece);
    const made = band({ firstTurn, secondTurn: width, ...(lap === undefined || lap <= 0 ? {} : { lap }) });
    if (!made.ok) return made;
    if (buttons < 1 || buttons > 100) {
      return bad(
        refusal('buttons', 'This is not a number of buttons.', 'Give a whole number from 1 to 100.'),
      );
    }
    if (first < 0)
      return bad(refusal('first', 'The first button lies above the opening.', 'Give zero or more.'));
    if (held !== undefined && held <= 0) {
      const cure = 'Give a level below the top, or leave it empty.';
      return bad(refusal('held', 'No button can be held there.', cure));
    }
    if (!shorter(last, at.opening.length)) {
      const cure = `Give less than ${inBothRules(at.opening.length, 'down')}.`;
      return bad(refusal('last', 'The last button lies below the opening.', cure));
    }
    const folded: Work = {
      kind: 'folded-band',
      id: id(),
      name,
      on: piece.id,
      edge: ref.edge,
      firstTurn,
      secondTurn: width,
    };
    const holes: Extract<Work, { kind: 'buttonholes' }> = {
      kind: 'buttonholes',
      id: id('buttons'),
      name: `${name} buttons`,
      on: piece.id,
      through: [],
      along: ref.edge,
      count: buttons,
      first,
      last: buttons === 1 ? first : last,
      ...(held === undefined ? {} : { held }),
      from: 'the top of the opening',
      button: { diameter, thickness },
      direction,
      top,
      marker,
    };
    const placed = holesOf({ ...garment, works: [...garment.works, folded] }, holes);
    if (!placed.ok) return placed;
    const closed: Work = {
      kind: 'own',
      id: id('top'),
      name: `Top of the ${name.toLowerCase()}`,
      on: piece.id,
      with: [],
      when: 'flat',
      steps: [
        stepOf(
          'Fold the top of each band back, right sides together, and stitch across it as far as the centre front',
          'machine',
          6,
        ),
        stepOf('Clip to the end of the stitching, trim the corner, and turn the band out', 'cut', 4, {
          final: true,
        }),
        stepOf('Press the top of each band', 'iron', 3),
      ],
    };
    return good({
      works: values.end === 'closed' ? [folded, closed, holes] : [folded, holes],
      advice: [
        ...placed.value.made.advice,
        advise(
          'Sew one buttonhole on a scrap through the same layers and try the button in it first.',
          practice,
        ),
      ],
      assumed: made.value.assumed,
    });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [14, 20],
        [30, 6],
        [44, 20],
      ],
    },
    {
      pen: 'faint',
      points: [
        [56, 20],
        [70, 6],
        [86, 20],
      ],
    },
    {
      pen: 'shape',
      points: [
        [42, 20],
        [42, 96],
      ],
    },
    {
      pen: 'shape',
      points: [
        [58, 20],
        [58, 96],
      ],
    },
    {
      pen: 'shape',
      points: [
        [42, 20],
        [58, 20],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [45, 22],
        [45, 96],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [55, 22],
        [55, 96],
      ],
    },
    ...[30, 46, 62, 78, 94].flatMap((y) => [
      {
        pen: 'shape' as const,
        closed: true as const,
        points: Array.from(
          { length: 8 },
          (_, i) => [50 + 3 * Math.cos((i * Math.PI) / 4), y - 2 + 3 * Math.sin((i * Math.PI) / 4)] as const,
        ),
      },
    ]),
  ],
});
