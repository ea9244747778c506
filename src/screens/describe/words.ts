import type { Step } from '../../order/step.ts';
import type { Fallen } from '../../outfit/changing/fallen.ts';
import type { UnitFault } from '../../outfit/changing/units.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';

/** So many of a thing: `1 piece`, `2 pieces`. */
export const so = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** The first letter made a capital. */
export const begun = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

/** What there is of a garment, in one line: `6 pieces, 41 steps`. */
export function garmentWords(garment: Garment, outfit: Outfit, steps: Iterable<Step>): string {
  const wearer = outfit.wearers.find(({ id }) => id === garment.wearer)?.name;
  const count = [...steps].filter((step) => step.garment === garment.id).length;
  return [
    ...(wearer === undefined ? [] : [`for ${wearer}`]),
    garment.pieces.length === 0 ? 'no pieces yet' : so(garment.pieces.length, 'piece'),
    ...(count === 0 ? [] : [so(count, 'step')]),
  ].join(', ');
}

/** Why units could not be made, in words. */
export const unitFaultWords = (faults: readonly UnitFault[]): string =>
  faults.map(({ name, faults: own }) => `${name}: ${own.map(({ say }) => say).join(' ')}`).join(' ');

const KINDS: Readonly<Record<Fallen['kind'], string>> = {
  piece: 'the piece',
  work: 'the work',
  join: 'the join',
  'try-on': 'the try-on',
  unit: 'the whole of',
};

/** Something that goes as well, as it is listed: `the join Collar to neck`. */
export const fallenWords = ({ kind, name }: Fallen): string => `${KINDS[kind]} “${name}”`;
