// @vitest-environment node
import { gunzipSync, gzipSync } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readBackup, writeBackup } from '../../src/store/backup.ts';
import type { Act, Deed } from '../../src/store/deed.ts';
import { compareDeeds } from '../../src/store/deed-order.ts';
import { inflate } from '../../src/store/gzip.ts';
import { anyDeeds, deed } from './deeds.ts';

const some: Deed[] = [
  deed(0, { kind: 'outfit-begun', description: { name: 'Shirt' } }),
  deed(1, { kind: 'tap', step: 'beads', item: 'line 1', add: 2 }),
  deed(2, { kind: 'undone', deed: 'a-1' }),
];

const refused = async (file: Blob): Promise<string> => {
  const result = await readBackup(file);
  return result.ok ? 'fine' : result.error;
};

/** The text of a whole backup, unpacked. */
const textOf = async (deeds = some) =>
  gunzipSync(Buffer.from(await (await writeBackup('o', deeds)).arrayBuffer())).toString('utf8');

/** A backup in which the text was changed by hand. */
const changed = async (from: string | RegExp, to: string) => {
  const text = await textOf();
  const other = text.replace(from, to);
  expect(other).not.toBe(text);
  return new Blob([other]);
};

describe('a backup', () => {
  it('gives back all deeds of its outfit, in order, and says that it checked them', async () => {
    await fc.assert(
      fc.asyncProperty(anyDeeds('a'), anyDeeds('b'), async (a, b) => {
        const other = deed(99, { kind: 'step-done', step: 's' }, { outfit: 'p' });
        const back = await readBackup(await writeBackup('o', [...b, other, ...a]));
        const deeds = [...a, ...b].sort(compareDeeds);
        expect(back).toEqual({
          ok: true,
          value: { outfit: 'o', deeds: JSON.parse(JSON.stringify(deeds)), checked: true },
        });
      }),
      { numRuns: 50 },
    );
  });

  it('keeps acts of a newer version', async () => {
    const newer = [deed(0, { kind: 'dyed', colour: 'madder' } as unknown as Act)];
    const back = await readBackup(await writeBackup('o', newer));
    expect(back.ok && back.value.deeds).toEqual(newer);
  });

  it('keeps a change of several places', async () => {
    const changes = [{ at: '/name', was: 'Shirt', now: 'Best shirt' }, { at: '/pieces/0' }];
    const deeds = [deed(0, { kind: 'redescribed', say: 'renamed it', changes })];
    const back = await readBackup(await writeBackup('o', deeds));
    expect(back.ok && back.value.deeds).toEqual(deeds);
  });

  it('has room for many pictures, as large as they may be', async () => {
    // As hard to compress as a real picture, and the same at each run.
    let chance = 1;
    const bytes = Buffer.alloc(179_900);
    const picture = (): string => {
      for (let i = 0; i < bytes.length; i += 1) {
        chance = (Math.imul(chance, 1_664_525) + 1_013_904_223) >>> 0;
        bytes[i] = chance >>> 24;
      }
      return `data:image/jpeg;base64,${bytes.toString('base64')}`;
    };
    const deeds = Array.from({ length: 120 }, (_, i) =>
      deed(i, { kind: 'seen', garment: 'shirt', entry: 'cuff-tight', side: 'both', photo: picture() }),
    );
    const file = await writeBackup('o', deeds);
    const back = await readBackup(file);
    expect(back.ok && back.value.deeds).toEqual(deeds);
  });

  it('is read plain, and laid out by hand, too', async () => {
    const pretty = JSON.stringify(JSON.parse(await textOf()), null, 2);
    const back = await readBackup(new Blob([pretty]));
    expect(back).toEqual({ ok: true, value: { outfit: 'o', deeds: some, checked: true } });
  });

  it('carries the checksum that a reference gives', async () => {
    const { createHash } = await import('node:crypto');
    const whole = JSON.parse(await textOf());
    expect(whole.checksum).toBe(createHash('sha256').update(JSON.stringify(some)).digest('hex'));
  });
});

describe('a file that is no good', () => {
  it('is refused with what was found and what was expected', async () => {
    expect(await refused(new Blob(['hello']))).toContain('something else than JSON');
    expect(await refused(new Blob(['[1]']))).toContain('found a list, expected "slipbaste-ledger"');
    expect(await refused(new Blob(['{"format":"other"}']))).toContain(
      'found "other", expected "slipbaste-ledger"',
    );
    expect(await refused(await changed('"version":1', '"version":2'))).toMatch(
      /found 2, expected 1\. Update/,
    );
    expect(await refused(await changed('"outfit":"o","count"', '"count"'))).toContain('found nothing');
    expect(await refused(await changed('"count":3', '"count":4'))).toContain('found 3, expected 4');
    expect(await refused(await changed('"add":2', '"add":3'))).toContain('checksum');
  });

  it('is refused when a deed in it is none, checksum or not', async () => {
    const bare = async (from: string | RegExp, to: string) =>
      refused(new Blob([(await (await changed(from, to)).text()).replace(/"checksum":"\w+",/, '')]));
    expect(await bare('"add":2', '"add":"2"')).toContain(
      'Deed 2 cannot be read: act.add: found "2", expected a number',
    );
    expect(await bare('"id":"a-1"', '"id":"a-7"')).toContain('found "a-7", expected "a-1"');
    expect(await bare('"seq":1', '"seq":-1')).toContain('expected a whole number');
    expect(await bare('"at":1000,', '')).toContain('at: found nothing');
    expect(await bare('"outfit":"o","act"', '"outfit":"p","act"')).toContain('found "p", expected "o"');
    expect(await bare('"kind":"tap"', '"kind":7')).toContain('act.kind: found 7');
    expect(await bare('"add":2', '"add":3')).toBe('fine');
  });

  it.each([
    ['no words for it', { changes: [] }, 'act.say: found nothing, expected a string'],
    ['no list', { say: 'x', changes: {} }, 'act.changes: found an object, expected a list of changes'],
    ['nothing at all', { say: 'x' }, 'act.changes: found nothing'],
    ['a change without a place', { say: 'x', changes: [{ now: 1 }] }, 'act.changes: found a list'],
    ['a change that is none', { say: 'x', changes: ['/name'] }, 'act.changes: found a list'],
  ])('is refused when a change of several places has %s', async (_, act, expected) => {
    const spoilt = [deed(0, { kind: 'redescribed', ...act } as unknown as Act)];
    expect(await refused(await writeBackup('o', spoilt))).toContain(expected);
  });

  it('is refused when cut short, and when damaged in the middle', async () => {
    const bytes = new Uint8Array(await (await writeBackup('o', some)).arrayBuffer());
    expect(await refused(new Blob([bytes.slice(0, -9)]))).toContain('damaged or only part');
    const hurt = bytes.slice();
    hurt[hurt.length >> 1]! ^= 0xff;
    expect(await refused(new Blob([hurt]))).not.toBe('fine');
  });

  it('is refused when too large, packed or unpacked', async () => {
    expect(await refused(new Blob([new Uint8Array(80_000_001)]))).toContain('expected 80 MB at most');
    const bomb = new Blob([gzipSync(Buffer.alloc(3_000_000, ' '))]);
    expect(bomb.size).toBeLessThan(10_000);
    expect(await inflate(bomb, 1_000_000)).toMatchObject({
      ok: false,
      error: expect.stringContaining('more than 1 MB'),
    });
    expect((await inflate(bomb, 3_000_000)).ok).toBe(true);
  });
});
