import { geometry } from '../../cloth/source.ts';
import type { LegMeasures } from '../../cloth/stretch-leg-measures.ts';
import type { Length } from '../../length/length.ts';
import { MEASURES, type MeasureId } from '../measures.ts';
import type { Wearer } from '../outfit.ts';
import { asked } from './length-field.ts';
import type { Proposal } from './unit.ts';

const taken = (id: MeasureId, inch: string, metric: string) => {
  const measure = MEASURES.find((one) => one.id === id);
  return asked(measure?.name ?? id, inch, metric, measure?.how);
};

/** Measures of a leg, each called as the body’s; what stands there first is an invented wearer of middle size. */
export const LEG_FIELDS = {
  waist: taken('waist', '32', '800'),
  hip: taken('hip', '40', '1000'),
  thigh: taken('thigh', '24', '610'),
  knee: taken('knee', '14 1/2', '365'),
  calf: taken('calf', '14 1/2', '370'),
  ankle: taken('ankle', '8 3/4', '220'),
  heel: taken('heel', '12 1/4', '310'),
  'waist-to-crotch': taken('waist-to-crotch', '10', '250'),
  rise: taken('rise', '24', '600'),
  'crotch-to-knee': taken('crotch-to-knee', '13', '330'),
  'knee-to-floor': taken('knee-to-floor', '17 3/4', '450'),
} as const;

/** Measures of a foot, needed only where the leg has one. */
export const FOOT_FIELDS = {
  'foot-length': { ...taken('foot-length', '9 1/2', '245'), usual: true },
  ball: { ...taken('ball', '9 1/4', '235'), usual: true },
} as const;

type Name = keyof typeof LEG_FIELDS | keyof typeof FOOT_FIELDS;

/** The figures of a leg as they were measured on the wearer. */
export function legProposed(measures: Wearer['measures']): Partial<Record<Name, Proposal>> {
  const found: Partial<Record<Name, Proposal>> = {};
  for (const name of Object.keys({ ...LEG_FIELDS, ...FOOT_FIELDS }) as Name[]) {
    const value = measures[name];
    if (value !== undefined) found[name] = { value, because: 'As measured', source: geometry };
  }
  return found;
}

/** The measures as the draft takes them. */
export const legMeasures = (values: Readonly<Record<Name, Length>>, footed: boolean): LegMeasures => ({
  waist: values.waist,
  hip: values.hip,
  thigh: values.thigh,
  knee: values.knee,
  calf: values.calf,
  ankle: values.ankle,
  heel: values.heel,
  waistToCrotch: values['waist-to-crotch'],
  rise: { whole: values.rise },
  crotchToKnee: values['crotch-to-knee'],
  kneeToFloor: values['knee-to-floor'],
  ...(footed && { foot: { length: values['foot-length'], ball: values.ball } }),
});

/** The field, or the cloth, that a refusal of the draft means. */
export function legField(field: string): string {
  if (field.startsWith('below.')) return 'cloth.lower';
  if (/^(gauge|share)/.test(field)) return 'cloth.main';
  const name = field.replace(/^measures\./, '');
  return name === 'foot' ? 'foot-length' : name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}
