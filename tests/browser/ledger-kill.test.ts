import { appendFileSync, existsSync, mkdtempSync, readdirSync, rmSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Killable, openBench, serveLedgerPage, startKillable } from './ledger-chromium.ts';
import type { Served } from './serve.ts';

const KILLS = 20;

/** A kill after which the file is left as the unluckiest moment leaves it, should that not happen by itself. */
const TORN = 10;

let served: Served;
let profile: string;
let running: Killable | undefined;

beforeAll(async () => {
  served = await serveLedgerPage();
  profile = mkdtempSync(join(tmpdir(), 'slipbaste-killed-'));
});
afterAll(async () => {
  // A failed expectation must not leave a browser behind.
  await running?.kill();
  await served?.close();
  rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
});

/**
 * Tears the end of the database's log: the head of a record (sum, length 445, whole) without its body, just as was seen
 * after about one kill in a hundred. The browser reads over it once, writes on behind it, and at the start after that
 * finds the file damaged and begins an empty one. Tells whether there was a log to tear.
 */
const tear = (): boolean => {
  const folder = join(profile, 'Default', 'IndexedDB');
  const logs = (existsSync(folder) ? readdirSync(folder, { recursive: true, encoding: 'utf8' }) : [])
    .filter((path) => path.endsWith('.log'))
    .map((path) => join(folder, path));
  // Records are kept in blocks of 32 KiB; near the end of one the head would not be read as a head.
  const fit = logs.filter((path) => statSync(path).size % 32_768 < 32_000);
  for (const log of fit) appendFileSync(log, Uint8Array.of(1, 2, 3, 4, 445 & 255, 445 >> 8, 1));
  return fit.length > 0;
};

describe('a browser that is killed in a stream of taps', () => {
  it(`has every acknowledged tap after ${KILLS} times`, async () => {
    const acknowledged = new Set<string>();
    let kept = 0;
    let restored = 0;
    let torn = false;
    for (let round = 0; round <= KILLS; round++) {
      running = await startKillable(profile);
      const { page, kill } = running;
      await openBench(page, served);
      const found = await page.evaluate(async () => {
        const ledger = await bench.open({ snapshotEvery: 100 });
        const deeds = await ledger.deeds('o');
        const total = bench.beads(await ledger.load('o'));
        ledger.close();
        const restored = bench.troubles.includes('restored');
        return { ids: deeds.map((deed) => deed.id), total, restored };
      });
      const lost = [...acknowledged].filter((id) => !found.ids.includes(id as `${string}-${number}`));
      expect(lost).toEqual([]);
      expect(new Set(found.ids).size).toBe(found.ids.length);
      expect(found.total).toBe(found.ids.length);
      kept = found.ids.length;
      if (found.restored) restored++;
      if (round === KILLS) {
        await kill();
        break;
      }
      const wanted = acknowledged.size + 10 + 7 * round;
      let enough = (): void => undefined;
      const reached = new Promise<void>((done) => {
        enough = done;
      });
      await page.exposeFunction('acknowledge', (id: string) => {
        acknowledged.add(id);
        if (acknowledged.size >= wanted) enough();
      });
      await page.evaluate(async () => {
        const ledger = await bench.open({ snapshotEvery: 100 });
        const acknowledge = (globalThis as unknown as { acknowledge: (id: string) => Promise<void> })
          .acknowledge;
        const stream = async (item: string): Promise<void> => {
          for (;;) for (const deed of await ledger.write('o', [bench.tap(item)])) void acknowledge(deed.id);
        };
        void stream('line 1');
        void stream('line 2');
      });
      await reached;
      await kill();
      if (round >= TORN && !torn) torn = tear();
    }
    expect(acknowledged.size).toBeGreaterThan(KILLS * 10);
    if (torn) expect(restored).toBeGreaterThan(0);
    console.info(
      `${KILLS} kills: ${acknowledged.size} taps acknowledged, ${kept} kept, none lost; ` +
        `put back from the second copy ${restored} times`,
    );
  });
});
