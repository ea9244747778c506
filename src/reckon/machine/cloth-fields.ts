import type { SewnCloth, Weight } from '../../cloth/needles.ts';
import type { ChoiceField } from '../../fields/fields.ts';

/** How a cloth is made and whether it gives. */
export type Make = 'woven' | 'giving' | 'knit' | 'firm';

const MAKES = [
  { value: 'woven', label: 'woven' },
  { value: 'giving', label: 'woven, stretches' },
  { value: 'knit', label: 'knit' },
  { value: 'firm', label: 'knit, hardly stretches' },
] as const;

const WEIGHTS = [
  { value: 'sheer', label: 'sheer' },
  { value: 'light', label: 'light, as batiste' },
  { value: 'medium', label: 'medium, as poplin' },
  { value: 'heavy', label: 'heavy, as drill' },
  { value: 'very heavy', label: 'very heavy, as canvas' },
] as const;

/** Asks for the weight of a cloth. */
export const WEIGHT_FIELD = {
  kind: 'choice',
  label: 'Cloth',
  options: WEIGHTS,
  start: 'medium',
} as const satisfies ChoiceField<Weight>;

/** Asks how a cloth is made. */
export const MAKE_FIELD = {
  kind: 'choice',
  label: 'How it is made',
  options: MAKES,
  start: 'woven',
} as const satisfies ChoiceField<Make>;

/** Asks for the weight of the other cloth of a seam. */
export const OTHER_WEIGHT_FIELD = {
  kind: 'choice',
  usual: true,
  label: 'Other cloth',
  means: 'The cloth that it is sewn to.',
  options: [{ value: 'same', label: 'the same' }, ...WEIGHTS],
  start: 'same',
} as const satisfies ChoiceField<Weight | 'same'>;

/** Asks how the other cloth of a seam is made. */
export const OTHER_MAKE_FIELD = {
  kind: 'choice',
  usual: true,
  label: 'How the other is made',
  options: [{ value: 'same', label: 'the same' }, ...MAKES],
  start: 'same',
} as const satisfies ChoiceField<Make | 'same'>;

const cloth = (weight: Weight, make: Make): SewnCloth => ({
  weight,
  knit: make === 'knit' || make === 'firm',
  stretches: make === 'giving' || make === 'knit',
});

/** The two cloths of a seam, from what was chosen. */
export function sewnCloths(chosen: {
  readonly weight: Weight;
  readonly make: Make;
  readonly otherWeight: Weight | 'same';
  readonly otherMake: Make | 'same';
}): readonly SewnCloth[] {
  const { weight, make, otherWeight, otherMake } = chosen;
  return [
    cloth(weight, make),
    cloth(otherWeight === 'same' ? weight : otherWeight, otherMake === 'same' ? make : otherMake),
  ];
}
