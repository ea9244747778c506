import { BALL_POINT, NEEDLE_BY_WEIGHT } from '../../cloth/needles.ts';
import { memory } from '../../cloth/source.ts';
import { EDGE_ZIGZAG, NARROW_ZIGZAG, STITCH_LENGTH, stitchFor, THREAD_RATIOS } from '../../cloth/stitches.ts';
import { inches, type Length, mm, ratio, toMm } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { sheet } from '../../paper/drawing.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import {
  MAKE_FIELD,
  OTHER_MAKE_FIELD,
  OTHER_WEIGHT_FIELD,
  sewnCloths,
  WEIGHT_FIELD,
} from './cloth-fields.ts';
import { stitchRow } from './stitch-drawing.ts';

/** To one place after the point. */
const tenths = (value: number): number => Math.round(value * 10) / 10;

/** As the dial of a machine shows it, which is finer than a rule. */
const inMm = (length: Length): string => `${tenths(toMm(length))} mm`;

/** Stitch, length, width and needle for a seam. */
export const stitchForACloth = reckoning({
  id: 'stitch-for-a-cloth',
  name: 'Stitch for a cloth',
  tells: 'Which stitch to set, how long and how wide, and with which needle.',
  group: 'Machine and iron',
  fields: {
    purpose: {
      kind: 'choice',
      label: 'What for',
      options: [
        { value: 'seam', label: 'a seam' },
        { value: 'baste', label: 'basting' },
        { value: 'reinforce', label: 'a place that strains' },
        { value: 'neaten', label: 'neatening an edge' },
      ],
      start: 'seam',
    },
    weight: WEIGHT_FIELD,
    make: MAKE_FIELD,
    otherWeight: OTHER_WEIGHT_FIELD,
    otherMake: OTHER_MAKE_FIELD,
    overlocker: {
      kind: 'choice',
      usual: true,
      label: 'Overlocker',
      options: [
        { value: 'no', label: 'there is none' },
        { value: 'yes', label: 'there is one' },
      ],
      start: 'no',
    },
  },
  blame: { cloths: 'weight' },
  work: (chosen) => {
    const { purpose, overlocker } = chosen;
    const made = stitchFor({ cloths: sewnCloths(chosen), purpose, overlocker: overlocker === 'yes' });
    if (!made.ok) return made;
    const { type, stitch, length, width, needle } = made.value;
    const wide: ReckonedFigure =
      width === undefined
        ? { kind: 'words', name: 'Width', words: type === 301 ? 'none' : 'as the machine sets it' }
        : { kind: 'words', name: 'Width', words: inMm(width) };
    const row = stitchRow(made.value, 10);
    const long = Math.floor(ratio(mm(150), length));
    return good({
      figures: [
        { kind: 'words', name: 'Stitch', words: `${stitch.name}, type ${type} of ISO 4915` },
        { kind: 'words', name: 'Length of a stitch', words: inMm(length) },
        wide,
        { kind: 'words', name: 'Needle', words: `${needle.metric}/${needle.other}, ${needle.point} point` },
        { kind: 'number', name: 'Stitches to an inch', number: tenths(ratio(inches(1), length)) },
        { kind: 'number', name: 'Stitches to 5 cm', number: tenths(ratio(mm(50), length)) },
        {
          kind: 'words',
          name: 'When the cloth is stretched',
          words: stitch.gives ? 'the stitch gives' : 'the stitch does not give',
        },
        { kind: 'number', name: 'Thread to a length of seam', number: stitch.thread, of: 'times' },
      ],
      strips: [],
      drawing: sheet('Ten stitches', row),
      sheets: [
        sheet('A row of stitches to hold the sample against', stitchRow(made.value, long), [
          `${stitch.name}, as long and as wide as reckoned.`,
        ]),
      ],
      advice: made.value.advice,
      assumed: [
        ...made.value.assumed,
        ...(type === 504 ? ['Drawn 5 mm wide; the machine sets the width.'] : []),
      ],
      sources: [
        STITCH_LENGTH[purpose].source,
        ...(width === undefined ? [] : [(purpose === 'neaten' ? EDGE_ZIGZAG : NARROW_ZIGZAG).source]),
        NEEDLE_BY_WEIGHT.source,
        ...(needle.point === 'ball' ? [BALL_POINT] : []),
        THREAD_RATIOS,
        memory,
      ],
    });
  },
});
