import type { Demand, Puzzle, Way } from '../../src/fitting/puzzle.ts';
import { sharing } from './puzzles.ts';

/** Numbers that are the same at every run (a linear congruence, textbook). */
function dice(seed: number): (to: number) => number {
  let at = seed;
  return (to) => {
    at = (at * 1103515245 + 12345) % 2147483648;
    return Math.floor((at / 2147483648) * to);
  };
}

const LEVELS = 5;

/**
 * A garment of so many panels side by side, each with five widths and four lengths: it may be cut anew or moved at either
 * side within its allowance. What is seen asks for a width of some panels together at a level, or a length of one.
 *
 * @param behind a few wrong panels are behind all that is seen; else nothing in common is
 */
export function panelled(
  panels: number,
  seen: number,
  explanations: number,
  seed: number,
  behind: boolean,
): Puzzle {
  const roll = dice(seed);
  const own = new Map<string, number>();
  const pieces = Array.from({ length: panels }, (_, p) => {
    const names = Array.from({ length: LEVELS }, (_, l) => `p${p}:w${l}`);
    const lengths = Array.from({ length: LEVELS - 1 }, (_, l) => `p${p}:l${l}`);
    const allowance = 3 + roll(4);
    const ways: readonly Way[] = [
      {
        id: `p${p}/0`,
        bounds: new Map<string, { least: number; most: number }>([
          ...names.map((name) => [name, { least: -60, most: 60 }] as const),
          ...lengths.map((name) => [name, { least: -50, most: 50 }] as const),
        ]),
      },
      ...[1, 2].map((side) => ({
        id: `p${p}/${side}`,
        bounds: new Map(names.map((name) => [name, { least: -15, most: allowance * side }] as const)),
      })),
    ];
    own.set(`p${p}/0`, 120 + roll(120));
    own.set(`p${p}/1`, 20 + roll(40));
    own.set(`p${p}/2`, 25 + roll(40));
    return { piece: `p${p}`, ways };
  });
  const always: Demand[] = [];
  for (let p = 1; p < panels; p += 1)
    for (let l = 0; l < LEVELS - 1; l += 1)
      always.push({
        terms: [
          { unknown: `p${p - 1}:l${l}`, factor: 1 },
          { unknown: `p${p}:l${l}`, factor: -1 },
        ],
        least: -3,
        most: 3,
      });
  const demand = (truth?: ReadonlyMap<string, number>): Demand => {
    const level = roll(LEVELS);
    const from = roll(panels);
    const long = roll(4) === 0 && level < LEVELS - 1;
    const names = long
      ? [`p${from}:l${level}`]
      : Array.from({ length: 1 + roll(3) }, (_, i) => `p${(from + i) % panels}:w${level}`);
    const amount = truth
      ? names.reduce((all, name) => all + (truth.get(name) ?? 0), 0)
      : (roll(2) === 0 ? -1 : 1) * (5 + roll(20));
    return { terms: names.map((unknown) => ({ unknown, factor: 1 })), least: amount - 3, most: amount + 3 };
  };
  // A few panels are truly too narrow or too wide; everything seen comes from that, though other causes are thinkable.
  const truth = new Map<string, number>();
  for (let i = 0; i < 3; i += 1) {
    const p = roll(panels);
    const by = (roll(2) === 0 ? -1 : 1) * (6 + roll(14));
    for (let l = 0; l < LEVELS; l += 1) truth.set(`p${p}:w${l}`, by);
  }
  /** A sum that the truth changes, where one comes up soon. */
  const telling = (): Demand => {
    let one = demand(truth);
    for (let i = 0; i < 20 && one.least < 0 && one.most > 0; i += 1) one = demand(truth);
    return one;
  };
  return {
    pieces,
    seen: Array.from({ length: seen }, (_, s) => ({
      id: `s${s}`,
      explanations: Array.from({ length: 1 + roll(explanations) }, (_, e) => ({
        id: `c${e}`,
        demands: Array.from({ length: 1 + roll(2) }, () => (e === 0 && behind ? telling() : demand())),
        minutes: roll(6) === 0 ? 20 : 0,
      })),
    })),
    always,
    minutes: sharing(own, 10),
    surely: new Map([...own].map(([way, minutes]) => [way, minutes - 20])),
  };
}
