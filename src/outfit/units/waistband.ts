import { refusal } from '../../cloth/refusal.ts';
import { geometry } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import type { Chain } from '../outfit.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf } from './parts.ts';
import { runOf } from './runs.ts';
import { sewnLength } from './sewn-length.ts';
import { edgeOf } from './sleeve-made.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';
import { bandOutline, closing, fromOpening } from './waistband-parts.ts';

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
        { value: 'button', label: 'a button' },
        { value: 'hook', label: 'a hook and bar' },
      ],
      start: 'button',
    },
    length: usually('Round the waist', '28', '710', 'Without the overlap.'),
    diameter: usually('Diameter of the button', '5/8', '15'),
    thickness: usually('Thickness of the button', '1/8', '3'),
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
    const outline = bandOutline(length, overlap, depth);
    const layer = (part: string, which: string) =>
      pieceOf({
        id: id(part),
        name: `${which} ${lower(name)}`,
        cloth: cloth.main.id,
        cut: run.cut,
        unit: id(),
        allowance,
        outline,
      });
    const [outer, inner] = [layer('outer', 'Outer'), layer('inner', 'Inner')];
    const round = (piece: string): Chain =>
      ['back-end', 'upper', 'front-end', 'lap'].map((edge) => edgeOf(piece, edge));
    return good({
      pieces: [outer, inner],
      works: [
        ...stiffeningOf(stiffening, outer),
        {
          kind: 'press-edge',
          id: id('turning'),
          name: `Turning of the ${lower(name)}`,
          on: inner.id,
          edge: 'lower',
          turn: allowance,
        },
        closing(closes, { id, name, layers: [outer.id, inner.id], depth, diameter, thickness, marker }),
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
