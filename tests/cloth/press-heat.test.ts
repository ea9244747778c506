import { describe, expect, test } from 'vitest';
import { pressLimit } from '../../src/cloth/press-heat.ts';
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
