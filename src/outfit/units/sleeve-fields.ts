import type { NumberField } from '../../fields/fields.ts';
import { usually } from './length-field.ts';

/** A field for how many times something a gathered edge is long. */
export const timesField = (label: string, start: string, means: string): NumberField => ({
  kind: 'number',
  label,
  unit: 'times',
  start,
  means,
});

/** How a sleeve is held up. */
export const HELD_BY = {
  kind: 'choice',
  label: 'Worn',
  options: [
    { value: 'armhole', label: 'set into an armhole' },
    { value: 'elastic', label: 'detached, elastic at its top' },
    { value: 'head', label: 'detached, its top left for a stretch head' },
  ],
  start: 'elastic',
} as const;

/** Where a sleeve is put; one that is worn detached does without. */
export const ARMHOLE = {
  kind: 'edges',
  label: 'the armhole',
  means: 'Front first, then back. Leave it out for a detached sleeve.',
  like: ['armhole'],
  ring: true,
  optional: true,
} as const;

/** In which state of the garment a sleeve is set in. */
export const SETTING = {
  kind: 'choice',
  label: 'Set in',
  usual: true,
  options: [
    { value: 'round', label: 'in the round, once side and sleeve seams are sewn' },
    { value: 'flat', label: 'flat, before the side seam' },
  ],
  start: 'round',
} as const;

/** Figures that every sleeve has and few makers change. */
export const SLEEVE_USUAL = {
  elastic: usually('Width of the elastic', '3/8', '10', 'Where elastic holds it.'),
  cuffDepth: usually('Depth of the cuff', '2 1/2', '65', 'Where a cuff follows; it is part of the length.'),
  opening: usually('Opening above the cuff', '2 1/2', '65', 'Left in the sleeve seam, where a cuff follows.'),
  allowance: usually('Seam allowance', '1/2', '12'),
} as const;
