import { expect, test } from 'vitest';
import { STITCHES, type StitchType } from '../../src/cloth/stitches.ts';
import { shareThread, THREAD_PARTS } from '../../src/cloth/thread-shares.ts';
import { mm, toMm } from '../../src/length/index.ts';

const types = Object.keys(STITCHES).map(Number) as StitchType[];

test('the parts are together all the thread', () => {
  for (const type of types) {
    const shared = shareThread(type, mm(1234.567));
    if (shared) expect(shared.needles + shared.under).toBe(mm(1234.567));
    else expect(type).toBe(606);
  }
});

test('a lockstitch takes as much from the bobbin as from the spool, a single thread all from the needle', () => {
  expect(shareThread(301, mm(100))).toEqual({ needles: mm(50), under: mm(50) });
  expect(shareThread(101, mm(100))).toEqual({ needles: mm(100), under: 0 });
});

test('type 401 is near what was measured: 19.5 of 81.5', () => {
  // Measuring actual thread consumption (trade technical article), 15 cm of seam, seen as an excerpt
  const shared = shareThread(401, mm(815));
  expect(Math.abs(toMm(shared!.needles) - 195)).toBeLessThan(815 * 0.02);
});

test('a stitch whose name counts its threads has so many', () => {
  const counts: Partial<Record<StitchType, number>> = { 101: 1, 401: 2, 503: 2, 504: 3, 512: 4 };
  for (const [type, count] of Object.entries(counts)) {
    const { needles, under } = THREAD_PARTS.value[Number(type) as StitchType];
    expect(needles + under).toBe(count);
  }
});
