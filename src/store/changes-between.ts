import { type Change, pointerTo } from './describe-change.ts';
import { type Fields, isFields, sameData } from './same-data.ts';

type Way = readonly (string | number)[];
/** By what an entry of a list is known again: its id or its name; nothing for one that has neither. */
const nameOf = (value: unknown): string | undefined => {
  if (!isFields(value)) return undefined;
  if (typeof value.id === 'string') return `#${value.id}`;
  return typeof value.name === 'string' ? `=${value.name}` : undefined;
};

const alike = (a: unknown, b: unknown): boolean => {
  const name = nameOf(a);
  return name === undefined ? sameData(a, b) : name === nameOf(b);
};

/** Past this many comparisons a list is not matched entry by entry but put down whole. */
const MOST = 1_000_000;

/** Which entries of a list are still there, as pairs of places, in order: as many as can be. */
function matches(was: readonly unknown[], now: readonly unknown[]): readonly (readonly [number, number])[] {
  let head = 0;
  while (head < was.length && head < now.length && alike(was[head], now[head])) head += 1;
  let [w, n] = [was.length, now.length];
  while (w > head && n > head && alike(was[w - 1], now[n - 1])) [w, n] = [w - 1, n - 1];
  const found: (readonly [number, number])[] = Array.from({ length: head }, (_, i) => [i, i] as const);
  const [rows, columns] = [w - head, n - head];
  if (rows * columns <= MOST) {
    // Longest common run of entries from each pair of places onwards.
    const long = Array.from({ length: rows + 1 }, () => new Uint16Array(columns + 1));
    const at = (i: number, j: number): number => long[i]?.[j] ?? 0;
    for (let i = rows - 1; i >= 0; i -= 1) {
      for (let j = columns - 1; j >= 0; j -= 1) {
        const row = long[i];
        if (!row) continue;
        row[j] = alike(was[head + i], now[head + j])
          ? at(i + 1, j + 1) + 1
          : Math.max(at(i + 1, j), at(i, j + 1));
      }
    }
    for (let i = 0, j = 0; i < rows && j < columns; ) {
      if (alike(was[head + i], now[head + j])) {
        found.push([head + i, head + j]);
        i += 1;
        j += 1;
      } else if (at(i + 1, j) >= at(i, j + 1)) i += 1;
      else j += 1;
    }
  }
  for (let i = 0; w + i < was.length; i += 1) found.push([w + i, n + i]);
  return found;
}

/**
 * Changes inside an entry that was known again by its id. The id is put down first, as it was and is: where another
 * device has moved the list meanwhile, the changes must not be made to the entry that stands there now.
 */
function ofEntry(way: Way, was: unknown, now: unknown): readonly Change[] {
  const changes = between(way, was, now);
  const whole = changes.some(({ at }) => at === pointerTo(way));
  if (changes.length === 0 || whole || !isFields(was) || typeof was.id !== 'string') return changes;
  return [{ at: pointerTo([...way, 'id']), was: was.id, now: was.id }, ...changes];
}

function betweenLists(way: Way, was: readonly unknown[], now: readonly unknown[]): readonly Change[] {
  const changes: Change[] = [];
  let [w, n] = [0, 0];
  // Everything before place `n` is as it will be; from there on the list still is as it was from `w` on.
  for (const [keptWas, keptNow] of [...matches(was, now), [was.length, now.length] as const]) {
    while (w < keptWas && n < keptNow && !nameOf(was[w]) && !nameOf(now[n])) {
      changes.push(...between([...way, n], was[w], now[n]));
      [w, n] = [w + 1, n + 1];
    }
    for (; w < keptWas; w += 1) changes.push({ at: pointerTo([...way, n]), was: was[w] });
    for (; n < keptNow; n += 1) changes.push({ at: pointerTo([...way, n]), now: now[n] });
    if (keptWas < was.length) changes.push(...ofEntry([...way, n], was[w], now[n]));
    [w, n] = [w + 1, n + 1];
  }
  return changes;
}

/** A pointer may not lead over this name, so what has a field of it is put down whole. */
const unspeakable = (fields: Fields): boolean => Object.hasOwn(fields, '__proto__');

function betweenFields(way: Way, was: Fields, now: Fields): readonly Change[] {
  const changes: Change[] = [];
  for (const [key, value] of Object.entries(was)) {
    if (!Object.hasOwn(now, key)) changes.push({ at: pointerTo([...way, key]), was: value });
  }
  for (const [key, value] of Object.entries(now)) {
    if (Object.hasOwn(was, key)) changes.push(...between([...way, key], was[key], value));
    else changes.push({ at: pointerTo([...way, key]), now: value });
  }
  return changes;
}

function between(way: Way, was: unknown, now: unknown): readonly Change[] {
  if (sameData(was, now)) return [];
  const whole: readonly Change[] = [{ at: pointerTo(way), was, now }];
  let parts: readonly Change[];
  if (Array.isArray(was) && Array.isArray(now)) parts = betweenLists(way, was, now);
  else if (isFields(was) && isFields(now) && !unspeakable(was) && !unspeakable(now)) {
    parts = betweenFields(way, was, now);
  } else return whole;
  return JSON.stringify(parts).length < JSON.stringify(whole).length ? parts : whole;
}

/**
 * The changes that make one description of another: made in this order by `describeChange` they give exactly `now`.
 * Few and small where little differs: entries of a list are known again by their `id` or `name`. Both must be plain
 * data, as a file has it.
 */
export const changesBetween = (was: unknown, now: unknown): readonly Change[] => between([], was, now);
