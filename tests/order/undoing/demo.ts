import { readFileSync } from 'node:fs';
import type { Running } from '../../../src/order/running-types.ts';
import { type Prepared, prepareUndoing } from '../../../src/order/undoing/undoing.ts';
import type { Alteration, Undoing } from '../../../src/order/undoing/undoing-types.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import { order } from '../make.ts';

/** An outfit of the demonstrations. */
export function demo(name: string): Outfit {
  const read = readOutfit(JSON.parse(readFileSync(`demo-data/${name}.json`, 'utf8')));
  if (!read.ok) throw new Error(`${name} cannot be read`);
  return read.value;
}

/** An outfit with its order, looked up. */
export function prepared(of: Outfit): { outfit: Outfit; running: Running; prepared: Prepared } {
  const running = order(of);
  return { outfit: of, running, prepared: prepareUndoing(of, running) };
}

/** All steps up to one, with it. */
export function upTo({ sequence }: Running, step: string): readonly string[] {
  const place = sequence.indexOf(step);
  if (place < 0) throw new Error(`no step ${step}`);
  return sequence.slice(0, place + 1);
}

export const anew = (garment: string, piece: string, extra: Partial<Alteration> = {}): Alteration => ({
  garment,
  piece,
  how: 'anew',
  edges: [],
  side: 'both',
  say: '',
  ...extra,
});

export const moved = (garment: string, piece: string, ...edges: readonly string[]): Alteration => ({
  ...anew(garment, piece),
  how: 'edges',
  edges,
});

/** What is done again, without the garment. */
export const againIn = (u: Undoing): readonly string[] =>
  u.rework.again.map(({ step, only }) => `${step.slice(step.indexOf('/') + 1)}${only ? `, ${only}` : ''}`);
