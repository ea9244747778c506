import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import {
  FOOT_FIELDS,
  LEG_FIELDS,
  legField,
  legMeasures,
  legProposed,
} from '../../../src/outfit/units/leg-measures.ts';
import { measured } from './bodies.ts';

test('what the draft refuses stands at the field, or at the cloth, that is meant', () => {
  expect(
    [
      'measures.waistToCrotch',
      'measures.foot',
      'measures.hip',
      'aboveKnee',
      'gauge.round',
      'below.gauge.along',
    ].map(legField),
  ).toEqual(['waist-to-crotch', 'foot-length', 'hip', 'above-knee', 'cloth.main', 'cloth.lower']);
});

test('only what was measured is proposed, and a foot is measured only where there is one', () => {
  expect(legProposed({ hip: mm(990) })).toEqual({
    hip: { value: mm(990), because: 'As measured', source: { kind: 'geometry' } },
  });
  const names = Object.keys({ ...LEG_FIELDS, ...FOOT_FIELDS });
  expect(Object.keys(legProposed(measured.measures))).toEqual(names);
  const values = Object.fromEntries(names.map((name, i) => [name, mm(i + 1)])) as Parameters<
    typeof legMeasures
  >[0];
  expect(legMeasures(values, false)).not.toHaveProperty('foot');
  expect(legMeasures(values, true).foot).toEqual({ length: values['foot-length'], ball: values.ball });
});
