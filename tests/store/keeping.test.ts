import { beforeEach, describe, expect, it } from 'vitest';
import { askToKeep, keepingNow, missingWork } from '../../src/store/keeping.ts';

let asked = 0;
let notes: Map<string, string>;

beforeEach(() => {
  asked = 0;
  notes = new Map();
});

const browser = (granted: boolean, persisted = false) => ({
  storage: {
    persisted: async () => persisted,
    persist: async () => {
      asked++;
      return granted;
    },
  },
  notes: {
    getItem: (name: string) => notes.get(name) ?? null,
    setItem: (name: string, value: string) => void notes.set(name, value),
  },
});

describe('asking the browser to keep the work', () => {
  it('says what the browser answered', async () => {
    expect((await askToKeep(browser(true))).state).toBe('kept');
    notes.clear();
    expect(await askToKeep(browser(false))).toMatchObject({
      state: 'not kept',
      words: expect.stringContaining('backup'),
    });
  });

  it('asks once and remembers a no', async () => {
    await askToKeep(browser(false));
    expect((await askToKeep(browser(false))).state).toBe('not kept');
    expect(asked).toBe(1);
  });

  it('does not ask for what was granted', async () => {
    expect((await askToKeep(browser(true, true))).state).toBe('kept');
    expect((await keepingNow(browser(true, true))).state).toBe('kept');
    expect(asked).toBe(0);
  });

  it('is silent where the browser knows nothing of it, or refuses to talk', async () => {
    expect((await askToKeep({})).state).toBe('unknown');
    expect((await askToKeep({ storage: undefined })).state).toBe('unknown');
    const sulking = {
      persisted: () => Promise.reject(new Error('no')),
      persist: () => Promise.reject(new Error('no')),
    };
    const barred = {
      getItem: () => {
        throw new Error('no');
      },
      setItem: () => {
        throw new Error('no');
      },
    };
    expect((await askToKeep({ storage: sulking, notes: barred })).state).toBe('unknown');
    expect((await askToKeep()).state).toMatch(/kept|unknown/);
  });
});

describe('work that has gone', () => {
  it('is told only when there had been some', async () => {
    const here = browser(true);
    expect(missingWork(0, here)).toBeUndefined();
    await askToKeep(here);
    expect(missingWork(1, here)).toBeUndefined();
    expect(missingWork(0, here)).toContain('Import your last backup');
  });
});
