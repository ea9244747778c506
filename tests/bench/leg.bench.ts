import { stretchLeg } from '../../src/cloth/stretch-leg.ts';
import type { LegInput } from '../../src/cloth/stretch-leg-measures.ts';
import { mm } from '../../src/length/index.ts';
import { flattenOutline } from '../../src/shape/index.ts';
import { ratio } from './ratio.ts';

// The reference only straightens the finished outline, which every drawing of it must do anyway.
const input: LegInput = {
  gauge: {
    round: { rest: mm(100), stretched: mm(180) },
    along: { rest: mm(100), stretched: mm(140) },
  },
  measures: {
    heel: mm(310),
    ankle: mm(220),
    calf: mm(370),
    knee: mm(365),
    thigh: mm(610),
    hip: mm(1000),
    waist: mm(800),
    waistToCrotch: mm(220),
    rise: { front: mm(270), back: mm(330) },
    crotchToKnee: mm(330),
    kneeToFloor: mm(450),
    foot: { length: mm(245), ball: mm(228) },
  },
  footed: true,
};
const made = stretchLeg(input);
if (!made.ok) throw new Error(made.error.wrong);

const { oursMs } = ratio(
  'drafting a leg, against straightening its outline',
  () => stretchLeg(input),
  () => flattenOutline(made.value.outline),
);
if (oursMs > 5) throw new Error(`A leg took ${oursMs.toFixed(2)} ms; 5 ms is the most.`);
