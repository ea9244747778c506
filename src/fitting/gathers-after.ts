import { type Length, nm } from '../length/length.ts';
import { edgeName, lookUp, standsForBoth } from '../outfit/chains.ts';
import type { Chain, Garment, Work } from '../outfit/outfit.ts';
import { edgeLengths } from '../shape/measure.ts';

type Gather = Extract<Work, { readonly kind: 'gather' }>;

/** Drawn length of a run of edges. */
function measurer(garment: Garment): (chain: Chain) => Length {
  const looked = lookUp(garment);
  const lengths = new Map<string, Length>(
    garment.pieces.flatMap((piece) =>
      [...edgeLengths(piece.outline)].map(([edge, long]) => [`${piece.id}.${edge}`, long] as const),
    ),
  );
  return (chain) =>
    nm(
      chain.reduce(
        (sum, ref) => sum + (lengths.get(edgeName(ref)) ?? 0) * (standsForBoth(looked, chain, ref) ? 2 : 1),
        0,
      ),
    );
}

/** The run that an edge is gathered into, and the run that it is part of. */
function gatheredInto(
  garment: Garment,
  { on, edge }: Gather,
): { readonly own: Chain; readonly into: Chain } | undefined {
  const holds = (chain: Chain): boolean => chain.some((ref) => ref.piece === on && ref.edge === edge);
  for (const join of garment.joins) {
    if (holds(join.this)) return { own: join.this, into: join.to };
    if (holds(join.to)) return { own: join.to, into: join.this };
    const caught = join.catches.find(({ trim }) => holds([trim]));
    if (caught) return { own: [caught.trim], into: caught.basteTo === 'this' ? join.this : join.to };
  }
  return undefined;
}

/** The changed garment with its gathers drawn up to the places as long as they are now: their fullness is what follows. */
export function gathersAfter(before: Garment, after: Garment): Garment {
  const [was, is] = [measurer(before), measurer(after)];
  const works = after.works.map((work): Work => {
    const found = work.kind === 'gather' ? gatheredInto(after, work) : undefined;
    if (work.kind !== 'gather' || !found) return work;
    const { own, into } = found;
    const [first, now] = [was(own) / was(into), is(own) / is(into)];
    return Number.isFinite(first) && first > 0 && Number.isFinite(now) && Math.abs(now / first - 1) > 1e-9
      ? { ...work, fullness: Math.round(((work.fullness * now) / first) * 1e4) / 1e4 }
      : work;
  });
  return { ...after, works };
}

/** Gathers that come out fuller or less full, each in words: `Lower gathers 2.38 times as long as their place instead of 2.5`. */
export function regathered(before: Garment, after: Garment): readonly { work: string; say: string }[] {
  const was = new Map(
    before.works.flatMap((one) => (one.kind === 'gather' ? [[one.id, one.fullness] as const] : [])),
  );
  return after.works.flatMap((one) => {
    const from = one.kind === 'gather' ? was.get(one.id) : undefined;
    if (one.kind !== 'gather' || from === undefined || from === one.fullness) return [];
    const [times, instead] = [from, one.fullness].map((full) => full.toFixed(2).replace(/\.?0+$/, ''));
    // What rounds to the same is drawn up as before.
    return times === instead
      ? []
      : [{ work: one.id, say: `${one.name} ${instead} times as long as their place instead of ${times}` }];
  });
}
