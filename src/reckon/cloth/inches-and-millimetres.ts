import { refusal } from '../../cloth/refusal.ts';
import { published } from '../../cloth/source.ts';
import { type Length, mm, toInches, toMm } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { sheet } from '../../paper/drawing.ts';
import { type ReckonedFigure, reckoning } from '../reckoning.ts';
import { ruleDrawn, WHOLE_RULE } from './rule-drawing.ts';

/** The inch is an exact number of millimetres. */
const INCH = published(
  'Guide for the Use of the International System of Units, NIST Special Publication 811',
  '2008',
  'appendix B; from memory',
);
const LONGEST = mm(100_000);

/** A number without needless noughts. */
const plain = (value: number, places: number): string => String(Number(value.toFixed(places)));

/** What rounding leaves: nothing, or how much longer or shorter the written length is than the true one. */
function left(off: Length): string {
  if (off === 0) return 'exactly';
  const hundredths = Math.round(Math.abs(off) / 10_000);
  const shown = hundredths === 0 ? 'less than 0.01' : String(hundredths / 100);
  return `${shown} mm too ${off > 0 ? 'long' : 'short'}`;
}

function written(name: string, length: Length, marking: Marking): ReckonedFigure {
  const { text, off } = writeLength(length, marking);
  return { kind: 'words', name, words: `${text}, ${left(off)}` };
}

function centimetres(length: Length): ReckonedFigure {
  const { whole, off } = writeLength(length, { unit: 'mm', step: 1 });
  return { kind: 'words', name: 'In centimetres', words: `${plain(Number(whole) / 10, 1)} cm, ${left(off)}` };
}

/** One length on every rule, with what the rounding leaves. */
export const inchesAndMillimetres = reckoning({
  id: 'inches-and-millimetres',
  name: 'Inches and millimetres',
  tells: 'One length on every rule, and how far each mark is off.',
  group: 'Cloth and measures',
  fields: {
    length: {
      kind: 'length',
      label: 'Length',
      means: 'In any unit: 4 3/8 in, 11.1 cm, 1 yd.',
      start: { in: '4 3/8', mm: '111' },
    },
  },
  work: ({ length }) => {
    if (length <= 0 || length > LONGEST) {
      const cure = 'Give a length above zero and at most 100 m, which is 109 yd.';
      return bad(refusal('length', 'This length cannot be shown on a rule.', cure));
    }
    const rule = ruleDrawn(length, 16);
    return good({
      figures: [
        written('In sixteenths of an inch', length, { unit: 'in', per: 16 }),
        written('In millimetres', length, { unit: 'mm', step: 1 }),
        written('In thirty-seconds', length, { unit: 'in', per: 32 }),
        written('In eighths', length, { unit: 'in', per: 8 }),
        written('In half millimetres', length, { unit: 'mm', step: 0.5 }),
        centimetres(length),
        { kind: 'words', name: 'Not rounded, in millimetres', words: `${plain(toMm(length), 4)} mm` },
        { kind: 'words', name: 'Not rounded, in inches', words: `${plain(toInches(length), 5)} in` },
      ],
      strips: [],
      drawing: sheet('On a rule', rule),
      sheets:
        length > WHOLE_RULE
          ? []
          : [
              sheet('A rule with the length on it', ruleDrawn(length, 32), [
                'Hold a rule of your own against it.',
              ]),
            ],
      advice: [],
      assumed: ['An inch is 25.4 mm, exactly.'],
      sources: [INCH],
    });
  },
});
