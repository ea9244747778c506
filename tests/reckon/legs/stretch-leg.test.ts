import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { stretchLeg } from '../../../src/reckon/legs/stretch-leg.ts';
import { boundingBox } from '../../../src/shape/index.ts';
import { faultsAt, figure, worked } from './reckoned.ts';

const foot = { footed: 'foot', footLength: '245', ball: '228' };

describe('a stretch leg', () => {
  test.each(['in', 'mm'] as const)('what stands there first brings no warning: %s', (unit) => {
    expect(worked(stretchLeg, {}, unit).advice).toEqual([]);
  });

  test('girths are a fifth less than the body, in both units', () => {
    expect(figure(worked(stretchLeg), 'Thigh, finished')).toBeCloseTo(610 * 0.8, 6);
    expect(figure(worked(stretchLeg, {}, 'in'), 'Waist, finished')).toBeCloseTo(32 * 25.4 * 0.8, 6);
  });

  test('the inner seams match and the rises add up to the rise, less what the cloth gives', () => {
    const made = worked(stretchLeg);
    const [front, back] = [figure(made, 'Inner seam, front'), figure(made, 'Inner seam, back')];
    expect(front).toBeCloseTo(back as number, 1);
    const rises = (figure(made, 'Rise, front') as number) + (figure(made, 'Rise, back') as number);
    expect(rises).toBeCloseTo(600 / (1 + 0.1 * 0.4), 0);
  });

  test('the sheet is at true size: the cut line lies the allowances outside the seam line', () => {
    const made = worked(stretchLeg, { seam: '7', hem: '0' });
    const [cut, seam] = ['cut', 'seam'].map((stroke) => {
      const found = made.sheets[0]?.drawn.find((one) => one.kind === 'path' && one.stroke === stroke);
      return boundingBox(found?.kind === 'path' ? found.points : []);
    });
    expect(toMm(cut!.bottom) - toMm(seam!.bottom)).toBeCloseTo(0, 3);
    const deep = worked(stretchLeg, { seam: '7', hem: '30' });
    const low = deep.sheets[0]?.drawn.find((one) => one.kind === 'path' && one.stroke === 'cut');
    expect(toMm(boundingBox(low?.kind === 'path' ? low.points : []).bottom)).toBeCloseTo(
      toMm(seam!.bottom) + 30,
      3,
    );
    expect(made.sheets[0]?.notes).toContain(
      'Allowances drawn: 7 mm at the seams, 0 mm at the waist and the ankle.',
    );
  });

  test('levels and feet of seams are marked from one datum, in order', () => {
    const { strips } = worked(stretchLeg);
    expect(strips.map(({ marks }) => marks.map(({ name }) => name))).toEqual([
      ['hip', 'crotch', 'thigh', 'knee', 'calf', 'ankle'],
      ['foot of the back middle', 'foot of the outer side', 'foot of the front middle'],
    ]);
    expect(strips[1]?.marks.map(({ at }) => toMm(at))).toEqual(
      [44, 88, 132].map((x) => expect.closeTo(x, 3)),
    );
  });

  test('a foot adds its girths, and has no ankle to mark', () => {
    const made = worked(stretchLeg, foot);
    expect(figure(made, 'Ball of the foot, finished')).toBeCloseTo(228 * 0.8, 6);
    expect(made.strips).toHaveLength(1);
    expect(made.advice.map(({ say }) => say)).toEqual([expect.stringContaining('straight tube')]);
  });

  test('an ankle that cannot pass is refused there, and passes with an opening', () => {
    const tight = { heel: '420' };
    expect(faultsAt(stretchLeg, tight)).toEqual(['ankle']);
    expect(faultsAt(stretchLeg, { ...tight, opening: 'ankle' })).toEqual([]);
    expect(faultsAt(stretchLeg, { waist: '500' })).toEqual(['waist']);
    expect(faultsAt(stretchLeg, { waist: '500', opening: 'both' })).not.toContain('ankle');
  });

  test('warnings are passed on', () => {
    const says = (entries: Record<string, string>) =>
      worked(stretchLeg, entries)
        .advice.map(({ say }) => say)
        .join(' ');
    expect(says({ waist: '1010' })).toContain('The waist is larger');
    expect(says({ knee: '450' })).toContain('This knee is unusual');
    expect(says({ otherCalf: '390' })).toContain('The legs differ at the calf');
    expect(says({ otherAnkle: '232', otherKnee: '380' })).toContain('at the ankle');
    expect(says({ lowerThigh: '360' })).toContain('The calf is larger');
    expect(says({ stretchAlong: '0' })).toContain('was not found to stretch along');
  });

  test.each<[Record<string, string>, string]>([
    [{ waist: '0' }, 'waist'],
    [{ hip: '-1' }, 'hip'],
    [{ thigh: '490' }, 'thigh'],
    [{ knee: '0' }, 'knee'],
    [{ calf: '0' }, 'calf'],
    [{ ankle: '0' }, 'ankle'],
    [{ heel: '0' }, 'heel'],
    [{ waistToCrotch: '0' }, 'waistToCrotch'],
    [{ rise: '250' }, 'rise'],
    [{ crotchToKnee: '0' }, 'crotchToKnee'],
    [{ kneeToFloor: '0' }, 'kneeToFloor'],
    [{ hip: '200 in' }, 'hip'],
    [{ stretchRound: '15' }, 'stretchRound'],
    [{ stretchRound: '-5' }, 'stretchRound'],
    [{ stretchAlong: '900' }, 'stretchAlong'],
    [{ seam: '-1' }, 'seam'],
    [{ seam: '160' }, 'seam'],
    [{ hem: '1 m' }, 'hem'],
    [{ footed: 'foot' }, 'footLength'],
    [{ footed: 'foot', footLength: '245' }, 'ball'],
    [{ ...foot, ball: '0' }, 'ball'],
    [{ hipHeight: '260' }, 'hipHeight'],
    [{ ankleHeight: '300' }, 'ankleHeight'],
    [{ lowerThigh: '0' }, 'lowerThigh'],
  ])('refuses %j at its own field', (entries, field) => {
    expect(faultsAt(stretchLeg, entries)).toEqual([field]);
  });

  test('a rise far too long is refused at one of the measures that it contradicts', () => {
    const [fault, ...more] = faultsAt(stretchLeg, { rise: '1400' });
    expect(['rise', 'waist']).toContain(fault);
    expect(more).toEqual([]);
  });

  test('whatever is written, it answers soon with a leg or with a fault at a field', () => {
    const slow: number[] = [];
    fc.assert(
      fc.property(
        fc.dictionary(
          fc.constantFrom(...Object.keys(stretchLeg.fields)),
          fc.oneof(fc.integer({ min: -10, max: 4000 }).map(String), fc.constantFrom('foot', 'both', '')),
        ),
        (entries) => {
          const from = performance.now();
          const made = stretchLeg.reckon(entries, 'mm');
          slow.push(performance.now() - from);
          if (made.ok) expect(made.value.drawing.drawn.length).toBeGreaterThan(0);
          else for (const { field } of made.error) expect(Object.keys(stretchLeg.fields)).toContain(field);
        },
      ),
      { numRuns: 60 },
    );
    expect(Math.max(...slow)).toBeLessThan(2000);
  });
});
