import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ELASTIC_LAP, elasticCut } from '../../src/cloth/elastic.ts';
import { mm, toMm } from '../../src/length/index.ts';

test('an elastic is cut shorter than the body it holds, with a lap for its ends', () => {
  expect(toMm(elasticCut(mm(800)))).toBeCloseTo(720 + 12.7, 2);
  fc.assert(
    fc.property(fc.integer({ min: 150, max: 2000 }), (round) => {
      const joined = toMm(elasticCut(mm(round))) - toMm(ELASTIC_LAP.value);
      expect(joined).toBeLessThan(round);
      expect(joined).toBeGreaterThan(round * 0.8);
    }),
    { seed: 5 },
  );
});
