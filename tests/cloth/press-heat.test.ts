import { describe, expect, test } from 'vitest';
import { pressAdvice, pressLimit } from '../../src/cloth/press-heat.ts';
import { made } from './good.ts';

describe('how hot to press', () => {
  test('the cloth that bears least decides', () => {
    expect(made(pressLimit([3, 1, 2]))).toBe(110);
    expect(made(pressLimit([3, 2]))).toBe(150);
    expect(made(pressLimit([3]))).toBe(200);
  });

  test.each([[[]], [[3, 0]]] as const)('refuses %j', (labels) => {
    expect(pressLimit(labels)).toMatchObject({ ok: false, error: { field: 'care' } });
  });
});

test('one dot is ironed without steam, wherever it stands', () => {
  expect(pressAdvice([3, 1]).map(({ say }) => say)).toEqual([expect.stringContaining('without steam')]);
  expect(pressAdvice([2, 3])).toEqual([]);
});
