import { readFileSync } from 'node:fs';
import type { Garment } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';

/** A garment of a demonstration outfit. */
export function demo(file: string, garment: string): Garment {
  const read = readOutfit(
    JSON.parse(readFileSync(new URL(`../../demo-data/${file}.json`, import.meta.url), 'utf8')),
  );
  const found = read.ok ? read.value.garments.find(({ id }) => id === garment) : undefined;
  if (!found) throw new Error(`${file} has no ${garment}`);
  return found;
}

/** Every garment of the demonstrations that is fitted. */
export const FITTED: readonly (readonly [string, string])[] = [
  ['harbour-clockmaker', 'shirt'],
  ['harbour-clockmaker', 'sleeves'],
  ['harbour-clockmaker', 'hose'],
  ['glasshouse-astronomer', 'ballgown'],
  ['plain-shirt', 'shirt'],
];
