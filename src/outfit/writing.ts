import type { Outfit } from './outfit.ts';

/** A description as its file spells it: read again it gives exactly the same outfit. What is usual is left out. */
export function writeOutfit(_outfit: Outfit): Readonly<Record<string, unknown>> {
  throw new Error('not yet');
}

/** The whole file, as text. */
export function writeOutfitFile(_outfit: Outfit): string {
  throw new Error('not yet');
}
