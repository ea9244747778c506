import { expect, test } from 'vitest';
import { mm } from '../../../src/length/index.ts';
import { allowancesFit, legInput, MEASURE_FIELDS } from '../../../src/reckon/legs/leg-fields.ts';
import { made } from '../../cloth/good.ts';

const measured = {
  waist: mm(800),
  hip: mm(1000),
  thigh: mm(610),
  knee: mm(365),
  calf: mm(370),
  ankle: mm(220),
  heel: mm(310),
  waistToCrotch: mm(220),
  rise: mm(600),
  crotchToKnee: mm(330),
  kneeToFloor: mm(450),
  stretchRound: 80,
  stretchAlong: 0,
};

test('measures go to the draft under their own names, and the rise whole', () => {
  const { measures, gauge, opening, other, footed } = made(legInput(measured));
  expect(measures).toMatchObject({ waist: mm(800), heel: mm(310), rise: { whole: mm(600) } });
  expect(gauge).toEqual({
    round: { rest: mm(100), stretched: mm(180) },
    along: { rest: mm(100), stretched: mm(100) },
  });
  expect([opening, other, footed]).toEqual([{ ankle: false, waist: false }, {}, false]);
  expect(measures).not.toHaveProperty('lowerThigh');
});

test('what may be left empty is passed on where it is given', () => {
  const full = made(
    legInput({
      ...measured,
      hipHeight: mm(80),
      otherCalf: mm(381),
      opening: 'both',
      footLength: mm(245),
      ball: mm(228),
    }),
  );
  expect(full.measures).toMatchObject({ crotchToHip: mm(80), foot: { length: mm(245), ball: mm(228) } });
  expect(full.other).toEqual({ calf: mm(381) });
  expect(full.opening).toEqual({ ankle: true, waist: true });
});

test('every field of a body refuses what no body measures', () => {
  for (const field of Object.keys(MEASURE_FIELDS)) {
    const slip = field.startsWith('stretch') ? 401 : mm(3049);
    expect(legInput({ ...measured, [field]: slip })).toMatchObject({ ok: false, error: { field } });
  }
});

test('an allowance from nothing to 6 in', () => {
  expect(allowancesFit({ seam: mm(0), hem: mm(152) }).ok).toBe(true);
  expect(allowancesFit({ seam: mm(10), hem: mm(153) })).toMatchObject({ error: { field: 'hem' } });
});
