import { geometry } from '../../cloth/source.ts';
import type { Length } from '../../length/length.ts';
import { bad } from '../../length/result.ts';
import { usually } from './length-field.ts';
import { fullnessFits, sizesFit } from './sizes-fit.ts';
import { wave } from './sketch.ts';
import { curve, line } from './sketch-lines.ts';
import { timesField } from './sleeve-fields.ts';
import { supportInner } from './support-inner.ts';
import { sizesOf, supportStrip } from './support-strip.ts';
import { unit } from './unit.ts';

/** What stands inside a sleeve: a strip of net that holds its cap up, or a whole inner sleeve with rings. */
export const sleeveSupport = unit({
  id: 'sleeve-support',
  name: 'Sleeve support',
  tells: 'Net inside a sleeve: a strip under its cap, or an inner sleeve with rings.',
  group: 'Sleeves and cuffs',
  places: { sleeve: { kind: 'piece', label: 'the sleeve', like: ['sleeve'] } },
  cloths: { main: { label: 'Net or organza' } },
  fields: {
    kind: {
      kind: 'choice',
      label: 'What holds it',
      options: [
        { value: 'strip', label: 'a strip of net in the cap' },
        { value: 'inner', label: 'an inner sleeve with rings' },
      ],
      start: 'strip',
    },
    depth: usually('Depth of the strip', '2', '50', 'Finished; it is cut double and folded.'),
    fullness: {
      ...timesField('Fullness of the strip', '2', '1 for a flat strip; more for a frill of net.'),
      usual: true,
    },
    top: usually('Inner sleeve, top', '15', '380', 'All round.'),
    bottom: usually('Inner sleeve, bottom', '14', '360', 'All round.'),
    long: usually('Inner sleeve, length', '12', '300', 'Down its seam.'),
    rings: {
      kind: 'number',
      label: 'Rings',
      whole: true,
      usual: true,
      start: '3',
      means: 'Of horsehair band.',
    },
    allowance: usually('Seam allowance', '3/8', '10'),
  },
  sketch: [
    curve('shape', 14, 34, 22, 2, 70, 0, 84, 34),
    line('shape', 14, 34, 24, 94, 76, 94, 84, 34),
    curve('stitch', 22, 26, 34, 8, 62, 8, 76, 26),
    { pen: 'fullness', points: wave([24, 44], [76, 44], 5, 4) },
    line('fullness', 26, 24, 27, 44),
    line('fullness', 38, 15, 38, 42),
    line('fullness', 50, 13, 50, 44),
    line('fullness', 61, 15, 62, 42),
    line('fullness', 73, 23, 73, 44),
    curve('faint', 20, 66, 40, 72, 60, 72, 80, 66),
    curve('faint', 23, 84, 40, 90, 60, 90, 77, 84),
  ],
  propose: ({ at, garment }) => {
    if (!at.sleeve) return {};
    const { top, bottom, side, cap } = sizesOf(garment, at.sleeve.piece);
    const as = (value: Length | undefined, edge: string) =>
      value && { value, because: `As long as the sleeve’s ${edge}`, source: geometry };
    const [a, b, c] = [as(top, 'top'), as(bottom, 'lower edge'), as(side, 'seam')];
    return {
      ...(cap === undefined && {
        kind: { value: 'inner', because: 'This sleeve has no cap', source: geometry },
      }),
      ...(a && { top: a }),
      ...(b && { bottom: b }),
      ...(c && { long: c }),
    };
  },
  blame: { length: 'long', part: 'fullness' },
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const wrong =
      sizesFit(values, ['depth', 'top', 'bottom', 'long', 'allowance']) ?? fullnessFits(values.fullness);
    if (wrong) return bad(wrong);
    const told = { ...values, id, name, garment, marker, sleeve: at.sleeve.piece, cloth: cloth.main.id };
    return values.kind === 'strip' ? supportStrip(told) : supportInner(told);
  },
});
