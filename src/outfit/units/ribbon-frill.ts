import { advise } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { add, longer, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { chainLength } from './place.ts';
import { rectangle } from './rectangle.ts';
import { eachOf, runOf } from './runs.ts';
import { fullnessFits, sizesFit } from './sizes-fit.ts';
import { wave } from './sketch.ts';
import { curve } from './sketch-lines.ts';
import { timesField } from './sleeve-fields.ts';
import { casingFor, edgeOf, gatherOf } from './sleeve-made.ts';
import { unit } from './unit.ts';

/** A frill laid over a seam, with a ribbon in a channel that can be drawn up and tied. */
export const ribbonFrill = unit({
  id: 'ribbon-frill',
  name: 'Ribbon frill',
  tells: 'A frill over a seam, such as at the knee, with a ribbon to tie.',
  group: 'Legs',
  places: {
    seam: {
      kind: 'seam',
      label: 'the seam it lies over',
      like: ['knee', 'widest'],
    },
  },
  cloths: { main: { label: 'Cloth' } },
  fields: {
    depth: asked('Depth', '2 1/2', '65', 'Finished, from the seam down.'),
    fullness: timesField('Fullness', '2', 'How many times as long as the seam.'),
    ribbon: asked('Width of the ribbon', '3/8', '10'),
    below: usually('Channel below the seam', '3/8', '10', 'From the seam down to the tape.'),
    tie: usually('Ribbon to tie', '10', '250', 'At each end.'),
    allowance: usually('Seam allowance', '3/8', '10'),
  },
  sketch: [
    curve('shape', 18, 2, 22, 14, 28, 22, 31, 32),
    curve('shape', 82, 2, 78, 14, 72, 22, 69, 32),
    curve('shape', 31, 32, 40, 35, 60, 35, 69, 32),
    curve('shape', 31, 32, 24, 42, 20, 50, 16, 58),
    curve('shape', 69, 32, 76, 42, 80, 50, 84, 58),
    { pen: 'shape', points: wave([16, 58], [84, 58], 4, 5) },
    curve('fold', 28, 38, 40, 42, 60, 42, 72, 38),
    curve('fold', 25, 44, 40, 48, 60, 48, 75, 44),
    curve('shape', 50, 44, 66, 30, 76, 46, 50, 44),
    curve('shape', 50, 44, 34, 30, 24, 46, 50, 44),
    curve('shape', 50, 44, 54, 54, 60, 64, 58, 74),
    curve('shape', 50, 44, 46, 54, 42, 62, 44, 72),
    curve('shape', 32, 63, 26, 76, 32, 88, 38, 99),
    curve('shape', 68, 63, 74, 76, 68, 88, 62, 99),
  ],
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const wrong =
      sizesFit(values, ['depth', 'ribbon', 'allowance'], ['below', 'tie']) ?? fullnessFits(values.fullness);
    if (wrong) return bad(wrong);
    const { depth, fullness, ribbon, below, tie, allowance } = values;
    const { join } = at.seam;
    // Where one side is stretched to the other, the frill is as long as the longer one.
    const side = longer(chainLength(garment, join.to), at.seam.length) ? join.to : join.this;
    const run = runOf(garment, side);
    const tape = casingFor(ribbon);
    if (!longer(depth, add(below, tape))) {
      const cure = `Give a deeper frill than ${inBothRules(add(below, tape), 'up')}, or a narrower ribbon.`;
      return bad(refusal('depth', 'The channel would hang over the edge of the frill.', cure));
    }
    const each = eachOf(run.cut, name);
    const stretches = join.seam === 'stretch';
    return good({
      pieces: [
        pieceOf({
          id: id(),
          name,
          cloth: cloth.main.id,
          cut: run.cut,
          allowance,
          outline: rectangle(times(run.length, fullness), depth, ['seam', 'front-end', 'outer', 'back-end']),
        }),
      ],
      works: [
        {
          kind: 'own',
          id: id('channel'),
          name: `Channel of the ${lower(name)}`,
          on: id(),
          with: [],
          when: 'flat',
          finishes: ['front-end', 'outer', 'back-end'].map((edge) => edgeOf(id(), edge)),
          steps: [
            stepOf(`Turn both ends and the lower edge of ${each} in twice and stitch them`, 'machine', 12),
            stepOf(
              `Pin a tape ${inBothRules(tape)} wide to the wrong side of ${each}, ${inBothRules(below)} below the seam line`,
              'pin',
              6,
            ),
            stepOf('Stitch the tape along both its edges, its ends left open for the ribbon', 'machine', 10),
          ],
        },
        ...(fullness > 1 ? [gatherOf({ id, name, marker }, 'seam', fullness)] : []),
        {
          kind: 'ribbon',
          id: id('ribbon'),
          name: `Ribbon of the ${lower(name)}`,
          on: id(),
          ribbon: add(run.length, times(tie, 2)),
          where: 'the channel',
        },
      ],
      joins: [
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: [edgeOf(id(), 'seam')],
          to: run.chain,
          seam: 'laid-on',
          depth: allowance,
        }),
      ],
      advice: stretches
        ? [
            advise(
              'The seam below stretches and the frill does not: sew it with a narrow zigzag, or the stitches crack when the leg goes on.',
              practice,
            ),
          ]
        : [],
      assumed: [`The ribbon goes once round and hangs ${inBothRules(tie)} at each end.`],
    });
  },
});
