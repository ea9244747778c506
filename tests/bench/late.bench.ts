import { readFileSync } from 'node:fs';
import { likelyMisfits } from '../../src/fitting/misfits.ts';
import { runningOrder } from '../../src/order/running.ts';
import { costOfFindingLate } from '../../src/order/undoing/late.ts';
import { prepareUndoing, undoingMinutes } from '../../src/order/undoing/undoing.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { ratio } from './ratio.ts';

const outfitOf = (name: string): Outfit => {
  const read = readOutfit(JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
};

for (const name of ['harbour-clockmaker', 'glasshouse-astronomer', 'plain-shirt']) {
  const outfit = outfitOf(name);
  const running = runningOrder(outfit);
  if (!running.ok) throw new Error(running.error.say);
  const { sequence } = running.value;
  const begin = performance.now();
  const misfits = outfit.garments.flatMap((garment) => likelyMisfits(garment, [], 0));
  const listed = performance.now() - begin;
  const curve = () => costOfFindingLate(prepareUndoing(outfit, running.value), misfits).points;
  const start = performance.now();
  curve();
  const cold = performance.now() - start;
  console.log(
    `  ${name}: ${sequence.length} steps, ${misfits.length} misfits, listed in ${listed.toFixed(1)} ms; first run of the curve in this process ${cold.toFixed(1)} ms`,
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
