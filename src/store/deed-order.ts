import type { Deed } from './deed.ts';

/**
 * Where a deed stands among all deeds of its outfit, ms since 1970: its own clock reading, or its `place` when
 * something newer was already in the ledger as it was written.
 */
export const placeOf = (deed: Deed): number => deed.place ?? deed.at;

/**
 * The order of deeds: by place, then by device (code units, not by the language of the page), then by number. It is a
 * total order on names and depends on nothing but the deeds, so two ledgers merged either way round read the same.
 * Negative when `a` goes first, 0 only for the same place, device and number.
 */
export const compareDeeds = (a: Deed, b: Deed): number => {
  const byPlace = placeOf(a) - placeOf(b);
  if (byPlace !== 0) return byPlace;
  if (a.device !== b.device) return a.device < b.device ? -1 : 1;
  return a.seq - b.seq;
};

/**
 * The deeds in their order, each once. A list that is in order already comes back itself, which is the usual case and
 * costs one pass.
 */
export const inOrder = (deeds: readonly Deed[]): readonly Deed[] => {
  let before: Deed | undefined;
  let sorted = true;
  for (const deed of deeds) {
    if (before !== undefined && compareDeeds(before, deed) >= 0) {
      sorted = false;
      break;
    }
    before = deed;
  }
  if (sorted) return deeds;
  const all = [...deeds].sort(compareDeeds);
  return all.filter((deed, i) => {
    const earlier = all[i - 1];
    return earlier === undefined || compareDeeds(earlier, deed) !== 0;
  });
};
