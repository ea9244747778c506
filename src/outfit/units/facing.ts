import type { Sourced } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { geometry, practice } from '../../cloth/source.ts';
import { inches, type Length, shortest } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { crossings, edgeName, lookUp } from '../chains.ts';
import { lower } from '../lower.ts';
import type { EdgeRef, Join, Piece } from '../outfit.ts';
import { looseEdges } from '../raw-edges.ts';
import { facingOutline } from './facing-outline.ts';
import { asked, usually } from './length-field.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { chainLength } from './place.ts';
import { runOf } from './runs.ts';
import { bend } from './sketch.ts';
import { edgeOf } from './sleeve-made.ts';
import { STIFFENING, stiffeningOf } from './stiffening.ts';
import { turnedUp } from './turned-up.ts';
import { unit } from './unit.ts';

/** Width of a facing, where the seams it ends at are long enough. */
export const FACING_WIDTH: Sourced<Length> = { value: inches(5, 2), source: practice };

/** A shaped facing along a neck, a front edge, an armhole: it follows the run and is turned to the inside. */
export const facing = unit({
  id: 'facing',
  name: 'Facing',
  tells: 'A shaped strip along an edge, turned in and tacked.',
  group: 'Finishing',
  fields: {
    width: asked('Finished width', '2 1/2', '65'),
    allowance: usually('Seam allowance', '3/8', '10'),
    ...STIFFENING,
  },
  places: {
    edges: {
      kind: 'edges',
      label: 'the edge to face',
      means: 'A neck, a front edge, an armhole; or a front edge and the neck in one run.',
      like: ['neck', 'opening', 'armhole'],
      round: true,
    },
  },
  sketch: [
    { pen: 'shape', points: bend([22, 12], [30, 62], [70, 62], [78, 12]) },
    {
      pen: 'shape',
      points: [[4, 22], [22, 12], ...bend([22, 12], [32, 22], [68, 22], [78, 12]), [96, 22]],
    },
    { pen: 'fold', points: bend([10, 19], [22, 88], [78, 88], [90, 19]) },
    { pen: 'stitch', points: bend([19, 14], [29, 68], [71, 68], [81, 14]) },
    {
      pen: 'faint',
      points: [
        [4, 22],
        [8, 96],
      ],
    },
    {
      pen: 'faint',
      points: [
        [96, 22],
        [92, 96],
      ],
    },
  ],
  propose: ({ at, garment }) => {
    const { beside } = lookUp(garment);
    const chain = at.edges?.chain ?? [];
    const ends = chain.flatMap((ref) =>
      (beside.get(edgeName(ref)) ?? [])
        .filter(
          (edge) => edge !== 'lap' && !chain.some((one) => one.piece === ref.piece && one.edge === edge),
        )
        .map((edge) => chainLength(garment, [edgeOf(ref.piece, edge)])),
    );
    const room = shortest(FACING_WIDTH.value, ...ends);
    return room === FACING_WIDTH.value
      ? {}
      : { width: { value: room, because: 'As long as the shortest seam it ends at.', source: geometry } };
  },
  build: ({ values, at, cloth, garment, id, name }) => {
    const { width, allowance, stiffening } = values;
    if (width <= 0) return bad(refusal('width', 'The facing has no width.', 'Write a width above zero.'));
    if (allowance <= 0)
      return bad(refusal('allowance', 'A seam needs cloth beyond it.', 'Write more than zero.'));
    const looked = lookUp(garment);
    const run = runOf(garment, at.edges.chain);
    const taken = turnedUp(garment, run.chain, 'edges');
    if (taken) return bad(taken);
    const idOf = (piece: string): string => id(piece);
    const pieces: Piece[] = [];
    for (const faced of at.edges.pieces) {
      const names = new Set(run.chain.filter((ref) => ref.piece === faced.id).map((ref) => ref.edge));
      const outline = facingOutline(faced.outline, names, width);
      if (!outline.ok) return outline;
      const folded = outline.value.edges.some((edge) => edge.name === 'fold');
      pieces.push(
        pieceOf({
          id: idOf(faced.id),
          name: `${faced.name} ${lower(name)}`,
          cloth: cloth.main.id,
          cut: faced.cut === 'fold' && !folded ? 'pair' : faced.cut,
          unit: id(),
          allowance,
          outline: outline.value,
        }),
      );
    }
    const [first] = pieces;
    if (!first) return bad(refusal('at.edges', 'No piece is there.', 'Choose the edge again.'));

    // Where the run crosses a seam, the facings are joined as the pieces they face are.
    const seams = new Map<string, Join>();
    for (const { from, to, over } of crossings(looked, run.chain, run.ring)) {
      for (const under of over) {
        const meets = (ref: EdgeRef): string | undefined =>
          looked.beside
            .get(edgeName(ref))
            ?.find((edge) =>
              [...under.this, ...under.to].some((one) => one.piece === ref.piece && one.edge === edge),
            );
        const [here, there] = [meets(from), meets(to)];
        if (here === undefined || there === undefined || seams.has(under.id)) continue;
        const has = (piece: string, edge: string) =>
          pieces.some(
            (one) => one.id === idOf(piece) && one.outline.edges.some(({ name: each }) => each === edge),
          );
        if (!has(from.piece, here) || !has(to.piece, there))
          return bad(
            refusal(
              'width',
              `It is wider than the ${lower(under.name)} is long.`,
              'Write a narrower facing.',
            ),
          );
        seams.set(
          under.id,
          joinOf({
            id: id(under.id),
            name: `${under.name} of the ${lower(name)}`,
            this: [edgeOf(idOf(from.piece), here)],
            to: [{ ...edgeOf(idOf(to.piece), there), other: from.other !== to.other }],
            depth: allowance,
          }),
        );
      }
    }
    const rest = pieces.slice(1).map((piece) => piece.id);
    const inSeams = new Set([...seams.values()].flatMap((join) => [...join.this, ...join.to]).map(edgeName));
    const free = looseEdges(
      pieces,
      new Set([...inSeams, ...run.chain.map((ref) => `${idOf(ref.piece)}.${ref.edge}`)]),
    );
    const ended = free.some(({ edge }) => edge !== 'outer');
    return good({
      pieces,
      works: [
        ...pieces.flatMap((piece) => stiffeningOf(stiffening, piece)),
        {
          kind: 'own',
          id: id('outer'),
          name: `Free edge of the ${lower(name)}`,
          on: first.id,
          with: rest,
          when: 'flat',
          finishes: free,
          steps: [stepOf(`Overlock the free edges of the ${lower(name)}`, 'overlocker', 6)],
        },
        {
          kind: 'own',
          id: id('understitching'),
          name: `Understitching of the ${lower(name)}`,
          on: first.id,
          with: rest,
          when: 'late',
          steps: [
            stepOf(`Stitch the ${lower(name)} to its seam allowances, close beside the seam`, 'machine', 8),
            stepOf(`Press the ${lower(name)} to the inside, the seam just out of sight`, 'iron', 4),
            stepOf(`Tack the free edge of the ${lower(name)} to the seams it crosses, by hand`, 'hand', 10),
            ...(ended
              ? [stepOf(`Turn the ends of the ${lower(name)} in and sew them down by hand`, 'hand', 6)]
              : []),
          ],
        },
      ],
      joins: [
        ...seams.values(),
        joinOf({
          id: id('seam'),
          name: `${name} seam`,
          this: run.chain,
          to: run.chain.map((ref) => ({ ...ref, piece: idOf(ref.piece) })),
          seam: 'turned',
          depth: allowance,
          ring: run.ring,
          worked: 'round',
        }),
      ],
    });
  },
});
