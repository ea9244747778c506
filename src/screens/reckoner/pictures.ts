import { signal } from '@preact/signals';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { RECKONINGS, reckoningOf } from '../../reckon/all.ts';

/** What a reckoning gives at its starting values, as far as the list needs it. */
interface Sample {
  readonly drawing: PatternSheet | undefined;
  /** Names of its figures, to search in. */
  readonly names: string;
}

/** The samples worked out so far. Inches or millimetres make no difference to a small picture. */
export const samples = signal<ReadonlyMap<string, Sample>>(new Map());

function sample(id: string): Sample {
  try {
    const found = reckoningOf(id)?.reckon({}, 'in');
    if (found?.ok) {
      return { drawing: found.value.drawing, names: found.value.figures.map(({ name }) => name).join(' ') };
    }
  } catch {
    // Without a picture the name still stands there.
  }
  return { drawing: undefined, names: '' };
}

const wanted = new Set<string>();
let running = false;

/** Longest spell of drawing before the screen has its turn again, in ms: half a frame at 60 a second. */
const SPELL_MS = 8;

const whenIdle = (work: () => void): void => {
  if (typeof requestIdleCallback === 'function') requestIdleCallback(work, { timeout: 2000 });
  else setTimeout(work, 16);
};

function work(): void {
  const began = performance.now();
  const found = new Map(samples.value);
  const rest = RECKONINGS.map(({ id }) => id);
  do {
    const next = [...wanted].find((id) => !found.has(id)) ?? rest.find((id) => !found.has(id));
    if (next === undefined) break;
    wanted.delete(next);
    found.set(next, sample(next));
  } while (performance.now() - began < SPELL_MS);
  samples.value = found;
  running = RECKONINGS.some(({ id }) => !found.has(id));
  if (running) whenIdle(work);
}

/** Begins to work out the samples when the page is idle: those in sight first, then all others, for the search. */
export function beginSamples(): void {
  if (running) return;
  running = true;
  whenIdle(work);
}

/** Asks for a sample before the others, because its place is in sight. */
export const wantSample = (id: string): void => void wanted.add(id);
