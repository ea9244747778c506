import { expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { legInTwoCloths } from '../../../src/reckon/legs/leg-in-two-cloths.ts';
import { stretchLeg } from '../../../src/reckon/legs/stretch-leg.ts';
import { faultsAt, figure, worked } from './reckoned.ts';

test('cut at the knee, the cut is as long as the knee', () => {
  const made = worked(legInTwoCloths, { up: '0' });
  expect(figure(made, 'The cut across, finished')).toBeCloseTo(365 * 0.8, 3);
});

test.each(['in', 'mm'] as const)(
  'two sheets, whose inner seams add up to that of the whole leg: %s',
  (unit) => {
    const made = worked(legInTwoCloths, {}, unit);
    expect(made.sheets.map(({ name }) => name)).toEqual(['Leg, upper part', 'Leg, lower part']);
    const parts = ['upper', 'lower'].map((part) => figure(made, `Inner seam, ${part} part`) as number);
    expect(parts[0]! + parts[1]!).toBeCloseTo(
      figure(worked(stretchLeg, {}, unit), 'Inner seam, front') as number,
      1,
    );
  },
);

test('further up, the cut lies higher', () => {
  const below = (up: string) => figure(worked(legInTwoCloths, { up }), 'Level, below the waist') as number;
  expect(below('50') - below('120')).toBeCloseTo(70, 6);
  expect(below('-100') - below('0')).toBeCloseTo(100, 6);
});

test('it says to draft for the cloth that stretches less', () => {
  expect(worked(legInTwoCloths).advice[0]?.say).toContain('stretches less');
});

test.each([
  [{ up: '400' }, 'up'],
  [{ up: '-500' }, 'up'],
  [{ thigh: '400' }, 'thigh'],
  [{ seam: '-2' }, 'seam'],
  [{ stretchRound: '10' }, 'stretchRound'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(legInTwoCloths, entries)).toEqual([field]);
});

test('a level off the leg is answered in the unit of the maker, with what would do', () => {
  const say = (unit: 'in' | 'mm', up: string) => {
    const made = legInTwoCloths.reckon({ up }, unit);
    return made.ok ? '' : (made.error[0]?.say ?? '');
  };
  expect(say('mm', '400')).toMatch(/less than \d+ mm above the knee/);
  expect(say('in', '20')).toMatch(/less than .* in above the knee/);
});

test('the two parts are drawn apart', () => {
  const rings = worked(legInTwoCloths).drawing.drawn.flatMap((one) =>
    one.kind === 'path' && one.stroke === 'cut' ? [one.points.map(({ y }) => toMm(y))] : [],
  );
  expect(Math.max(...rings[0]!)).toBeLessThan(Math.min(...rings[1]!));
});
