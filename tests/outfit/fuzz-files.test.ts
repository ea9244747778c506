import { expect, test } from 'vitest';
import { fresh, runningOrder } from '../../src/order/running.ts';
import { readOutfitFile } from '../../src/outfit/reading-file.ts';
import { writeOutfit } from '../../src/outfit/writing.ts';
import { fuzzFile } from './fuzz-files.ts';

const FILES = 200;
/** No file may take longer than this to be read or refused, ms; on a slow machine that does other things too. */
const SOON = 2000;
/** What could be read is ordered within this, ms. */
const ORDERED = 10_000;

test(`${FILES} spoilt files are each read or refused with places and words, none of them late`, () => {
  const took: number[] = [];
  const outcomes: Record<string, number> = { read: 0 };
  for (let n = 0; n < FILES; n += 1) {
    const text = fuzzFile(n);
    const before = performance.now();
    const read = readOutfitFile(text);
    const time = performance.now() - before;
    took.push(time);
    expect(time, `file ${n}`).toBeLessThan(SOON);
    const outcome = read.ok ? 'read' : read.error.kind;
    outcomes[outcome] = (outcomes[outcome] ?? 0) + 1;
    if (read.ok) {
      const start = performance.now();
      const order = runningOrder(read.value.outfit, fresh);
      expect(order.ok || order.error.say.length > 0, `file ${n}`).toBe(true);
      expect(writeOutfit(read.value.outfit), `file ${n}`).toBeTypeOf('object');
      expect(performance.now() - start, `file ${n}`).toBeLessThan(ORDERED);
      continue;
    }
    const lines = text.split(/\r\n|\r|\n/);
    if (read.error.kind !== 'other') expect(read.error.wrong.length, `file ${n}`).toBeGreaterThan(0);
    for (const { line, column, where, say, cure } of read.error.wrong) {
      expect(line, `file ${n}: ${say}`).toBeGreaterThan(0);
      expect(line, `file ${n}: ${say}`).toBeLessThanOrEqual(lines.length);
      expect(column, `file ${n}: ${say}`).toBeGreaterThan(0);
      expect(column, `file ${n}: ${say}`).toBeLessThanOrEqual([...lines[line - 1]!].length + 1);
      expect(say.length, `file ${n}`).toBeGreaterThan(5);
      expect(`${where} ${say} ${cure}`.replace(/`[^`]*`/g, ''), `file ${n}`).not.toMatch(
        /undefined|\[object|Invalid|NaN/,
      );
    }
  }
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  console.log(
    `${FILES} spoilt files: ${JSON.stringify(outcomes)}, the slowest read in ${Math.ceil(Math.max(...took))} ms`,
  );
  // The files are worth the name: some are nearly right, some are no JSON at all.
  for (const kind of ['read', 'wrong', 'words']) expect(outcomes[kind], kind).toBeGreaterThan(3);
}, 120_000);
