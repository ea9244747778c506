/**
 * Pictures of every screen, for looking at. Run by hand:
 *
 *   node .ci/pictures.mjs /tmp/pictures
 *
 * builds the app and writes each place of places.ts at 390 × 844 and 820 × 1180, on paper and on dark cloth, and the
 * picture of the README to demo-data/bench.png.
 */
import { mkdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from '../../.ci/house.mjs';
import { launch, PHONE } from './chromium.ts';
import { places, still } from './places.ts';
import { serveApp } from './serve.ts';

// The picture of the README is to stay under 120 KB.
const UPRIGHT = { ...PHONE, deviceScaleFactor: 1.5 };
const TABLET = { ...PHONE, viewport: { width: 820, height: 1180 } };

/** Writes all pictures into a folder, and the picture of the README to demo-data/bench.png. */
export async function takePictures(folder: string): Promise<void> {
  mkdirSync(folder, { recursive: true });
  const [browser, served] = await Promise.all([launch(), serveApp()]);
  try {
    for (const [kind, options] of [
      ['phone', UPRIGHT],
      ['tablet', TABLET],
    ] as const) {
      for (const { name, go } of places) {
        const context = await browser.newContext({ ...options, locale: 'en-GB', colorScheme: 'light' });
        const page = await context.newPage();
        await go(page, served.origin);
        // The notice of the first visit stands on most screens once; the pictures show them as they are later.
        const notice = page.locator('[data-part="offline-ready"] button');
        if ((await notice.count()) > 0 && (await page.locator('dialog[open]').count()) === 0)
          await notice.first().click();
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.emulateMedia({ colorScheme });
          await still(page);
          const file = `${name.replace(/\W+/g, '-')}-${kind}-${colorScheme}.png`;
          await page.screenshot({ path: join(folder, file), scale: 'css' });
          if (name === 'bench, marks' && kind === 'phone' && colorScheme === 'light') {
            const picture = join(ROOT, 'demo-data/bench.png');
            await page.screenshot({ path: picture });
            console.log(`demo-data/bench.png: ${statSync(picture).size} bytes`);
          }
        }
        await context.close();
      }
    }
  } finally {
    await browser.close();
    await served.close();
  }
}
