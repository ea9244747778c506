// Draws the icon's pictures anew from public/icons/icon.svg. Run by hand after the drawing has changed.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { BROWSER_FLAGS, findChromium, NO_CHROMIUM } from './chromium.mjs';
import { ROOT } from './house.mjs';
import { palettePng } from './palette-png.mjs';

const folder = join(ROOT, 'public/icons');
const rounded = readFileSync(join(folder, 'icon.svg'), 'utf8');
const square = rounded.replace(' rx="96"', '');
// A launcher may cut a maskable icon to a circle of 80 % of its width; the needle must lie inside.
const inner = square.replace('rotate(8 256 256)', 'translate(41 41) scale(.84) rotate(8 256 256)');

const executablePath = findChromium();
if (!executablePath) throw new Error(NO_CHROMIUM);
const browser = await chromium.launch({ executablePath, args: BROWSER_FLAGS });
for (const [name, size, drawing] of /** @type {const} */ ([
  ['icon-192', 192, rounded],
  ['icon-512', 512, rounded],
  ['icon-maskable-512', 512, inner],
  ['apple-touch-180', 180, square],
])) {
  const page = await browser.newPage();
  const pixels = await page.evaluate(
    async ({ size: side, drawing: svg }) => {
      const image = new Image();
      image.src = `data:image/svg+xml,${encodeURIComponent(svg)}`;
      await image.decode();
      const canvas = new OffscreenCanvas(side, side);
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('no canvas');
      pen.drawImage(image, 0, 0, side, side);
      return [...pen.getImageData(0, 0, side, side).data];
    },
    { size, drawing },
  );
  writeFileSync(join(folder, `${name}.png`), palettePng(Uint8Array.from(pixels), size));
}
await browser.close();
