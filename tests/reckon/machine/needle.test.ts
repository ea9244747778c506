import { expect, test } from 'vitest';
import { nm, toMm } from '../../../src/length/index.ts';
import { needle } from '../../../src/reckon/machine/needle.ts';
import { needleNumbers } from '../../../src/reckon/machine/needle-numbers.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test.each([
  ['sheer', '60/8'],
  ['light', '70/10'],
  ['medium', '80/12'],
  ['heavy', '90/14'],
  ['very heavy', '100/16'],
])('a %s cloth takes %s', (weight, numbers) => {
  for (const unit of ['in', 'mm'] as const)
    expect(figure(worked(needle, { weight }, unit), 'Needle')).toBe(numbers);
});

test('the heavier of two cloths decides, and a knit takes a ball point', () => {
  const made = worked(needle, { otherWeight: 'very heavy', otherMake: 'knit' });
  expect(figure(made, 'Needle')).toBe('100/16');
  expect(figure(made, 'Point')).toContain('ball');
});

test('it is drawn as thick as it is', () => {
  const made = worked(needle, { weight: 'heavy' });
  const [blade] = made.drawing.drawn;
  const ys = blade?.kind === 'path' ? blade.points.map(({ y }) => y) : [];
  expect(toMm(nm(Math.max(...ys) - Math.min(...ys)))).toBeCloseTo(0.9, 6);
  expect(JSON.stringify(made.drawing.drawn)).toContain('0.9 mm thick');
});

test('numbers go both ways', () => {
  expect(figure(worked(needleNumbers), 'Both numbers')).toBe('80/12');
  expect(figure(worked(needleNumbers, { number: '14', which: 'other' }, 'in'), 'Both numbers')).toBe('90/14');
  expect(figure(worked(needleNumbers, { number: '110' }), 'Thickness of the blade')).toBe('1.1 mm');
});

test.each([
  [{ number: '82' }, 'number'],
  [{ number: '200' }, 'number'],
  [{ number: '19', which: 'other' }, 'number'],
  [{ number: '12.5', which: 'other' }, 'number'],
  [{ number: '' }, 'number'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(needleNumbers, entries)).toEqual([field]);
});
