import { readFileSync } from 'node:fs';
import { runningOrder } from '../../src/order/running.ts';
import { costOfFindingLate, type Misfit } from '../../src/order/undoing/late.ts';
import { prepareUndoing, undoingMinutes } from '../../src/order/undoing/undoing.ts';
import type { Alteration } from '../../src/order/undoing/undoing-types.ts';
import type { Garment, Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { ratio } from './ratio.ts';

const outfitOf = (name: string): Outfit => {
  const read = readOutfit(JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
};

/** As many different misfits of a garment as there may be: each piece cut again, then each moved at an edge. */
function misfitsOf(garment: Garment, most: number): readonly Misfit[] {
  const base = { garment: garment.id, side: 'both', say: '' } as const;
  const anew = garment.pieces.map(({ id }): Alteration => ({ ...base, piece: id, how: 'anew', edges: [] }));
  const edges = garment.pieces.flatMap((piece) =>
    piece.outline.edges.map(
      ({ name }): Alteration => ({ ...base, piece: piece.id, how: 'edges', edges: [name] }),
    ),
  );
  return [...anew, ...edges].slice(0, most).map((alteration, i) => ({
    id: `${garment.id} ${i}`,
    name: alteration.piece,
    chance: 0.1,
    alterations: [alteration],
  }));
}

for (const name of ['harbour-clockmaker', 'glasshouse-astronomer', 'plain-shirt']) {
  const outfit = outfitOf(name);
  const running = runningOrder(outfit);
  if (!running.ok) throw new Error(running.error.say);
  const { sequence } = running.value;
  const misfits = outfit.garments.flatMap((garment) => misfitsOf(garment, 12));
  const curve = () => costOfFindingLate(prepareUndoing(outfit, running.value), misfits).points;
  const start = performance.now();
  curve();
  const cold = performance.now() - start;
  console.log(
    `  ${name}: ${sequence.length} steps, ${misfits.length} misfits, all different; first run in this process ${cold.toFixed(1)} ms`,
  );
  ratio(`${name}: cost of finding out late, against asking at every point`, curve, () => {
    const prepared = prepareUndoing(outfit, running.value);
    const done = new Set<string>();
    return sequence.map((step) => {
      done.add(step);
      return misfits.reduce(
        (sum, { chance, alterations }) => sum + chance * undoingMinutes(prepared, alterations, { done }),
        0,
      );
    });
  });
}
