import { published } from '../../cloth/source.ts';
import type { Cloth, Piece, Work } from '../../outfit/outfit.ts';
import { type Action, the } from './made.ts';
import { atMachine } from './stations.ts';

type Tucks = Extract<Work, { kind: 'tucks' }>;
type CrossedTucks = Extract<Work, { kind: 'crossed-tucks' }>;

const crossed = published(
  'Dress Making, Trade Practical',
  'c. 2024',
  'National Instructional Media Institute, p. 207',
);

/** Steps of one family of tucks. */
export function tuckActions(work: Tucks, piece: Piece, cloth: Cloth): readonly Action[] {
  const it = the(piece);
  const machine = atMachine(cloth);
  const n = work.family.depths.length;
  return [
    {
      action: 'mark',
      station: 'mark',
      say: `Mark ${n} ${n === 1 ? 'tuck' : 'tucks'} on ${piece.cut === 'fold' ? 'each side of ' : ''}${it}`,
      minutes: 2 + 1.5 * n,
    },
    {
      action: 'pin',
      station: 'pin',
      say: `Fold on each mark and pin the tucks of ${it}`,
      minutes: 1.5 * n,
    },
    { action: 'stitch', ...machine, say: `Stitch the tucks of ${it}`, minutes: 2 * n },
    {
      action: 'press',
      station: 'iron',
      say: `Press the tucks of ${it} ${work.family.pressed === 'away' ? 'away from' : 'toward'} the ${work.from} edge`,
      minutes: 1 + 0.5 * n,
      because: 'tucks are stitched before they are pressed to one side',
    },
  ];
}

/** Steps of two families: one way, pressed, then the other. */
export function crossedActions(work: CrossedTucks, piece: Piece, cloth: Cloth): readonly Action[] {
  const it = the(piece);
  const machine = atMachine(cloth);
  const [a, b] = work.families;
  return [
    {
      action: 'mark',
      station: 'mark',
      say: `Mark both directions of tucks on ${it}`,
      minutes: 4 + 1.5 * (a.depths.length + b.depths.length),
    },
    {
      action: 'pin-1',
      station: 'pin',
      say: `Fold and pin all tucks of the first direction on ${it}`,
      minutes: 1.5 * a.depths.length,
    },
    {
      action: 'stitch-1',
      ...machine,
      say: `Stitch all ${a.depths.length} tucks of the first direction on ${it}`,
      minutes: 2 * a.depths.length,
    },
    {
      action: 'press-1',
      station: 'iron',
      say: `Press the first direction flat on ${it}, all one way`,
      minutes: 1 + 0.5 * a.depths.length,
    },
    {
      action: 'pin-2',
      station: 'pin',
      say: `Fold and pin the tucks of the second direction on ${it}`,
      minutes: 1.5 * b.depths.length,
      rule: 'one way, press, then the other',
      because:
        'all tucks of one direction are stitched and pressed flat before the other direction crosses them',
      source: crossed,
    },
    {
      action: 'stitch-2',
      ...machine,
      say: `Stitch all ${b.depths.length} tucks of the second direction on ${it}`,
      minutes: 2 * b.depths.length,
    },
    {
      action: 'press-2',
      station: 'iron',
      say: `Press the second direction flat on ${it}`,
      minutes: 1 + 0.5 * b.depths.length,
    },
  ];
}
