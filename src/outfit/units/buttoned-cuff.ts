import { type Advice, advise } from '../../cloth/advice.ts';
import { cuffButtons } from '../../cloth/cuff-buttons.ts';
import { cuff } from '../../cloth/cuffs.ts';
import { FUSING_DEGREES, FUSING_SECONDS } from '../../cloth/interfacing.ts';
import { BAND_EASE } from '../../cloth/sleeve-room.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { nm, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import type { Chain, Garment, Work } from '../outfit.ts';
import { cuffOutline } from './cuff-outline.ts';
import { gathersInto } from './gathers-into.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf } from './parts.ts';
import { puffedSleeve } from './puffed-sleeve.ts';
import { runOf } from './runs.ts';
import { sizesFit } from './sizes-fit.ts';
import { curve, line } from './sketch-lines.ts';
import { edgeOf } from './sleeve-made.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/** A cuff of two layers that buttons, on the lower edge of a sleeve. */
export const buttonedCuff = unit({
  id: 'buttoned-cuff',
  name: 'Buttoned cuff',
  tells: 'Two layers, stiffened, with buttons; the sleeve is set into it.',
  group: 'Sleeves and cuffs',
  places: {
    lower: {
      kind: 'edges',
      label: 'the lower edge of the sleeve',
      means: 'Its seam should have an opening there.',
      like: ['sleeve.lower', 'lower', 'wrist'],
    },
  },
  cloths: { main: { label: 'Cloth' } },
  fields: {
    wrist: asked('Round the arm', '6 1/2', '165', 'On the body, where the cuff sits.'),
    depth: asked('Finished depth', '2 1/2', '65'),
    buttons: { kind: 'number', label: 'Buttons', whole: true, start: '1' },
    diameter: asked('Diameter of a button', '1/2', '12'),
    stiffening: {
      kind: 'choice',
      label: 'Stiffening',
      options: [
        { value: 'sewn', label: 'sewn in, such as organza' },
        { value: 'fused', label: 'fused with the iron' },
        { value: 'none', label: 'none' },
      ],
      start: 'sewn',
    },
    ease: usually('Ease', '1', '25', 'Room round the wrist.'),
    overlap: usually('Overlap', '1 1/4', '30', 'How far one end lies over the other.'),
    thickness: usually('Thickness of a button', '1/8', '3'),
    allowance: usually('Seam allowance', '3/8', '10'),
  },
  sketch: [
    curve('shape', 14, 4, 14, 18, 16, 30, 20, 40),
    curve('shape', 86, 4, 88, 18, 86, 30, 82, 40),
    line('shape', 20, 40, 82, 40, 84, 90, 18, 90, 20, 40),
    line('fold', 64, 40, 65, 90),
    line('stitch', 24, 44, 60, 44, 61, 86, 22, 86),
    curve('shape', 52, 65, 52, 57, 60, 57, 60, 65),
    curve('shape', 52, 65, 52, 73, 60, 73, 60, 65),
    line('stitch', 47, 65, 63, 65),
    curve('fullness', 28, 39, 28, 32, 26, 26, 26, 20),
    curve('fullness', 40, 39, 40, 30, 41, 24, 42, 18),
    curve('fullness', 54, 39, 54, 32, 56, 26, 56, 20),
    curve('fullness', 70, 39, 71, 32, 74, 26, 74, 20),
  ],
  propose: ({ measures, at, garment }) => {
    const [piece] = at.lower?.pieces ?? [];
    const puffed = garment.units.find(
      (use) => use.unit === puffedSleeve.id && piece && use.brought.includes(piece.id),
    );
    if (at.lower && puffed) {
      // It need not end at the wrist: it was drafted to the arm where it does.
      const full = Number(puffed.entries.lowerFullness ?? puffedSleeve.fields.lowerFullness?.start);
      const arm = nm(at.lower.length / (full >= 1 ? full : 1.5) - BAND_EASE.value);
      const because = 'The arm where this sleeve ends, by the fullness of its lower edge';
      return arm > 0 ? { wrist: { value: arm, because, source: geometry } } : {};
    }
    return measures.wrist
      ? { wrist: { value: measures.wrist, because: 'As measured', source: practice } }
      : {};
  },
  blame: { closes: 'overlap' },
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const wrong = sizesFit(
      values,
      ['wrist', 'depth', 'diameter', 'thickness', 'allowance'],
      ['ease', 'overlap'],
    );
    if (wrong) return bad(wrong);
    const { wrist, ease, depth, overlap, buttons, diameter, thickness, stiffening, allowance } = values;
    const run = runOf(garment, at.lower.chain);
    const taken = turnedUp(garment, run.chain, 'lower');
    if (taken) return bad(taken);
    const made = cuff({
      wrist,
      ease,
      depth,
      allowance,
      closes: { by: 'buttons', overlap },
      pieces: 2,
      sleeve: run.length,
    });
    if (!made.ok) return made.error.field === 'sleeve' ? bad({ ...made.error, field: 'at.lower' }) : made;
    const { round, fullness, assumed } = made.value;
    const placed = cuffButtons({ depth, overlap, round, buttons, diameter, thickness });
    if (!placed.ok) return placed;
    const layer = (part: string, which: string) =>
      pieceOf({
        id: id(part),
        name: `${which} ${lower(name)}`,
        cloth: cloth.main.id,
        cut: run.cut,
        unit: id(),
        allowance,
        outline: cuffOutline(round, overlap, depth),
      });
    const outer = id('outer');
    const inner = id('inner');
    const places = placed.value.buttons.map(({ down }) => down);
    const [first = times(depth, 1 / 2)] = places;
    const stiff: readonly Work[] =
      stiffening === 'none'
        ? []
        : [
            {
              kind: 'interfacing',
              id: id('stiffening'),
              name: `Stiffening of the ${lower(name)}`,
              on: outer,
              material: stiffening === 'sewn' ? 'Organza' : 'Light woven fusible',
              ...(stiffening === 'fused' && {
                fuse: { degrees: FUSING_DEGREES.value, seconds: FUSING_SECONDS.value, coolMinutes: 15 },
              }),
            },
          ];
    const sewn = (piece: string): Chain =>
      ['lap', 'front-end', 'lower', 'back-end'].map((edge) => edgeOf(piece, edge));
    return good({
      pieces: [layer('outer', 'Outer'), layer('inner', 'Inner')],
      works: [
        ...gathersInto(garment, run.chain, fullness, { id, name, marker }),
        ...stiff,
        {
          kind: 'press-edge',
          id: id('turning'),
          name: `Turning of the ${lower(name)}`,
          on: inner,
          edge: 'upper',
          turn: allowance,
        },
        {
          kind: 'buttonholes',
          id: id('buttons'),
          name: `Buttons of the ${lower(name)}`,
          on: outer,
          through: [inner],
          along: 'front-end',
          count: buttons,
          first,
          last: places.at(-1) ?? first,
          from: 'the upper edge of the cuff',
          button: { diameter, thickness },
          direction: 'across',
          top: 'each',
          marker,
        },
      ],
      joins: [
        joinOf({
          id: id('layers'),
          name: `Layers seam of the ${lower(name)}`,
          this: sewn(outer),
          to: sewn(inner),
          seam: 'turned',
          depth: allowance,
        }),
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: run.chain,
          to: [edgeOf(outer, 'upper')],
          seam: 'covered',
          cover: edgeOf(inner, 'upper'),
          depth: allowance,
        }),
      ],
      advice: [...placed.value.advice, ...openingAdvice(garment, run.chain)],
      assumed: [...assumed, ...placed.value.assumed],
    });
  },
});

/** A cuff that buttons wants the sleeve seam open above it. */
function openingAdvice(garment: Garment, [first]: Chain): readonly Advice[] {
  const seam = garment.joins.find(
    (join) =>
      join.closes &&
      [...join.this, ...join.to].some(({ piece, edge }) => piece === first?.piece && edge.endsWith('seam')),
  );
  return seam && seam.stopsAt === undefined
    ? [advise(`${seam.name}: leave it open above the cuff, or the hand will not pass.`, practice)]
    : [];
}
