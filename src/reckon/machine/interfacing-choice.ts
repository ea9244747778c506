import {
  FUSING_DEGREES,
  FUSING_SECONDS,
  type InterfacingInput,
  interfacing,
  WEIGHT_RULE,
} from '../../cloth/interfacing.ts';
import { DOT_LIMIT } from '../../cloth/press-heat.ts';
import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { mm, nm } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { box, sheet } from '../../paper/drawing.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { WEIGHT_FIELD } from './cloth-fields.ts';
import { CARE_OPTIONS, dotsOf, SOLE_LONG, soleDrawn } from './iron-drawing.ts';

/** Refused instructions stand at the field which is wrong: at the seconds where the degrees alone would do. */
function atField(error: Refusal, input: InterfacingInput): Refusal {
  if (error.field !== 'instructions' || !input.instructions) return error;
  const { degrees } = input.instructions;
  const again = interfacing({ ...input, instructions: { degrees, seconds: FUSING_SECONDS.value } });
  const heatDoes = again.ok || again.error.field !== 'instructions';
  return { ...error, field: heatDoes ? 'seconds' : 'degrees' };
}

/** Which interfacing, held how, and how hot and how long it is fused. */
export const interfacingChoice = reckoning({
  id: 'interfacing',
  name: 'Interfacing',
  tells: 'Which interfacing for a part, sewn in or fused, how hot and how long.',
  group: 'Machine and iron',
  fields: {
    part: {
      kind: 'choice',
      label: 'For which part',
      options: [
        { value: 'collar', label: 'a collar' },
        { value: 'cuff', label: 'a cuff' },
        { value: 'band', label: 'a band' },
        { value: 'buttonholes', label: 'buttonholes' },
        { value: 'facing', label: 'a facing' },
        { value: 'hem', label: 'a hem' },
      ],
      start: 'collar',
    },
    weight: WEIGHT_FIELD,
    make: {
      kind: 'choice',
      label: 'How it is made',
      options: [
        { value: 'woven', label: 'woven' },
        { value: 'knit', label: 'knit' },
      ],
      start: 'woven',
    },
    care: {
      kind: 'choice',
      label: 'Care label',
      means: 'Dots in the iron on the cloth’s own label.',
      options: CARE_OPTIONS,
      start: '3',
    },
    surface: {
      kind: 'choice',
      usual: true,
      label: 'Surface',
      options: [
        { value: 'smooth', label: 'smooth' },
        { value: 'pile', label: 'with a pile' },
        { value: 'see-through', label: 'see-through' },
        { value: 'beaded', label: 'with beads or sequins' },
      ],
      start: 'smooth',
    },
    held: {
      kind: 'choice',
      usual: true,
      label: 'Held',
      options: [
        { value: 'choose', label: 'whichever does' },
        { value: 'sewn in', label: 'sewn in' },
        { value: 'fused', label: 'fused' },
      ],
      start: 'choose',
    },
    degrees: {
      kind: 'number',
      label: 'Its maker’s degrees',
      means: 'From the interfacing’s instructions; they go above ours.',
      unit: '°C',
      start: '',
      optional: true,
    },
    seconds: {
      kind: 'number',
      label: 'Its maker’s seconds',
      means: 'From the interfacing’s instructions.',
      start: '',
      optional: true,
    },
  },
  work: ({ part, weight, make, care, surface, held, degrees, seconds }) => {
    if ((degrees === undefined) !== (seconds === undefined)) {
      const missing = degrees === undefined ? 'degrees' : 'seconds';
      const cure = 'Give both degrees and seconds, or neither.';
      return bad(refusal(missing, 'Only half of the instructions is given.', cure));
    }
    const input: InterfacingInput = {
      part,
      weight,
      knit: make === 'knit',
      care: dotsOf(care),
      surface,
      ...(held !== 'choose' && { held }),
      ...(degrees !== undefined && seconds !== undefined && { instructions: { degrees, seconds } }),
    };
    const made = interfacing(input);
    if (!made.ok) return bad(atField(made.error, input));
    const { structure, fusing, because, advice, assumed } = made.value;
    const figures: ReckonedFigure[] = [
      { kind: 'words', name: 'Held', words: made.value.held },
      { kind: 'words', name: 'Interfacing', words: `${made.value.weight}, ${structure}` },
    ];
    if (fusing) {
      figures.push(
        { kind: 'number', name: 'Heat', number: fusing.degrees, of: '°C' },
        { kind: 'number', name: 'Hold still', number: fusing.seconds, of: 'seconds' },
        { kind: 'number', name: 'The cloth bears', number: fusing.limit, of: '°C' },
        { kind: 'words', name: 'Afterwards', words: 'leave it flat until it is cold' },
      );
    }
    figures.push({ kind: 'words', name: 'Why', words: because });
    const [left, top, wide, high] = [mm(-40), mm(-90), nm(SOLE_LONG + mm(80)), mm(180)];
    const inset = (by: number) =>
      [nm(left + mm(by)), nm(top + mm(by)), nm(wide - mm(2 * by)), nm(high - mm(2 * by))] as const;
    return good({
      figures,
      strips: [],
      drawing: sheet('Cloth, interfacing and iron', [
        box('body', left, top, wide, high),
        box('seam', ...inset(15)),
        ...(fusing ? soleDrawn(dotsOf(care)) : [box('stitch', ...inset(22))]),
      ]),
      sheets: [],
      advice,
      assumed,
      sources: [
        WEIGHT_RULE,
        ...(fusing && degrees === undefined ? [FUSING_DEGREES.source, FUSING_SECONDS.source] : []),
        DOT_LIMIT.source,
        practice,
      ],
    });
  },
});
