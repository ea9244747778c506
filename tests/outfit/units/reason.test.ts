import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { beyondReason } from '../../../src/outfit/units/reason.ts';

test('the first size beyond reason is named, then the allowance', () => {
  expect(beyondReason({ depth: mm(10_000), knot: undefined }, mm(10))).toBeUndefined();
  expect(beyondReason({ depth: mm(5), tail: mm(10_001) }, mm(0))?.field).toBe('tail');
  for (const allowance of [-1, 0, 102]) expect(beyondReason({}, mm(allowance))?.field).toBe('allowance');
  expect(beyondReason({ depth: mm(5) })).toBeUndefined();
});
