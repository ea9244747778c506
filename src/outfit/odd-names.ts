import { type Problem, pointer } from './problem.ts';

/**
 * Names of fields that mean something to the language itself. Whatever reads a file by names passes over them without a
 * word, so what stands there would be lost.
 */
const isOdd = (name: string): boolean => name === 'prototype' || name in Object.prototype;

const CURE = 'leave it out, or give it another name';

/** Every field in the data of a file that bears a name which cannot be kept. */
export function oddNames(raw: unknown): readonly Problem[] {
  const found: Problem[] = [];
  const left: { readonly part: unknown; readonly way: readonly string[] }[] = [{ part: raw, way: [] }];
  for (let here = left.pop(); here; here = left.pop()) {
    const { part, way } = here;
    if (typeof part !== 'object' || part === null) continue;
    const list = Array.isArray(part);
    for (const [name, inner] of Object.entries(part)) {
      const odd = !list && isOdd(name);
      if (!odd && typeof inner !== 'object') continue;
      const at = [...way, name];
      if (odd)
        found.push({ at: pointer(at), wrong: `\`${name}\` cannot be the name of a field`, cure: CURE });
      left.push({ part: inner, way: at });
    }
  }
  return found;
}
