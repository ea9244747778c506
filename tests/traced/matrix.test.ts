import { describe, expect, it } from 'vitest';
import { fitBox, numbersIn, readSize, readTransform, unitsOf } from '../../src/traced/matrix.ts';

describe('transforms', () => {
  it('are applied from the right to the left', () => {
    expect(readTransform('translate(10 20) scale(2)')).toEqual([2, 0, 0, 2, 10, 20]);
    expect(readTransform(' rotate(90),translate(5)')!.map((n) => Math.round(n * 1e9) / 1e9)).toEqual([
      0, 1, -1, 0, 0, 5,
    ]);
    expect(readTransform('')).toEqual([1, 0, 0, 1, 0, 0]);
  });
  it('that cannot be read are nothing', () => {
    for (const text of [
      'rotate(x)',
      'turn(3)',
      'scale(2',
      'matrix(1 2 3 4 5 6 7)',
      'scale(1e999)',
      'translate()',
      'scale(2) and more',
    ])
      expect(readTransform(text)).toBeUndefined();
  });
});

describe('sizes of a file', () => {
  it('in units of a rule are true, others are taken as 96 to the inch', () => {
    expect(readSize('210mm')).toMatchObject({ mm: 210, ruled: true });
    expect(readSize('8.5in')!.mm).toBeCloseTo(215.9);
    expect(readSize('612pt')!.mm).toBeCloseTo(215.9);
    expect(readSize('96')).toEqual({ mm: 25.4, units: 96, ruled: false });
    for (const text of ['100%', '2em', '', null, '1.2.3mm', 'mm']) expect(readSize(text)).toBeUndefined();
    expect(unitsOf('1in')).toBeCloseTo(96);
    expect(unitsOf(null)).toBe(0);
    expect(unitsOf('50%')).toBeNaN();
  });
  it('fit a box, with one side given or both', () => {
    expect(fitBox([10, 20, 100, 50], 200, undefined, null)).toEqual([2, 0, 0, 2, -20, -40]);
    expect(fitBox([0, 0, 0, 50], 200, 100, null)).toBeUndefined();
    expect(fitBox([], 200, 100, null)).toBeUndefined();
    expect(numbersIn('1,2 3')).toEqual([1, 2, 3]);
    expect(numbersIn('1;2')).toBeUndefined();
  });
});
