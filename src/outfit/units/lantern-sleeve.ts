import { type FlaredMade, flaredPanel } from '../../cloth/flared-panel.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import type { CapMade } from '../../cloth/sleeve-cap.ts';
import { lowerWide, onArm, sleeveWide, USUAL_CAP_EASE } from '../../cloth/sleeve-room.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { add, nm, times, zero } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Outline, Point, Segment } from '../../shape/outline.ts';
import { lower as small } from '../lower.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf } from './parts.ts';
import { point, straight } from './rectangle.ts';
import { sizesFit } from './sizes-fit.ts';
import { curve, line } from './sketch-lines.ts';
import { ARMHOLE, HELD_BY, SETTING, SLEEVE_USUAL } from './sleeve-fields.ts';
import { easeWork, edgeOf, sleeveParts } from './sleeve-made.ts';
import { capFor, setInto, shoulderMark, underArm } from './sleeve-shape.ts';
import { unit } from './unit.ts';

/** A lantern sleeve: two panels that widen towards a seam all round, set in or worn by itself. */
export const lanternSleeve = unit({
  id: 'lantern-sleeve',
  name: 'Lantern sleeve',
  tells: 'Two panels, widest where a seam runs round it.',
  group: 'Sleeves and cuffs',
  places: { armhole: ARMHOLE },
  cloths: { main: { label: 'Cloth' }, lower: { label: 'Cloth below the seam' } },
  fields: {
    held: HELD_BY,
    length: asked('Length', '22', '560', 'From its top down the outside of the arm, cuff included.'),
    toSeam: asked('Top to the seam', '14', '360', 'From its top down to where it is widest.'),
    widest: asked('Round the seam', '26', '660', 'All round, where it is widest.'),
    lower: asked('Lower edge, finished', '10', '250', 'Round it, before any cuff gathers it.'),
    ends: {
      kind: 'choice',
      label: 'At the wrist',
      options: [
        { value: 'cuff', label: 'left open, for a cuff or a band' },
        { value: 'hem', label: 'hemmed' },
        { value: 'elastic', label: 'elastic in a casing' },
      ],
      start: 'cuff',
    },
    wide: usually('Upper arm, finished', '14', '360', 'Round the sleeve just under the arm.'),
    ease: usually('Ease in the cap', '3/4', '20', 'How much longer the cap is than the armhole.'),
    wrist: usually('Wrist', '6 1/2', '165', 'On the body, where elastic holds the lower edge.'),
    hem: usually('Hem', '1/2', '12'),
    setting: SETTING,
    ...SLEEVE_USUAL,
  },
  sketch: [
    curve('faint', 4, 32, 14, 22, 22, 14, 32, 8),
    curve('faint', 37, 34, 35, 50, 34, 70, 33, 96),
    curve('stitch', 32, 8, 28, 18, 30, 28, 37, 34),
    curve('shape', 32, 8, 58, 4, 70, 30, 95, 58),
    curve('shape', 37, 34, 36, 44, 32, 54, 26, 62),
    curve('shape', 26, 62, 46, 74, 78, 70, 95, 58),
    curve('stitch', 28, 65, 48, 77, 77, 73, 92, 62),
    curve('shape', 26, 62, 36, 70, 46, 76, 50, 86),
    curve('shape', 95, 58, 86, 68, 74, 74, 69, 84),
    line('shape', 50, 86, 69, 84, 70, 94, 51, 96, 50, 86),
    curve('fullness', 48, 24, 50, 36, 50, 50, 48, 62),
    curve('fullness', 58, 24, 64, 36, 68, 50, 70, 62),
  ],
  propose: ({ measures, at }) => {
    const arm = measures['upper-arm'];
    const wide = sleeveWide(arm, at.armhole?.length);
    const long = measures['arm-length'];
    const lower = lowerWide(measures.wrist, measures.hand);
    return {
      ...(at.armhole && { held: { value: 'armhole', because: 'An armhole is chosen', source: practice } }),
      ...(long && {
        length: { value: long, because: 'The arm, over the bent elbow', source: geometry },
        toSeam: { value: times(long, 0.65), because: 'Two thirds down, below the elbow', source: practice },
      }),
      ...(wide && {
        wide: {
          value: wide,
          because: 'The upper arm and 2 in, as far as the armhole takes it',
          source: practice,
        },
        widest: { value: times(wide, 1.8), because: 'Nearly twice the upper arm', source: practice },
      }),
      ...(measures.wrist && {
        wrist: { value: measures.wrist, because: 'As measured', source: practice },
      }),
      ...(lower && {
        lower: { value: lower, because: 'The hand passes, and a cuff can gather it', source: practice },
      }),
      ease: {
        value: USUAL_CAP_EASE.value,
        because: 'It eases into woven cloth without a pucker',
        source: USUAL_CAP_EASE.source,
      },
    };
  },
  blame: { narrow: 'lower', side: 'toSeam' },
  build: ({ values, at, cloth, garment, id, name }) => {
    const wrong = sizesFit(
      values,
      ['length', 'toSeam', 'widest', 'lower', 'wide', 'wrist', 'hem', 'elastic', 'cuffDepth', 'allowance'],
      ['ease', 'opening'],
    );
    if (wrong) return bad(wrong);
    const { held, length, toSeam, widest, lower, ends, wide, ease, allowance, cuffDepth } = values;
    const put = setInto(held, at.armhole);
    if (!put.ok) return put;
    const armhole = put.value;
    const cap = armhole && capFor(garment, armhole, { wide, ease, fullness: 1 });
    if (cap && !cap.ok) return cap;
    const above = underArm(toSeam, cap?.value, 'toSeam');
    if (!above.ok) return above;
    const below = nm(length - toSeam - (ends === 'cuff' ? cuffDepth : 0));
    if (below <= 0)
      return bad(
        refusal('toSeam', 'Nothing is left below the seam.', 'Give a higher seam, or a longer sleeve.'),
      );
    const upper = flaredPanel({
      narrow: wide,
      wide: widest,
      side: above.value,
      straight: armhole !== undefined,
    });
    if (!upper.ok) return field(upper.error, 'widest');
    const under = flaredPanel({ narrow: lower, wide: widest, side: below });
    if (!under.ok) return field(under.error, 'lower');
    const parts = sleeveParts({
      ...values,
      id,
      name,
      garment,
      pieces: [id(), id('lower')],
      top: armhole ? 'cap' : 'upper',
      armhole,
      between: [id('widest')],
      body: { above: onArm(wide), below: values.wrist },
      gathered: false,
    });
    const panel = { cut: 'pair', allowance } as const;
    return good({
      ...parts,
      pieces: [
        pieceOf({
          ...panel,
          id: id(),
          name: `Upper ${small(name)}`,
          cloth: cloth.main.id,
          marks: shoulderMark(cap?.value),
          outline: upperPanel(upper.value, cap?.value),
        }),
        pieceOf({
          ...panel,
          id: id('lower'),
          name: `Lower ${small(name)}`,
          cloth: cloth.lower.id,
          outline: lowerPanel(under.value),
        }),
      ],
      works: [...(armhole ? easeWork({ id, name }, ease) : []), ...parts.works],
      joins: [
        joinOf({
          id: id('widest'),
          name: `Widest seam of the ${small(name)}`,
          this: [edgeOf(id(), 'widest')],
          to: [edgeOf(id('lower'), 'widest')],
          depth: allowance,
          finish: 'overlock',
        }),
        ...parts.joins,
      ],
    });
  },
});

/** A refusal of a panel’s wide edge stands at the figure that is likeliest meant. */
const field = (wrong: Refusal, wide: string): Result<never, Refusal> =>
  bad({ ...wrong, field: wrong.field === 'wide' ? wide : wrong.field });

/** Lines and curves with every point moved. */
const moved = (segments: readonly Segment[], to: (at: Point) => Point): readonly Segment[] =>
  segments.map((one) =>
    one.kind === 'line'
      ? { ...one, to: to(one.to) }
      : { ...one, first: to(one.first), second: to(one.second), to: to(one.to) },
  );

/** The upper panel, flaring down from the cap or from its round top. */
function upperPanel(made: FlaredMade, cap: CapMade | undefined): Outline {
  const down = (at: Point): Point => point(at.x, add(at.y, cap?.height ?? zero));
  const start = down(point(zero, zero));
  return {
    start,
    edges: [
      cap ? { name: 'cap', segments: cap.curve } : { name: 'upper', segments: made.narrow },
      straight('front-seam', down(made.lowerRight)),
      { name: 'widest', segments: moved(made.wide, down) },
      straight('back-seam', start),
    ],
  };
}

/** The lower panel: the same kind of panel, turned half round so that its wide edge is above. */
function lowerPanel(made: FlaredMade): Outline {
  const turn = (at: Point): Point => point(nm(made.lowerRight.x - at.x), nm(made.deep - at.y));
  const start = turn(made.lowerRight);
  return {
    start,
    edges: [
      { name: 'widest', segments: moved(made.wide, turn) },
      straight('front-seam', turn(point(zero, zero))),
      { name: 'lower', segments: moved(made.narrow, turn) },
      straight('back-seam', start),
    ],
  };
}
