import { elasticCut } from '../../cloth/elastic.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { reduced, reductions } from '../../cloth/stretch.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import { gathersInto } from './gathers-into.ts';
import { asked, usually } from './length-field.ts';
import { gateOf, joinOf, pieceOf } from './parts.ts';
import { rectangle } from './rectangle.ts';
import { runOf } from './runs.ts';
import { sizesFit } from './sizes-fit.ts';
import type { SketchLine } from './sketch.ts';
import { curve, line } from './sketch-lines.ts';
import { casingFor, edgeOf } from './sleeve-made.ts';
import { gaugeOf } from './stretch-gauge.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/** A head of stretch cloth that holds a detached sleeve up, elastic in its upper edge. */
export const sleeveHeadStretch = unit({
  id: 'sleeve-head-stretch',
  name: 'Stretch sleeve head',
  tells: 'Holds a detached sleeve up: stretch cloth with elastic above.',
  group: 'Sleeves and cuffs',
  places: {
    top: {
      kind: 'edges',
      label: 'the top of the sleeve',
      like: ['sleeve.upper', 'upper'],
      ring: true,
    },
  },
  cloths: { main: { label: 'Stretch cloth', stretch: true } },
  fields: {
    arm: asked('Upper arm', '12', '305', 'Round it on the body, where the head holds.'),
    depth: asked('Depth of the head', '3', '75', 'From the sleeve up to where it ends on the shoulder.'),
    elastic: usually('Width of the elastic', '3/4', '20', 'In a casing along the upper edge.'),
    allowance: usually('Seam allowance', '1/4', '6'),
  },
  sketch: [
    curve('faint', 2, 30, 10, 14, 22, 6, 36, 3),
    curve('faint', 36, 3, 54, 0, 68, 4, 74, 14),
    curve('shape', 30, 16, 42, 11, 62, 11, 74, 16),
    curve('stitch', 30, 21, 42, 16, 62, 16, 74, 21),
    line('shape', 30, 16, 29, 38),
    line('shape', 74, 16, 75, 38),
    ...[38, 46, 58, 66].map((x): SketchLine => line('faint', x, 20, x, 40)),
    curve('stitch', 29, 38, 42, 43, 62, 43, 75, 38),
    curve('shape', 29, 38, 6, 46, 8, 76, 36, 86),
    curve('shape', 75, 38, 98, 46, 96, 76, 68, 86),
    line('shape', 36, 86, 68, 86, 68, 95, 36, 95, 36, 86),
    curve('fullness', 38, 43, 34, 50, 31, 56, 30, 64),
    line('fullness', 52, 43, 52, 64),
    curve('fullness', 66, 43, 70, 50, 73, 56, 74, 64),
    curve('fullness', 44, 85, 42, 80, 40, 76, 37, 72),
    curve('fullness', 60, 85, 62, 80, 64, 76, 67, 72),
  ],
  propose: ({ measures }) =>
    measures['upper-arm']
      ? { arm: { value: measures['upper-arm'], because: 'As measured', source: practice } }
      : {},
  build: ({ values, at, cloth, marker, garment, id, name }) => {
    const wrong = sizesFit(values, ['arm', 'depth', 'elastic', 'allowance']);
    if (wrong) return bad(wrong);
    const { arm, depth, elastic, allowance } = values;
    const run = runOf(garment, at.top.chain);
    const taken = turnedUp(garment, run.chain, 'top');
    if (taken) return bad(taken);
    const less = reductions({ gauge: gaugeOf(cloth.main.stretch) });
    if (!less.ok) return bad({ ...less.error, field: 'cloth.main' });
    const round = reduced(arm, less.value.round);
    const fullness = run.length / round;
    if (fullness < 1 || fullness > 6) {
      const wrong =
        fullness < 1
          ? `The top of the sleeve is shorter than the head, which is ${inBothRules(round)} round.`
          : 'The top of the sleeve is more than six times as long as the head.';
      return bad(refusal('at.top', wrong, 'Choose the top of a wider sleeve, or change the upper arm.'));
    }
    return good({
      pieces: [
        pieceOf({
          id: id(),
          name,
          cloth: cloth.main.id,
          cut: run.cut,
          allowance,
          outline: rectangle(round, depth, ['upper', 'front-seam', 'lower', 'back-seam']),
        }),
      ],
      works: [
        ...gathersInto(garment, run.chain, fullness, { id, name, marker }),
        {
          kind: 'casing',
          id: id('casing'),
          name: `Casing of the ${lower(name)}`,
          on: id(),
          along: [edgeOf(id(), 'upper')],
          ring: true,
          turn: casingFor(elastic),
          elastic,
          cut: elasticCut(arm),
        },
      ],
      joins: [
        joinOf({
          id: id('ends'),
          name: `${name} ends`,
          this: [edgeOf(id(), 'front-seam')],
          to: [edgeOf(id(), 'back-seam')],
          seam: 'stretch',
          depth: allowance,
          finish: 'overlock',
        }),
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: run.chain,
          to: [edgeOf(id(), 'lower')],
          seam: 'stretch',
          depth: allowance,
          ring: true,
          worked: 'round',
          finish: 'overlock',
        }),
      ],
      gates: [
        gateOf({
          id: id('try'),
          name: `${name}, with the sleeve on it`,
          after: [id('seam'), id('casing')],
          checks: [
            'The elastic holds without cutting in, also with the arm bent',
            'The head reaches the height where it will be worn',
            'The sleeve stays up when the arm is raised ten times',
            'The gathers lie evenly round the arm',
          ],
        }),
      ],
      advice: [],
      assumed: [
        ...less.value.assumed,
        `The head is cut ${inBothRules(round)} round, smaller than the arm by what the cloth gives.`,
      ],
    });
  },
});
