import { advise } from '../../cloth/advice.ts';
import { bindingWidth } from '../../cloth/bias.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { subtract, times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import type { Join, Work } from '../outfit.ts';
import { edgeOn } from './collar.ts';
import { GOES_FIELD } from './frill-seam.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { beyondReason } from './reason.ts';
import { strip } from './rectangle.ts';
import { runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { unit } from './unit.ts';

/** A neck edge finished with a strip cut on the bias. */
export const biasBoundNeck = unit({
  id: 'bias-bound-neck',
  name: 'Bias-bound neck',
  tells: 'A neck edge finished with a bias strip, inside only or round the edge.',
  group: 'Neck and collar',
  places: {
    neck: {
      kind: 'edges',
      round: true,
      label: 'the neck edge',
      means: 'Any edge that is finished so: a neck, an armhole.',
      like: ['neck', 'armhole'],
    },
  },
  fields: {
    shows: {
      kind: 'choice',
      label: 'The strip',
      options: [
        { value: 'inside', label: 'is turned inside, out of sight' },
        { value: 'round', label: 'goes round the edge and shows' },
      ],
      start: 'inside',
    },
    width: {
      kind: 'length',
      label: 'Finished width',
      means: 'Of the strip, as it shows outside or lies inside.',
      start: { in: '1/2', mm: '12' },
    },
    turn: {
      kind: 'length',
      usual: true,
      label: 'Turning',
      means: 'Of the strip on either side, and the depth of its seam.',
      start: { in: '1/4', mm: '6' },
    },
    goes: GOES_FIELD.goes,
  },
  propose: ({ at, garment }) =>
    at.neck && runOf(garment, at.neck.chain).ring
      ? { goes: { value: 'ring', because: 'Its seams close this edge into a ring', source: geometry } }
      : {},
  build: ({ values, at, cloth, garment, id, name }) => {
    const { shows, width, turn, goes } = values;
    const run = runOf(garment, at.neck.chain);
    const beyond = beyondReason({ width });
    if (beyond) return bad(beyond);
    const ring = goes === 'ring';
    if (run.length <= 0)
      return bad(refusal('at.neck', 'This edge has no length.', 'Choose an edge with one.'));
    if (ring && !run.ring) {
      const cure = 'Sew the seam that closes it first, or let it go from end to end.';
      return bad(refusal('goes', 'No seam closes this edge into a ring.', cure));
    }
    const made = bindingWidth({ kind: shows === 'inside' ? 'facing' : 'single', width, turn });
    if (!made.ok) return made;
    const { cut } = made.value;
    const on = id();
    const works: Work[] = [
      {
        kind: 'press-edge',
        id: id('turning'),
        name: `Turned-in edge of the ${name.toLowerCase()}`,
        on,
        edge: 'lower',
        turn,
      },
    ];
    const joins: Join[] = [
      joinOf({
        id: id('seam'),
        name: `${name} seam`,
        this: run.chain,
        to: [edgeOn(on, 'upper')],
        seam: 'bound',
        depth: turn,
        ring,
        worked: run.worked,
      }),
    ];
    if (ring) {
      joins.unshift(
        joinOf({
          id: id('ends'),
          name: `${name} ends`,
          this: [edgeOn(on, 'right-end')],
          to: [edgeOn(on, 'left-end')],
          depth: turn,
        }),
      );
    } else {
      const steps = [stepOf(`Press in both ends of the bias strip, ${inBothRules(turn)}`, 'iron', 2)];
      works.push({
        kind: 'own',
        id: id('ends'),
        name: `Turned-in ends of the ${name.toLowerCase()}`,
        on,
        with: [],
        when: 'flat',
        finishes: [edgeOn(on, 'right-end'), edgeOn(on, 'left-end')],
        steps,
      });
    }
    return good({
      pieces: [
        pieceOf({
          id: on,
          name: `${name} strip`,
          cloth: cloth.main.id,
          cut: run.cut,
          allowance: turn,
          grain: 45,
          outline: strip(run.length, subtract(cut, times(turn, 2))),
        }),
      ],
      works,
      joins,
      advice: [
        advise(
          'Press the strip into the curve of the edge before it is sewn on, and stretch it a little on hollow curves.',
          practice,
        ),
      ],
      assumed: [
        `The strip is cut ${inBothRules(cut)} wide, on the bias.`,
        ...(shows === 'round'
          ? [
              'The finished edge lies beyond the seam by the width of the strip: cut the edge lower where it must not rise.',
            ]
          : []),
      ],
    });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [26, 12],
        [4, 24],
      ],
    },
    {
      pen: 'faint',
      points: [
        [74, 12],
        [96, 24],
      ],
    },
    { pen: 'shape', points: bend([26, 12], [26, 78], [74, 78], [74, 12]) },
    { pen: 'shape', points: bend([18, 15], [18, 90], [82, 90], [82, 15]) },
    { pen: 'stitch', points: bend([20, 14], [20, 87], [80, 87], [80, 14]) },
    { pen: 'shape', points: bend([26, 12], [36, 22], [64, 22], [74, 12]) },
    ...[0.2, 0.35, 0.5, 0.65, 0.8].map((t) => {
      const inner = bend([26, 12], [26, 78], [74, 78], [74, 12], 100)[Math.round(t * 100)] ?? [50, 60];
      const outer = bend([18, 15], [18, 90], [82, 90], [82, 15], 100)[Math.round(t * 100 + 4)] ?? [50, 70];
      return { pen: 'fold' as const, points: [inner, outer] };
    }),
  ],
});
