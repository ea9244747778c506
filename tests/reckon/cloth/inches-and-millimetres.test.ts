import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches, mm, toMm } from '../../../src/length/index.ts';
import { inchesAndMillimetres } from '../../../src/reckon/cloth/inches-and-millimetres.ts';
import { ruleDrawn } from '../../../src/reckon/cloth/rule-drawing.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test('4 3/8 in on every rule', () => {
  const made = worked(inchesAndMillimetres, {}, 'in');
  expect(figure(made, 'In sixteenths of an inch')).toBe('4 3/8 in, exactly');
  expect(figure(made, 'In millimetres')).toBe('111 mm, 0.13 mm too short');
  expect(figure(made, 'In centimetres')).toBe('11.1 cm, 0.13 mm too short');
  expect(figure(made, 'Not rounded, in millimetres')).toBe('111.125 mm');
});

test('10 mm on every rule', () => {
  const made = worked(inchesAndMillimetres, { length: '10' });
  expect(figure(made, 'In sixteenths of an inch')).toBe('3/8 in, 0.48 mm too short');
  expect(figure(made, 'In thirty-seconds')).toBe('13/32 in, 0.32 mm too long');
  expect(figure(made, 'In half millimetres')).toBe('10 mm, exactly');
  expect(figure(made, 'Not rounded, in inches')).toBe('0.3937 in');
});

test('a rounding too small to see is not called none', () => {
  expect(figure(worked(inchesAndMillimetres, { length: '10.001' }), 'In millimetres')).toBe(
    '10 mm, less than 0.01 mm too short',
  );
});

test('the mark stands where the length is, on marks at true distances', () => {
  const made = worked(inchesAndMillimetres, {}, 'in');
  const last = made.sheets[0]?.drawn.at(-1);
  expect(last?.kind === 'path' ? last.points.map(({ x }) => toMm(x)) : []).toEqual([111.125, 111.125]);
  const ticks = made.sheets[0]!.drawn.flatMap((one) =>
    one.kind === 'path' && one.stroke === 'thin' && one.points[0]!.y === 0 ? [one.points[0]!.x] : [],
  );
  expect(ticks).toEqual(Array.from({ length: 5 * 32 + 1 }, (_, i) => inches(i, 32)));
});

test('a long length shows the end of the rule, and is never drawn without end', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 100_000 }), (length) => {
      const drawn = ruleDrawn(mm(length), 16);
      expect(drawn.length).toBeLessThan(450);
      const last = drawn.at(-1);
      const rule = drawn[0];
      if (last?.kind !== 'path' || rule?.kind !== 'path') throw new Error('no rule');
      const xs = rule.points.map(({ x }) => x);
      expect(last.points[0]!.x).toBeGreaterThan(Math.min(...xs));
      expect(last.points[0]!.x).toBeLessThanOrEqual(Math.max(...xs));
    }),
  );
  expect(worked(inchesAndMillimetres, { length: '2 m' }).sheets).toEqual([]);
});

test.each(['0', '-3', '200 m', ''])('refuses %j', (length) => {
  expect(faultsAt(inchesAndMillimetres, { length })).toEqual(['length']);
});
