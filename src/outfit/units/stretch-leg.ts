import type { Advice } from '../../cloth/advice.ts';
import { stretchLeg as draft } from '../../cloth/stretch-leg.ts';
import { legOfTwoCloths } from '../../cloth/stretch-leg-two-cloths.ts';
import { bad, good } from '../../length/result.ts';
import type { Outline } from '../../shape/outline.ts';
import { lower as small } from '../lower.ts';
import type { Piece } from '../outfit.ts';
import { legJoins, legWorks } from './leg-joins.ts';
import { FOOT_FIELDS, LEG_FIELDS, legField, legMeasures, legProposed } from './leg-measures.ts';
import { usually } from './length-field.ts';
import { gateOf, pieceOf } from './parts.ts';
import { sizesFit } from './sizes-fit.ts';
import { curve, line } from './sketch-lines.ts';
import { gaugeOf } from './stretch-gauge.ts';
import { unit } from './unit.ts';

/** A leg part with the edge where the cloths meet called `knee`. */
const meeting = (outline: Outline): Outline => ({
  ...outline,
  edges: outline.edges.map((edge) => (edge.name === 'cut' ? { ...edge, name: 'knee' } : edge)),
});

/** Legs of stretch cloth from waist to ankle or toes, of one cloth or of two that meet near the knee. */
export const stretchLeg = unit({
  id: 'stretch-leg',
  name: 'Stretch leg',
  tells: 'From the waist to the ankle or the toes, smaller than the body by what the cloth gives.',
  group: 'Legs',
  cloths: {
    main: { label: 'Stretch cloth', stretch: true },
    lower: { label: 'Stretch cloth below, if two', stretch: true },
  },
  fields: {
    footed: {
      kind: 'choice',
      label: 'Down to',
      options: [
        { value: 'ankle', label: 'the ankle' },
        { value: 'slit', label: 'the ankle, with a slit for the heel' },
        { value: 'foot', label: 'the toes, with a foot' },
      ],
      start: 'ankle',
    },
    of: {
      kind: 'choice',
      label: 'Cut from',
      options: [
        { value: 'one', label: 'one cloth' },
        { value: 'two', label: 'two, with a seam near the knee' },
      ],
      start: 'one',
    },
    ...LEG_FIELDS,
    ...FOOT_FIELDS,
    'above-knee': usually(
      'Seam above the knee',
      '0',
      '0',
      'On the body, of two cloths; below it with a minus sign.',
    ),
    elastic: usually('Width of the elastic', '1', '25', 'In a casing round the waist.'),
    slit: usually('Length of the slit', '5', '130', 'Up the inner seam, where there is one.'),
    hem: usually('Hem at the ankle', '3/4', '20'),
    allowance: usually('Seam allowance', '1/4', '6'),
  },
  sketch: [
    curve('shape', 30, 6, 42, 9, 58, 9, 70, 6),
    curve('stitch', 29, 11, 42, 14, 58, 14, 71, 11),
    curve('shape', 30, 6, 22, 24, 22, 40, 27, 58),
    curve('shape', 27, 58, 22, 70, 28, 82, 32, 94),
    curve('shape', 70, 6, 78, 24, 78, 40, 73, 58),
    curve('shape', 73, 58, 78, 70, 72, 82, 68, 94),
    curve('shape', 50, 34, 48, 44, 43, 52, 41, 60),
    curve('shape', 41, 60, 44, 72, 42, 84, 41, 94),
    curve('shape', 50, 34, 52, 44, 57, 52, 59, 60),
    curve('shape', 59, 60, 56, 72, 58, 84, 59, 94),
    line('shape', 32, 94, 41, 94),
    line('shape', 59, 94, 68, 94),
    line('stitch', 50, 12, 50, 34),
    curve('faint', 28, 59, 32, 61, 37, 61, 41, 60),
    curve('faint', 59, 60, 63, 61, 68, 61, 72, 59),
  ],
  propose: ({ measures }) => legProposed(measures),
  build: ({ values, cloth, garment, id, name }) => {
    const { of, allowance } = values;
    const footed = values.footed === 'foot';
    const wrong = sizesFit(values, [...Object.keys(LEG_FIELDS), 'elastic', 'hem', 'slit', 'allowance']);
    if (wrong) return bad(wrong);
    const input = {
      measures: legMeasures(values, footed),
      gauge: gaugeOf(cloth.main.stretch),
      footed,
      opening: { ankle: values.footed === 'slit' },
    };
    const common = { cut: 'pair', allowance } as const;
    let pieces: readonly Piece[];
    let told: { readonly advice: readonly Advice[]; readonly assumed: readonly string[] };
    if (of === 'one') {
      const leg = draft(input);
      if (!leg.ok) return bad({ ...leg.error, field: legField(leg.error.field) });
      told = leg.value;
      pieces = [pieceOf({ ...common, id: id(), name, cloth: cloth.main.id, outline: leg.value.outline })];
    } else {
      const below = { gauge: gaugeOf(cloth.lower.stretch) };
      const leg = legOfTwoCloths({ ...input, below, aboveKnee: values['above-knee'] });
      if (!leg.ok) return bad({ ...leg.error, field: legField(leg.error.field) });
      told = leg.value;
      const { upper, lower } = leg.value;
      pieces = [
        pieceOf({
          ...common,
          id: id(),
          name: `Upper ${small(name)}`,
          cloth: cloth.main.id,
          outline: meeting(upper.outline),
        }),
        pieceOf({
          ...common,
          id: id('lower'),
          name: `Lower ${small(name)}`,
          cloth: cloth.lower.id,
          outline: meeting(lower.outline),
        }),
      ];
    }
    const down = pieces.map((piece) => piece.id);
    const last = pieces.at(-1) ?? { id: id(), name };
    return good({
      pieces,
      works: legWorks(id, last, values),
      joins: legJoins(id, down, values),
      gates: [
        gateOf({
          id: id('try'),
          name: `${name}, basted`,
          after: [id('inseam')],
          checks: [
            'The legs go on without the cloth being forced at ankle or hip',
            'The waist reaches up to where it is worn, at front, side and back',
            'The seat does not pull when sitting down',
            'The legs do not twist: the outer side hangs straight',
            'The knees bend without the cloth cutting in behind',
            ...(of === 'two' ? ['The seams between the cloths lie level, where they should'] : []),
            footed
              ? 'The heels and toes reach the ends of the feet'
              : 'The lower edges lie where they should',
          ],
        }),
      ],
      advice: told.advice,
      assumed: [
        ...told.assumed,
        'The greatest stretch of the cloth goes round the leg.',
        ...(garment.wearer === undefined
          ? ['No wearer is chosen: what is not written here is measured on an invented one.']
          : []),
      ],
    });
  },
});
