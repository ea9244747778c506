import { readFileSync } from 'node:fs';
import type { LegMeasures } from '../../src/cloth/stretch-leg-measures.ts';
import { mm } from '../../src/length/index.ts';

const text = readFileSync(new URL('./data/body-sample.csv', import.meta.url), 'utf8');
const [head = '', ...lines] = text.trim().split(/\r?\n/);
const names = head.split(',');

/** One person of the survey; lengths in millimetres. */
export interface Body {
  readonly name: string;
  readonly sex: string;
  readonly at: (column: string) => number;
}

export const bodies: readonly Body[] = lines.map((line) => {
  const cells = line.split(',');
  const cell = (column: string): string => cells[names.indexOf(column)] ?? '';
  return {
    name: `${cell('sex')} ${cell('subjectid')}`,
    sex: cell('sex'),
    at: (column) => {
      const value = Number(cell(column));
      if (!(value > 0)) throw new Error(`no ${column} for ${cell('subjectid')}`);
      return value;
    },
  };
});

/**
 * The survey's columns as measures of a leg. It has no girth of the knee: 118 mm + 0.360 of the lower thigh + 0.271 of
 * the calf stands in, least squares over 175 young women (Johnson 2021, computed from the rows). Waist is at the navel, thigh at the gluteal
 * furrow, hip at the buttock, crotch length from navel level to navel level.
 */
export const legOf = ({ at }: Body): LegMeasures => ({
  heel: mm(at('heelanklecircumference')),
  ankle: mm(at('anklecircumference')),
  calf: mm(at('calfcircumference')),
  knee: mm(118 + 0.36 * at('lowerthighcircumference') + 0.271 * at('calfcircumference')),
  lowerThigh: mm(at('lowerthighcircumference')),
  thigh: mm(at('thighcircumference')),
  hip: mm(at('buttockcircumference')),
  waist: mm(at('waistcircumference')),
  waistToCrotch: mm(at('waistheightomphalion') - at('crotchheight')),
  crotchToHip: mm(at('buttockheight') - at('crotchheight')),
  rise: {
    front: mm(at('crotchlengthomphalion') - at('crotchlengthposterioromphalion')),
    back: mm(at('crotchlengthposterioromphalion')),
  },
  crotchToKnee: mm(at('crotchheight') - at('kneeheightmidpatella')),
  kneeToFloor: mm(at('kneeheightmidpatella')),
  foot: { length: mm(at('footlength')), ball: mm(at('balloffootcircumference')) },
});
