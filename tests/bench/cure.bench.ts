import { cure } from '../../src/fitting/cure.ts';
import { entriesFor } from '../../src/fitting/here.ts';
import { leastWork } from '../../src/fitting/least-work.ts';
import type { Puzzle } from '../../src/fitting/puzzle.ts';
import { inches } from '../../src/length/length.ts';
import { orderOf, saw } from '../fitting/at-a-try-on.ts';
import { byBruteForce } from '../fitting/brute-force.ts';
import { panelled } from '../fitting/panelled.ts';
import { demo } from '../outfit/demo-files.ts';
import { ratio } from './ratio.ts';

/** A puzzle with a count of how often it was asked for minutes. */
function counted(puzzle: Puzzle): { readonly puzzle: Puzzle; readonly asked: () => number } {
  let asked = 0;
  const minutes = (ways: readonly string[]) => {
    asked += 1;
    return puzzle.minutes(ways);
  };
  return { puzzle: { ...puzzle, minutes }, asked: () => asked };
}

/** Ways of choosing that trying everything must look at: one way or none of each piece, one cause or none of each thing seen. */
const choicesOf = ({ pieces, seen }: Puzzle): number =>
  pieces.reduce((all, { ways }) => all * (ways.length + 1), 1) *
  seen.reduce((all, { explanations }) => all * (explanations.length + 1), 1);

const table: string[] = ['pieces × seen | choices | exact, ms | brute force, ms | ratio | minutes asked'];
for (const [panels, seen, explanations] of [
  [2, 2, 2],
  [3, 2, 2],
  [3, 3, 2],
  [4, 3, 2],
] as const) {
  const puzzle = panelled(panels, seen, explanations, 7, true);
  const {
    oursMs,
    referenceMs,
    ratio: times,
  } = ratio(
    `${panels} pieces × 3 ways, ${seen} things seen × up to ${explanations} causes, against every choice tried`,
    () => leastWork(puzzle),
    () => byBruteForce(puzzle),
  );
  const count = counted(puzzle);
  leastWork(count.puzzle);
  table.push(
    [
      `${panels} × ${seen}`,
      choicesOf(puzzle),
      oursMs.toPrecision(3),
      referenceMs.toPrecision(3),
      times.toPrecision(2),
      count.asked(),
    ].join(' | '),
  );
}

/** Middle and slowest of many puzzles in ms, and how often minutes were asked for at most. */
function timesOf(
  count: number,
  behind: boolean,
): { readonly middle: number; readonly worst: number; readonly asked: number; readonly choices: number } {
  let [most, choices] = [0, 0];
  const times = Array.from({ length: count }, (_, i) => {
    const { puzzle, asked } = counted(panelled(12, 8, 4, 100 + i, behind));
    const start = performance.now();
    leastWork(puzzle);
    const took = performance.now() - start;
    most = Math.max(most, asked());
    choices = Math.max(choices, choicesOf(puzzle));
    return took;
  }).sort((a, b) => a - b);
  return { middle: times[count >> 1] ?? 0, worst: times.at(-1) ?? 0, asked: most, choices };
}

for (const [name, count, behind] of [
  ['a few wrong panels behind all of it', 60, true],
  ['nothing in common behind it', 20, false],
] as const) {
  const { middle, worst, asked, choices } = timesOf(count, behind);
  console.log(
    `  12 pieces × 3 ways, 8 things seen × up to 4 causes, ${name}, ${count} puzzles: middle ${middle.toPrecision(3)} ms, slowest ${worst.toPrecision(3)} ms, minutes asked at most ${asked} times`,
  );
  table.push(
    `12 × 8, ${name} | ${choices.toExponential(1)} | ${middle.toPrecision(3)} to ${worst.toPrecision(3)} | not tried | | at most ${asked}`,
  );
}
console.log(table.map((line) => `  ${line}`).join('\n'));

/** Whole cures of demonstration garments when all is done: eight things seen at once, as a maker could note them. */
for (const [name, garmentId] of [
  ['harbour-clockmaker', 'shirt'],
  ['harbour-clockmaker', 'sleeves'],
  ['harbour-clockmaker', 'hose'],
  ['plain-shirt', 'shirt'],
  ['glasshouse-astronomer', ''],
] as const) {
  const outfit = demo(name);
  const garment = outfit.garments.find(({ id }) => id === garmentId) ?? outfit.garments[0];
  if (!garment) continue;
  const running = orderOf(outfit);
  const done = running.sequence;
  const reckonable = entriesFor(garment).filter(({ causes }) => causes.some(({ wants }) => wants.length > 0));
  const times: number[] = [];
  // The first of them pays for looking the garment up.
  for (let from = 0; from < reckonable.length; from += 3) {
    const seen = reckonable.slice(from, from + 8).map(({ id }) => saw(garment.id, id, inches(1, 2)));
    const start = performance.now();
    cure(outfit, garment.id, running, seen, { done, id: 'bench' });
    times.push(performance.now() - start);
  }
  const sorted = times.toSorted((a, b) => a - b);
  console.log(
    `  whole cure, ${name} ${garment.id}, ${garment.pieces.length} pieces, 8 things seen, ${times.length} times: the first ${times[0]?.toPrecision(3)} ms, middle ${sorted[times.length >> 1]?.toPrecision(3)} ms, slowest ${sorted.at(-1)?.toPrecision(3)} ms`,
  );
}
