import { advise } from '../../cloth/advice.ts';
import { practice } from '../../cloth/source.ts';
import { add, type Length, nm, times, zero } from '../../length/length.ts';
import { standsForBoth } from '../../outfit/chains.ts';
import { lower } from '../../outfit/lower.ts';
import type { Chain, EdgeRef } from '../../outfit/outfit.ts';
import { edgeLengths } from '../../shape/measure.ts';
import type { MarkSet } from '../card-types.ts';
import type { MarksFound, WorkOf } from './marks.ts';
import { type CardSubject, item, onSide, sidesOf } from './subject.ts';

/** Length of the run that an edge is sewn to: the other chain of its join, on one side. */
export function placeOf(
  on: CardSubject,
  piece: string,
  edge: string,
): { readonly name: string; readonly length: Length } | undefined {
  const is = (ref: EdgeRef) => ref.piece === piece && ref.edge === edge;
  for (const join of on.garment.joins) {
    const caught = join.catches.find((c) => is(c.trim));
    const chain = caught
      ? join[caught.basteTo]
      : join.this.some(is)
        ? join.to
        : join.to.some(is)
          ? join.this
          : undefined;
    if (chain) return { name: lower(join.name), length: chainLength(on, chain) };
  }
  return undefined;
}

/** Length of a chain along the seam line. An edge at the fold that is named by itself counts with its mirror image. */
export function chainLength(on: CardSubject, chain: Chain): Length {
  let length = zero;
  for (const ref of chain) {
    const piece = on.looked.pieces.get(ref.piece);
    if (!piece) continue;
    const one = edgeLengths(piece.outline).get(ref.edge) ?? zero;
    length = add(length, standsForBoth(on.looked, chain, ref) ? times(one, 2) : one);
  }
  return length;
}

/** Quarter or eighth marks on a gathered edge and on its place. */
export function gatherMarks(on: CardSubject, work: WorkOf<'gather'>): MarksFound {
  const { piece } = on;
  const chain: Chain = [{ piece: work.on, edge: work.edge, other: false }];
  const strip = chainLength(on, chain);
  const place = placeOf(on, work.on, work.edge);
  const parts = work.divide;
  const word = parts === 4 ? 'quarter' : 'eighth';
  const inner = Array.from({ length: parts - 1 }, (_, i) => i + 1);
  const set = (side: string, where: string, name: string, from: string, length: Length): MarkSet => ({
    name: onSide(side, piece, name),
    from,
    span: length,
    marks: inner.map((k) => ({
      item: item(side, `${where}-${k}`),
      at: nm((length * k) / parts),
      name: `${word} ${k}`,
    })),
  });
  const sets = sidesOf(on.step).flatMap((side) => [
    set(side, 'strip', `${lower(work.edge.replaceAll('-', ' '))} edge`, 'its seam line at one end', strip),
    ...(place ? [set(side, 'place', `its place in the ${place.name}`, 'where it begins', place.length)] : []),
  ]);
  const fullness = place && place.length > 0 ? strip / place.length : undefined;
  const advice =
    fullness === undefined
      ? []
      : [
          advise(
            `The edge is ${fullness.toFixed(2).replace(/\.?0+$/, '')} times as long as its place: match the marks first, then draw up between them`,
            practice,
          ),
        ];
  return { sets, advice };
}
