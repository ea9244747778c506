import { lower } from '../../outfit/lower.ts';
import type { Cloth, Piece, Work } from '../../outfit/outfit.ts';
import { type Action, the } from './made.ts';
import { atMachine, byHand } from './stations.ts';

/** Steps of a row of buttonholes and its buttons: sample, holes, slits, buttons marked through them. */
export function holeActions(
  work: Extract<Work, { kind: 'buttonholes' }>,
  piece: Piece,
  cloth: Cloth,
): readonly Action[] {
  const it = the(piece);
  const machine = atMachine(cloth);
  const hand = byHand(cloth);
  const where = work.top === 'each' ? it : `the ${work.top} ${lower(piece.name)}`;
  const under =
    work.top === 'each' ? it : `the ${work.top === 'left' ? 'right' : 'left'} ${lower(piece.name)}`;
  const foot = { ...machine, tool: `${machine.tool}, buttonhole foot` };
  return [
    {
      action: 'sample',
      once: true,
      ...foot,
      say: `Sew a sample buttonhole for the ${lower(work.name)}, through the same layers, and try the button in it`,
      minutes: 8,
    },
    {
      action: 'mark',
      station: 'mark',
      say: `Mark ${count(work.count, 'buttonhole')} on ${where}`,
      minutes: 2 + work.count,
      rule: 'sample first',
      because: 'the sample gives the length that is marked',
    },
    {
      action: 'stitch',
      ...foot,
      say: `Stitch ${count(work.count, 'buttonhole')} on ${where}`,
      minutes: 3 * work.count,
    },
    {
      action: 'slit',
      station: 'cut',
      say: `Slit the ${work.count === 1 ? 'buttonhole' : 'buttonholes'} on ${where}`,
      minutes: work.count,
      final: true,
    },
    {
      action: 'mark-buttons',
      station: 'mark',
      say: `Lap ${work.top === 'each' ? 'the ends' : 'the fronts'} and mark the ${work.count === 1 ? 'button' : 'buttons'} through the holes on ${under}`,
      minutes: 1 + work.count,
      rule: 'buttonhole before button',
      because: 'buttons marked through the finished holes always meet them',
    },
    {
      action: 'buttons',
      ...hand,
      say: `Sew ${count(work.count, 'button')} on ${under}`,
      minutes: 4 * work.count,
    },
  ];
}

const count = (n: number, what: string): string => (n === 1 ? `the ${what}` : `${n} ${what}s`);
