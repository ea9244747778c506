import { readFileSync } from 'node:fs';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { writeProblem } from '../../src/outfit/problem.ts';
import { readOutfit } from '../../src/outfit/reading.ts';

/** Names of the demonstration files in `demo-data/`. */
export const demos = ['plain-shirt', 'harbour-clockmaker', 'glasshouse-astronomer'] as const;

/** A demonstration as the plain data of its file; a fresh copy each time, so that a test may spoil it. */
export const demoData = (name: (typeof demos)[number]): unknown =>
  JSON.parse(readFileSync(new URL(`../../demo-data/${name}.json`, import.meta.url), 'utf8'));

/** A demonstration, read. */
export function demo(name: (typeof demos)[number]): Outfit {
  const read = readOutfit(demoData(name));
  if (!read.ok) throw new Error(read.error.map((p) => `${p.at}: ${writeProblem(p)}`).join('\n'));
  return read.value;
}
