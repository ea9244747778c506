import { describe, expect, test } from 'vitest';
import { add, type Length, mm, times, toMm } from '../../src/length/length.ts';
import { edgeName, spell } from '../../src/outfit/chains.ts';
import type { Chain, Garment } from '../../src/outfit/outfit.ts';
import { rawEdges } from '../../src/outfit/raw-edges.ts';
import { edgeLengths } from '../../src/shape/measure.ts';
import { demo, demos } from './demo-files.ts';

const CLOSE = mm(3);

const lengthsIn = (garment: Garment) => {
  const lengths = new Map<string, Length>(
    garment.pieces.flatMap((piece) =>
      [...edgeLengths(piece.outline)].map(([edge, length]) => [`${piece.id}.${edge}`, length] as const),
    ),
  );
  const of = (chain: Chain) => add(...chain.map((ref) => lengths.get(edgeName(ref))!));
  return of;
};

describe.each(demos)('%s', (name) => {
  const outfit = demo(name);

  test('says that it is invented', () => {
    expect(outfit.invented).toBe(true);
    expect(outfit.about).toMatch(/invented/);
    expect(outfit.event.name).toMatch(/invented/);
  });

  test('leaves no edge raw when all is done', () => {
    expect(outfit.garments.flatMap((garment) => rawEdges(garment).map(spell))).toEqual([]);
  });

  test('edges that are sewn together are equally long, and a gathered edge is as much longer as it says', () => {
    for (const garment of outfit.garments) {
      const of = lengthsIn(garment);
      const fullness = (chain: Chain) => {
        const work = garment.works.find(
          (w) => w.kind === 'gather' && chain.some((ref) => ref.piece === w.on && ref.edge === w.edge),
        );
        return work?.kind === 'gather' ? work.fullness : 1;
      };
      for (const join of garment.joins) {
        const pairs: (readonly [Chain, Chain])[] = [
          [join.this, join.to],
          ...join.catches.map((c) => [[c.trim], c.basteTo === 'this' ? join.this : join.to] as const),
          ...(join.cover ? [[[join.cover], join.to] as const] : []),
        ];
        for (const [a, b] of pairs) {
          const off = times(of(a), fullness(b)) - times(of(b), fullness(a));
          const what = `${garment.name}, ${join.name}: ${a.map(spell)} and ${b.map(spell)}`;
          expect(Math.abs(off), `${what} differ by ${toMm(mm(off / 1e6))} mm`).toBeLessThanOrEqual(CLOSE);
        }
      }
    }
  });

  test('a folded piece has its fold on x = 0 and the rest to the right of it', () => {
    for (const piece of outfit.garments.flatMap((garment) => garment.pieces)) {
      if (piece.cut !== 'fold') continue;
      let from = piece.outline.start;
      for (const edge of piece.outline.edges) {
        const to = edge.segments.at(-1)!.to;
        if (edge.name === 'fold') expect([from.x, to.x]).toEqual([0, 0]);
        expect(to.x, `${piece.name}, ${edge.name}`).toBeGreaterThanOrEqual(0);
        from = to;
      }
    }
  });
});
