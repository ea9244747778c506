import { advise } from '../../cloth/advice.ts';
import { bindingWidth } from '../../cloth/bias.ts';
import { circleFrill } from '../../cloth/circles.ts';
import { NOTCHES_APART, SHORT_OF_SEAM } from '../../cloth/ease-notches.ts';
import { flounce } from '../../cloth/flounce.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, times, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { OwnStep, Piece, Work } from '../outfit.ts';
import { FINISH_FIELD, FRILL_FIELDS } from './frill.ts';
import { GOES_FIELD, seamToEdge } from './frill-seam.ts';
import { pieceOf, stepOf } from './parts.ts';
import { beyondReason } from './reason.ts';
import { ringPart } from './ring-part.ts';
import { eachOf, runOf } from './runs.ts';
import { bend, wave } from './sketch.ts';
import { edgeOf } from './sleeve-made.ts';
import { unit } from './unit.ts';

/** More circles than this are a slip of the finger, or a frill for a stage curtain. */
const MOST_CIRCLES = 10;
/** Where nobody says how full it is, its outer edge is this many times as long as its seam. */
const FLARE = 2;
/** Hours that cloth cut round hangs before its edge is levelled and hemmed. */
const HANGS = 24;

/** A frill cut from rings: flat at the seam, rippling at its outer edge. */
export const circularFrill = unit({
  id: 'circular-frill',
  name: 'Circular frill',
  tells: 'Cut from rings: no gathers at the seam, ripples at the edge.',
  group: 'Frills',
  places: {
    edge: {
      kind: 'edges',
      label: 'the edge it is sewn to',
      like: ['lower', 'neck', 'hem', 'outer', 'opening'],
    },
  },
  fields: {
    depth: { ...FRILL_FIELDS.depth, start: { in: '3', mm: '75' } },
    circles: {
      kind: 'number',
      optional: true,
      label: 'How many circles',
      means:
        'More circles ripple more; half a circle is 0.5. Empty: the outer edge twice as long as the seam.',
      start: '',
    },
    finish: { ...FINISH_FIELD, start: 'hem' },
    ...GOES_FIELD,
  },
  blame: { seam: 'depth', bottom: 'circles', hem: 'allowance' },
  propose: ({ at, garment }) => seamToEdge.propose(garment, at.edge),
  build: ({ values, at, cloth, garment, id, name }) => {
    const { depth, circles, finish, goes, allowance } = values;
    const beyond = beyondReason({ depth }, allowance);
    if (beyond) return bad(beyond);
    const run = runOf(garment, at.edge.chain);
    const hem = finish === 'hem' ? times(allowance, 1 / 2) : zero;
    if (run.length <= 0) {
      return bad(refusal('at.edge', 'This edge has no length.', 'Choose an edge with one.'));
    }
    if (circles !== undefined && circles > MOST_CIRCLES) {
      const cure = `Give up to ${MOST_CIRCLES}.`;
      return bad(refusal('circles', 'This is more cloth than can be sewn to one edge.', cure));
    }
    const common = { depth, allowance, hem, slit: zero };
    const ringed =
      circles === undefined
        ? flounce({ ...common, top: run.length, bottom: times(run.length, FLARE), closed: goes === 'ring' })
        : circleFrill({ ...common, seam: run.length, circles });
    if (!ringed.ok) return ringed;
    const { radius, outside } = ringed.value;
    const whole = circles ?? run.length / (2 * Math.PI * radius);
    if (whole > MOST_CIRCLES) {
      const cure = 'Make it deeper, or say how many circles.';
      return bad(refusal('circles', `It would take ${Math.ceil(whole)} circles.`, cure));
    }
    // Half circles at the most: they lie close on the cloth, and a seam line never meets itself.
    const count = Math.max(1, Math.ceil(2 * whole - 1e-9));
    const ids = count === 1 ? [id()] : Array.from({ length: count }, (_, i) => id(`${i + 1}`));
    const sewn = seamToEdge.join({ id, name, garment, run, allowance, goes, parts: ids });
    if (!sewn.ok) return sewn;
    const binding = bindingWidth({ kind: 'single', width: inches(1, 4) });
    if (!binding.ok) return binding;

    const outline = ringPart(whole / count, radius, outside);
    const pieces: Piece[] = [];
    const works: Work[] = [];
    for (const [i, on] of ids.entries()) {
      const part = count === 1 ? name : `${name} part ${i + 1}`;
      const of = count === 1 ? id : (work: string) => `${on}-${work}`;
      pieces.push(pieceOf({ id: on, name: part, cloth: cloth.main.id, cut: run.cut, allowance, outline }));
      works.push({ kind: 'stay-stitch', id: of('stay'), name: `${part} stay`, on, edge: 'seam' });
      const clips = `Clip the seam edge of ${eachOf(run.cut, part)} every ${inBothRules(NOTCHES_APART.value[1])}, to ${inBothRules(SHORT_OF_SEAM.value)} from the stay-stitching`;
      works.push({
        kind: 'own',
        id: of('clips'),
        name: `Clips in the ${part.toLowerCase()}`,
        on,
        with: [],
        when: 'flat',
        steps: [stepOf(clips, 'cut', 4, { final: true })],
      });
      if (finish === 'bound') {
        const strip = binding.value.cut;
        works.push({
          kind: 'bind-edge',
          id: of('binding'),
          name: `${part} binding`,
          on,
          edge: 'outer',
          strip,
        });
      }
    }
    const [first = id()] = ids;
    if (goes === 'open') {
      const it = eachOf(run.cut, name);
      const steps: OwnStep[] = [
        stepOf(
          `Turn in both ends of ${it} twice, ${inBothRules(times(allowance, 1 / 2))} each time, and stitch`,
          'machine',
          6,
        ),
      ];
      works.push({
        kind: 'own',
        id: id('turned-ends'),
        name: `Turned ends of the ${name.toLowerCase()}`,
        on: first,
        with: ids.slice(1),
        when: 'flat',
        finishes: [edgeOf(first, 'back-end'), edgeOf(ids.at(-1) ?? first, 'front-end')],
        steps,
      });
    }
    if (finish === 'hem') {
      const along = ids.map((piece) => ({ piece, edge: 'outer', other: false }));
      works.push({
        kind: 'hem',
        id: id('hem'),
        name: `${name} hem`,
        on: first,
        along,
        ring: goes === 'ring',
        turn: hem,
        by: 'machine',
        hang: HANGS,
      });
    }
    return good({
      pieces,
      works,
      joins: sewn.value,
      advice: [
        advise(
          'Round the ring the cloth lies on the bias in places: stay the seam edge before it is handled.',
          practice,
        ),
      ],
      assumed: [
        ...ringed.value.assumed,
        ...(circles === undefined
          ? [`The outer edge is ${FLARE} times as long as the seam: ${Number(whole.toFixed(2))} of a circle.`]
          : []),
        ...(count > 1 ? [`${count} parts of ${Number((whole / count).toFixed(2))} of a circle each.`] : []),
      ],
    });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [36, 4],
        [36, 20],
      ],
    },
    {
      pen: 'faint',
      points: [
        [64, 4],
        [64, 20],
      ],
    },
    { pen: 'shape', points: bend([36, 20], [44, 24], [56, 24], [64, 20]) },
    { pen: 'shape', points: bend([36, 20], [30, 40], [18, 60], [6, 74]) },
    { pen: 'shape', points: bend([64, 20], [70, 40], [82, 60], [94, 74]) },
    { pen: 'shape', points: wave([6, 76], [94, 76], 5, 10) },
    { pen: 'fold', points: bend([42, 24], [38, 44], [30, 60], [24, 72]) },
    { pen: 'fold', points: bend([50, 25], [50, 44], [48, 60], [46, 72]) },
    { pen: 'fold', points: bend([58, 24], [62, 44], [68, 60], [74, 72]) },
  ],
});
