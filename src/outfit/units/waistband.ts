import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { add, subtract, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Outline } from '../../shape/outline.ts';
import { crossings, lookUp } from '../chains.ts';
import type { Chain, Garment, Work } from '../outfit.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { point, straight } from './rectangle.ts';
import { runOf } from './runs.ts';
import { sewnLength } from './sewn-length.ts';
import { edgeOf, small } from './sleeve-made.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/** A waist that closes all round begins at the seam that is left open at its top; nothing where no seam is. */
function fromOpening(garment: Garment, chain: Chain): Chain | undefined {
  const open = crossings(lookUp(garment), chain, true).find(({ over }) =>
    over.some((join) => join.stopsAt !== undefined),
  );
  if (!open) return undefined;
  const at = chain.indexOf(open.to);
  return [...chain.slice(at), ...chain.slice(0, at)];
}

/** A straight band round a waist, of two layers, stiffened, closing with a lap. */
export const waistband = unit({
  id: 'waistband',
  name: 'Waistband',
  tells: 'A stiffened band of two layers that laps and buttons or hooks.',
  group: 'Skirts and waist',
  fields: {
    depth: asked('Finished depth', '1 1/4', '32'),
    overlap: asked('Overlap', '1 1/4', '32', 'How far one end goes past the opening.'),
    closes: {
      kind: 'choice',
      label: 'Closes with',
      options: [
        { value: 'button', label: 'A button' },
        { value: 'hook', label: 'A hook and bar' },
      ],
      start: 'button',
    },
    length: usually('Round the waist', '28', '710', 'Without the overlap.'),
    diameter: usually('Width of button', '5/8', '15'),
    thickness: usually('Height of button', '1/8', '3'),
    ...STIFFENING,
    allowance: usually('Seam allowance', '1/2', '15'),
  },
  places: {
    waist: {
      kind: 'edges',
      label: 'the waist edge',
      means: 'All round, from the opening to the opening.',
      like: ['waist', 'upper', 'hem'],
      round: true,
    },
  },
  sketch: [
    {
      pen: 'shape',
      points: [
        [10, 20],
        [84, 20],
        [84, 44],
        [10, 44],
      ],
      closed: true,
    },
    {
      pen: 'shape',
      points: [
        [84, 20],
        [94, 22],
        [94, 42],
        [84, 44],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [13, 23],
        [81, 23],
        [81, 41],
        [13, 41],
        [13, 23],
      ],
    },
    {
      pen: 'shape',
      points: [
        [86, 32],
        [92, 32],
      ],
    },
    {
      pen: 'shape',
      points: [
        [10, 44],
        [4, 92],
      ],
    },
    {
      pen: 'shape',
      points: [
        [84, 44],
        [92, 92],
      ],
    },
    {
      pen: 'faint',
      points: [
        [30, 46],
        [27, 90],
      ],
    },
    {
      pen: 'faint',
      points: [
        [48, 46],
        [48, 90],
      ],
    },
    {
      pen: 'faint',
      points: [
        [66, 46],
        [70, 90],
      ],
    },
  ],
  propose: ({ at, garment }) =>
    at.waist
      ? {
          length: {
            value: sewnLength(garment, runOf(garment, at.waist.chain).chain),
            because: 'As long as the waist it is sewn to, with its gathers drawn up.',
            source: geometry,
          },
        }
      : {},
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const { depth, overlap, length, allowance, closes, diameter, thickness, stiffening } = values;
    for (const [field, size] of Object.entries({ depth, overlap, length, allowance, diameter, thickness })) {
      if (size <= 0) return bad(refusal(field, 'This has no length.', 'Write a length above zero.'));
    }
    if (closes === 'button' && diameter >= depth)
      return bad(
        refusal('diameter', 'The button is wider than the band.', 'Write a smaller button or a deeper band.'),
      );
    if (closes === 'button' && diameter >= overlap)
      return bad(refusal('overlap', 'The button does not fit on the overlap.', 'Write a longer overlap.'));
    const run = runOf(garment, at.waist.chain);
    const taken = turnedUp(garment, run.chain, 'waist');
    if (taken) return bad(taken);
    const waist = run.ring ? fromOpening(garment, run.chain) : run.chain;
    if (!waist)
      return bad(
        refusal(
          'at.waist',
          'This waist is closed all round, so nobody could step into it.',
          'Let one of its seams stop at an opening below the waist.',
        ),
      );
    const end = add(length, overlap);
    const outline: Outline = {
      start: point(zero, zero),
      edges: [
        straight('upper', point(end, zero)),
        straight('front-end', point(end, depth)),
        straight('lap', point(subtract(end, overlap), depth)),
        straight('lower', point(zero, depth)),
        straight('back-end', point(zero, zero)),
      ],
    };
    const layer = (part: string, which: string) =>
      pieceOf({
        id: id(part),
        name: `${which} ${small(name)}`,
        cloth: cloth.main.id,
        cut: run.cut,
        unit: id(),
        allowance,
        outline,
      });
    const [outer, inner] = [layer('outer', 'Outer'), layer('inner', 'Inner')];
    const round = (piece: string): Chain =>
      ['back-end', 'upper', 'front-end', 'lap'].map((edge) => edgeOf(piece, edge));
    const middle = times(depth, 1 / 2);
    const closing: Work =
      closes === 'button'
        ? {
            kind: 'buttonholes',
            id: id('button'),
            name: `Button of the ${small(name)}`,
            on: outer.id,
            through: [inner.id],
            along: 'front-end',
            count: 1,
            first: middle,
            last: middle,
            from: `the upper edge of the ${small(name)}`,
            button: { diameter, thickness },
            direction: 'across',
            top: 'each',
            marker,
          }
        : {
            kind: 'own',
            id: id('hook'),
            name: `Hook of the ${small(name)}`,
            on: outer.id,
            with: [inner.id],
            when: 'late',
            steps: [
              stepOf('Sew a hook inside the end of the overlap, a little back from its edge', 'hand', 5),
              stepOf(`Lap the ${small(name)} as it is worn and sew the bar where the hook lies`, 'hand', 6),
            ],
          };
    return good({
      pieces: [outer, inner],
      works: [
        ...stiffeningOf(stiffening, outer),
        {
          kind: 'press-edge',
          id: id('turning'),
          name: `Turning of the ${small(name)}`,
          on: inner.id,
          edge: 'lower',
          turn: allowance,
        },
        closing,
      ],
      joins: [
        joinOf({
          id: id('layers'),
          name: `${name} layers seam`,
          this: round(outer.id),
          to: round(inner.id),
          seam: 'turned',
          depth: allowance,
        }),
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: waist,
          to: [edgeOf(outer.id, 'lower')],
          seam: 'covered',
          cover: edgeOf(inner.id, 'lower'),
          depth: allowance,
          worked: run.worked,
        }),
      ],
    });
  },
});
