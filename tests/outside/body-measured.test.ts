/*
 * Against ANSUR II: Gordon et al. 2014, report TR-15/007, the summary and a sample of 45 people copied from the public rows
 * (see data/README.md).
 */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { LEAST_TO_NAVEL, MEASURED, WAIST_MEASURED } from '../../src/cloth/body-measured.ts';
import { mm } from '../../src/length/index.ts';
import { doubts, type Measures } from '../../src/outfit/plausible.ts';
import { type Body, bodies, legOf } from './stretch-bodies.ts';

const text = readFileSync(new URL('./data/body-summary.csv', import.meta.url), 'utf8');
const [head = '', ...lines] = text.trim().split(/\r?\n/);
const names = head.split(',');
const rows = lines.map((line) => {
  const cells = line.split(',');
  return Object.fromEntries(names.map((name, i) => [name, cells[i] ?? '']));
});

/** A percentile of a column, the least or the greatest of both sexes. */
const pooled = (column: string, percentile: string, pick: (...of: number[]) => number): number => {
  const found = rows.filter((row) => row.column === column).map((row) => Number(row[percentile]));
  expect(found).toHaveLength(2);
  return pick(...found);
};

const COLUMNS = [
  ['height', 'stature'],
  ['neck', 'neckcircumferencebase'],
  ['chest', 'chestcircumference'],
  ['hip', 'buttockcircumference'],
  ['shoulder', 'shoulderlength'],
  ['across-back', 'interscyei'],
  ['upper-arm', 'bicepscircumferenceflexed'],
  ['arm-length', 'sleeveoutseam'],
  ['wrist', 'wristcircumference'],
  ['thigh', 'thighcircumference'],
  ['calf', 'calfcircumference'],
  ['ankle', 'anklecircumference'],
  ['heel', 'heelanklecircumference'],
  ['knee-to-floor', 'kneeheightmidpatella'],
  ['foot-length', 'footlength'],
  ['ball', 'balloffootcircumference'],
] as const;
const TO_NAVEL = [
  ['back-waist', 'waistbacklength'],
  ['rise', 'crotchlengthomphalion'],
  ['waist-to-floor', 'waistheightomphalion'],
] as const;

describe('what is likely of a body', () => {
  test.each(COLUMNS)('%s: 1st to 99th percentile of %s, both sexes (Gordon et al. 2014)', (id, column) => {
    expect(MEASURED.value[id]).toEqual([
      mm(pooled(column, 'p1', Math.min)),
      mm(pooled(column, 'p99', Math.max)),
    ]);
  });

  test('covers no measure that is not compared here (2014)', () => {
    expect(Object.keys(MEASURED.value).sort()).toEqual(COLUMNS.map(([id]) => id).sort());
    expect(Object.keys(LEAST_TO_NAVEL.value).sort()).toEqual(TO_NAVEL.map(([id]) => id).sort());
  });

  test.each(TO_NAVEL)('%s: 1st percentile of %s, to the navel (2014)', (id, column) => {
    expect(LEAST_TO_NAVEL.value[id]).toBe(mm(pooled(column, 'p1', Math.min)));
  });

  test('waist: the 99th percentile at the navel (2014)', () => {
    expect(WAIST_MEASURED.value[1]).toBe(mm(pooled('waistcircumference', 'p99', Math.max)));
  });
});

/** A person of the survey as a wearer. Without the hand, which the survey takes without its thumb. */
const wearer = (body: Body): Measures => {
  const { at } = body;
  const leg = legOf(body);
  const { waistToCrotch, crotchToKnee, kneeToFloor, heel, ankle, calf, knee, thigh, hip, waist } = leg;
  return {
    ...{ heel, ankle, calf, knee, thigh, hip, waist },
    ...{ 'waist-to-crotch': waistToCrotch, 'crotch-to-knee': crotchToKnee, 'knee-to-floor': kneeToFloor },
    height: mm(at('stature')),
    neck: mm(at('neckcircumferencebase')),
    chest: mm(at('chestcircumference')),
    shoulder: mm(at('shoulderlength')),
    'across-back': mm(at('interscyei')),
    'back-waist': mm(at('waistbacklength')),
    'upper-arm': mm(at('bicepscircumferenceflexed')),
    'arm-length': mm(at('sleeveoutseam')),
    wrist: mm(at('wristcircumference')),
    hand: mm(at('handcircumference')),
    rise: mm(at('crotchlengthomphalion')),
    'waist-to-floor': mm(at('waistheightomphalion')),
    'foot-length': mm(at('footlength')),
    ball: mm(at('balloffootcircumference')),
  };
};

describe('45 people of the survey', () => {
  // The first five were chosen for being extreme; the others were drawn at random.
  test('of 40 drawn at random, hardly any is doubted (2014)', () => {
    const drawn = bodies.slice(5).map((body) => doubts(wearer(body), { unit: 'mm', step: 1 }));
    expect(drawn).toHaveLength(40);
    expect(drawn.filter((found) => found.length === 0).length).toBeGreaterThanOrEqual(30);
    expect(Math.max(...drawn.map((found) => found.length))).toBeLessThanOrEqual(4);
  });

  test('nobody has measures that hardly go together (2014)', () => {
    const found = bodies.flatMap((body) =>
      doubts(wearer(body), { unit: 'mm', step: 1 }).filter(({ say }) => say.includes('together')),
    );
    expect(found.map(({ say }) => say)).toEqual([]);
  });

  test('the tallest and the shortest are doubted by their height (2014)', () => {
    for (const body of bodies.slice(0, 2))
      expect(doubts(wearer(body), { unit: 'mm', step: 1 }).map(({ at }) => at)).toContain('height');
  });
});
