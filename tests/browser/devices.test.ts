import type { BrowserContext, Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import { useApp } from './app.ts';
import { openDemo, parts, press, shown, touch, wordsOf } from './bench-page.ts';

const app = useApp();

/** Opens the demonstration on a device that differs from this one by what `change` does to it. */
async function on(change: () => void): Promise<{ context: BrowserContext; page: Page }> {
  await app.context.addInitScript(change);
  const page = await app.open();
  await openDemo(page);
  return { context: app.context, page };
}

/** What the fake device was asked. */
const asked = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => (globalThis as unknown as { asked: string[] }).asked);

describe('the screen', () => {
  it('is said to stay on only while the device has granted it', async () => {
    const { page } = await on(() => {
      const asked: string[] = [];
      let lock: (EventTarget & { released: boolean }) | undefined;
      const request = async () => {
        asked.push('on');
        lock = Object.assign(new EventTarget(), {
          released: false,
          type: 'screen',
          onrelease: null,
          async release() {
            asked.push('released');
            lock?.dispatchEvent(new Event('release'));
          },
        });
        return lock;
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
      Object.assign(globalThis, { asked, drop: () => lock?.dispatchEvent(new Event('release')) });
    });
    const { wake, order } = parts(page);
    await expect.poll(() => wake.textContent()).toBe('screen stays on');
    // The device takes it back, as it does when the page is hidden or the battery runs low.
    await page.evaluate(() => (globalThis as unknown as { drop(): void }).drop());
    await expect.poll(() => wake.textContent()).toBe('screen may sleep');
    // The next touch asks again.
    await press(page);
    await expect.poll(() => wake.textContent()).toBe('screen stays on');
    expect(await asked(page)).toEqual(['on', 'on']);
    // Away from the bench nothing is held.
    await touch(order);
    await page.locator('main[data-part="running-order"]').waitFor();
    await expect.poll(() => asked(page)).toEqual(['on', 'on', 'released']);
  });

  it('is said to sleep where the device refuses, and the bench works all the same', async () => {
    const { page } = await on(() => {
      const request = async () => {
        throw new DOMException('battery low', 'NotAllowedError');
      };
      Object.defineProperty(navigator, 'wakeLock', { value: { request } });
    });
    expect(await parts(page).wake.textContent()).toBe('screen may sleep');
    await press(page);
    expect(await parts(page).wake.textContent()).toBe('screen may sleep');
  });

  it('is said to sleep where the device knows nothing of it', async () => {
    const { page } = await on(() => {
      Object.defineProperty(navigator, 'wakeLock', { value: undefined });
    });
    await press(page);
    expect(await parts(page).wake.textContent()).toBe('screen may sleep');
  });
});

describe('reading aloud', () => {
  /** A device with these voices, which notes what it is told to say. */
  const withVoices = (
    voices: readonly { name: string; lang: string; localService: boolean; default: boolean }[],
  ) => {
    const said: string[] = [];
    class Utterance {
      lang = '';
      voice: unknown = null;
      rate = 1;
      readonly text: string;
      constructor(text: string) {
        this.text = text;
      }
    }
    Object.defineProperty(globalThis, 'SpeechSynthesisUtterance', { value: Utterance });
    Object.defineProperty(globalThis, 'speechSynthesis', {
      value: {
        getVoices: () => voices,
        cancel: () => said.push('(silence)'),
        speak: ({ text }: Utterance) => said.push(text),
      },
    });
    Object.assign(globalThis, { asked: said });
  };

  it('says the instruction, the readout and the caution, one sentence at a time, with a voice of the device', async () => {
    await app.context.addInitScript(withVoices, [
      { name: 'of the network', lang: 'en-GB', localService: false, default: true },
      { name: 'of the device', lang: 'en-GB', localService: true, default: false },
    ]);
    const page = await app.open();
    await openDemo(page);
    await touch(parts(page).aloud);
    const said = await asked(page);
    const { words, detail } = await shown(page);
    expect(said[0]).toBe('(silence)');
    expect(said[1]).toBe(`${await parts(page).instruction.textContent()}.`);
    expect(said).toContain(`Next: ${detail}.`);
    expect(words.replace(/\s+/g, ' ')).toContain(said.at(-1));
  });

  it('is silent where only voices of the network are there', async () => {
    await app.context.addInitScript(withVoices, [
      { name: 'of the network', lang: 'en-GB', localService: false, default: true },
    ]);
    const page = await app.open();
    await openDemo(page);
    await touch(parts(page).aloud);
    expect(await asked(page)).toEqual(['(silence)']);
  });

  it('is not offered where the device cannot speak', async () => {
    const { page } = await on(() => {
      Object.defineProperty(globalThis, 'speechSynthesis', { value: undefined });
    });
    const { aloud } = parts(page);
    expect((await aloud.count()) === 0 || (await aloud.isDisabled())).toBe(true);
    await press(page);
  });
});

describe('a buzz and a click', () => {
  it('follow each touch where they are wanted and the device can', async () => {
    const { page } = await on(() => {
      const asked: string[] = [];
      Object.defineProperty(navigator, 'vibrate', {
        value: (pattern: number | number[]) => {
          asked.push(`buzz ${pattern}`);
          return true;
        },
      });
      Object.assign(globalThis, { asked });
    });
    await press(page);
    expect(await asked(page)).toEqual(['buzz 18']);
    await touch(parts(page).more);
    await touch(parts(page).sheet.getByRole('button', { name: 'Buzz: on' }));
    await parts(page).sheet.getByRole('button', { name: 'Buzz: off' }).waitFor();
    await page.keyboard.press('Escape');
    const before = (await asked(page)).length;
    await press(page);
    expect(await asked(page)).toHaveLength(before);
  });

  it('are not missed where the device has neither', async () => {
    const { page } = await on(() => {
      Object.defineProperty(navigator, 'vibrate', { value: undefined });
      Object.defineProperty(globalThis, 'AudioContext', { value: undefined });
    });
    await touch(parts(page).more);
    expect(await parts(page).sheet.getByRole('button', { name: /^Buzz/ }).count()).toBe(0);
    await touch(parts(page).sheet.getByRole('button', { name: 'Click: off' }));
    await page.keyboard.press('Escape');
    const before = await shown(page);
    expect((await press(page)).detail).not.toBe(before.detail);
  });
});

describe('a device that will not keep anything', () => {
  it('says so in words and does not pretend', async () => {
    await app.context.addInitScript(() => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('The user denied permission to access the database.', 'SecurityError');
      };
    });
    const page = await app.open();
    const trouble = page.locator('[data-part="trouble"]');
    await trouble.waitFor();
    expect(await wordsOf(trouble)).toMatch(/not|cannot/);
    await touch(page.getByRole('button', { name: 'Open the Harbour Clockmaker' }));
    await expect.poll(() => wordsOf(page.locator('main'))).not.toMatch(/card 1 of/);
  });

  it('shows a touch that could not be written as not kept, and writes it when asked again', async () => {
    const page = await app.open();
    await openDemo(page);
    await press(page);
    await page.evaluate(() => {
      const { transaction } = IDBDatabase.prototype;
      IDBDatabase.prototype.transaction = function full(this: IDBDatabase, ...words) {
        if (words[1] === 'readwrite') throw new DOMException('no room', 'QuotaExceededError');
        return transaction.apply(this, words);
      };
      Object.assign(globalThis, {
        roomAgain() {
          IDBDatabase.prototype.transaction = transaction;
        },
      });
    });
    await press(page);
    const alert = page.getByRole('alert').filter({ hasText: 'Not kept yet' });
    await alert.waitFor();
    const before = await shown(page);
    await page.evaluate(() => (globalThis as unknown as { roomAgain(): void }).roomAgain());
    await touch(alert.getByRole('button', { name: 'Try again' }));
    await alert.waitFor({ state: 'detached' });
    await page.reload();
    await parts(page).pad.waitFor();
    expect((await shown(page)).detail).toBe(before.detail);
  });
});
