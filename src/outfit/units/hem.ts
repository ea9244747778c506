import type { Sourced } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { bad, good } from '../../length/result.ts';
import { asked } from './length-field.ts';
import { runOf } from './runs.ts';
import { wave } from './sketch.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/**
 * How long a skirt cut from circles hangs before its hem is levelled, because cloth on the bias drops.
 * @unit hours
 */
export const BIAS_HANGS: Sourced<number> = { value: 24, source: practice };

/** A lower edge turned up. */
export const hem = unit({
  id: 'hem',
  name: 'Hem',
  tells: 'A lower edge levelled and turned up, by machine or by hand.',
  group: 'Finishing',
  fields: {
    turn: asked('Turned up', '5/8', '15', 'All the cloth that is turned, the narrow first turn with it.'),
    by: {
      kind: 'choice',
      label: 'Sewn',
      options: [
        { value: 'machine', label: 'by machine' },
        { value: 'hand', label: 'by hand' },
      ],
      start: 'machine',
    },
    hang: {
      kind: 'number',
      label: 'Hangs first',
      unit: 'hours',
      whole: true,
      start: '0',
      usual: true,
      means: 'How long it hangs before it is levelled; a bias edge drops.',
    },
  },
  places: {
    edges: {
      kind: 'edges',
      label: 'the edge to hem',
      means: 'All round, from one front edge to the other.',
      like: ['hem', 'outer', 'lower'],
      round: true,
    },
  },
  sketch: [
    {
      pen: 'shape',
      points: [
        [14, 14],
        [14, 84],
      ],
    },
    {
      pen: 'shape',
      points: [
        [86, 14],
        [86, 84],
      ],
    },
    {
      pen: 'shape',
      points: [
        [14, 84],
        [86, 84],
      ],
    },
    {
      pen: 'fold',
      points: [
        [14, 66],
        [70, 66],
        [86, 56],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [14, 69],
        [70, 69],
      ],
    },
    {
      pen: 'shape',
      points: [
        [86, 56],
        [70, 66],
        [70, 84],
      ],
    },
    { pen: 'faint', points: wave([14, 14], [86, 14], 3, 3) },
  ],
  propose: ({ at, garment }) => {
    const circles = garment.units.filter((use) => use.unit === 'circle-skirt');
    const hangs = at.edges?.pieces.some((piece) => circles.some(({ brought }) => brought.includes(piece.id)));
    return hangs
      ? {
          hang: {
            value: BIAS_HANGS.value,
            because: 'A skirt of circles drops where it lies on the bias.',
            source: BIAS_HANGS.source,
          },
        }
      : {};
  },
  build: ({ values, at, garment, id, name }) => {
    const { turn, by, hang } = values;
    if (turn <= 0)
      return bad(refusal('turn', 'Nothing is turned up.', 'Write how much, all turns together.'));
    if (hang < 0 || hang > 168)
      return bad(
        refusal('hang', 'It does not hang so long.', 'Write hours, from none to 168, which is a week.'),
      );
    const run = runOf(garment, at.edges.chain);
    const taken = turnedUp(garment, run.chain, 'edges');
    const [first] = run.chain;
    if (taken || !first) return bad(taken ?? refusal('at.edges', 'No edge is there.', 'Choose it again.'));
    return good({
      works: [
        { kind: 'hem', id: id(), name, on: first.piece, along: run.chain, ring: run.ring, turn, by, hang },
      ],
    });
  },
});
