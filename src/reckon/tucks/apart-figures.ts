import type { TuckMarks } from '../../cloth/tucks.ts';
import { subtract } from '../../length/length.ts';
import type { ReckonedFigure } from '../reckoning.ts';

/** For tucks of one depth: what shows between them, and from fold to fold on the flat cloth. None for a single tuck. */
export function apartFigures(tucks: readonly TuckMarks[]): ReckonedFigure[] {
  const [one, two] = tucks;
  const showing = tucks.find((tuck) => tuck.showing !== undefined)?.showing;
  if (!one || !two || showing === undefined) return [];
  return [
    showing === 0
      ? { kind: 'words', name: 'Showing between tucks', words: 'nothing: each fold just meets the stitching' }
      : { kind: 'length', name: 'Showing between tucks', length: showing },
    { kind: 'length', name: 'Fold to fold, flat', length: subtract(two.fold, one.fold) },
  ];
}
