import type { Browser, Page } from 'playwright-core';

/**
 * A run of text, its ink, and the worst contrast that it has with any pixel of the ground it stands on; in a drawing,
 * with the colour that most of its ground has.
 */
export interface Contrast {
  readonly text: string;
  readonly ink: string;
  readonly ratio: number;
}

interface Run {
  readonly text: string;
  readonly ink: string;
  /** True in a drawing, where lines may touch the box of a letter but not the letter. */
  readonly drawn: boolean;
  readonly boxes: readonly { x: number; y: number; width: number; height: number }[];
}

/** Marks all text in sight, with its colour, then makes it invisible so that only its ground is left to photograph. */
const bare = (): Run[] => {
  const within = document.querySelector('dialog[open]') ?? document.body;
  const runs: Run[] = [];
  const walker = document.createTreeWalker(within, NodeFilter.SHOW_TEXT);
  for (let node = walker.nextNode(); node; node = walker.nextNode()) {
    const text = node.textContent?.trim() ?? '';
    const parent = node.parentElement;
    if (text === '' || !parent?.checkVisibility({ visibilityProperty: true, opacityProperty: true }))
      continue;
    if (parent.closest('.unseen, option, progress, noscript')) continue;
    const range = document.createRange();
    range.selectNodeContents(node);
    const style = getComputedStyle(parent);
    const ink = parent instanceof SVGElement ? style.fill : style.color;
    // Only what is not scrolled away under something else.
    const boxes = [...range.getClientRects()]
      .map(({ x, y, width, height }) => ({ x, y, width, height }))
      .filter(({ x, y, width, height }) => {
        if (width < 1 || height < 1) return false;
        const corners = [
          [x + 1, y + 1],
          [x + width - 1, y + height - 1],
          [x + width / 2, y + height / 2],
        ] as const;
        return corners.every(([cx, cy]) => {
          const at = document.elementFromPoint(cx, cy);
          return (
            at !== null && (at.contains(parent) || parent.contains(at) || parent.closest('svg')?.contains(at))
          );
        });
      });
    if (boxes.length > 0) runs.push({ text, ink, drawn: parent instanceof SVGElement, boxes });
  }
  const sheet = new CSSStyleSheet();
  sheet.replaceSync(
    '*, *::before, *::after { color: transparent !important; text-shadow: none !important; caret-color: transparent !important; transition: none !important; animation: none !important } text { fill: transparent !important }',
  );
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
  return runs;
};

const clothed = (): void => {
  document.adoptedStyleSheets = document.adoptedStyleSheets.slice(0, -1);
};

/** WCAG 2.2 contrast of each run with the pixels of a picture of its ground; the worst pixel counts. */
const worst = async ([png, runs, scale]: [string, Run[], number]): Promise<Contrast[]> => {
  const bytes = Uint8Array.from(atob(png), (char) => char.charCodeAt(0));
  const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('No canvas.');
  context.drawImage(bitmap, 0, 0);
  const luminance = ([r = 0, g = 0, b = 0]: readonly number[]): number => {
    const [R = 0, G = 0, B = 0] = [r, g, b].map((part) => {
      const c = part / 255;
      return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
    });
    return 0.2126 * R + 0.7152 * G + 0.0722 * B;
  };
  const known = new Map<number, number>();
  return runs.flatMap(({ text, ink, drawn, boxes }) => {
    const colour = (ink.match(/[\d.]+/g) ?? []).map(Number);
    const own = luminance(colour);
    let ratio = Number.POSITIVE_INFINITY;
    const grounds = new Map<number, number>();
    for (const { x, y, width, height } of boxes) {
      const [left, top] = [Math.max(0, Math.round(x * scale)), Math.max(0, Math.round(y * scale))];
      const w = Math.min(bitmap.width - left, Math.round(width * scale));
      const h = Math.min(bitmap.height - top, Math.round(height * scale));
      if (w < 1 || h < 1) continue;
      const { data } = context.getImageData(left, top, w, h);
      for (let i = 0; i < data.length; i += 4) {
        const key = ((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0);
        let ground = known.get(key);
        if (ground === undefined) {
          ground = luminance([data[i] ?? 0, data[i + 1] ?? 0, data[i + 2] ?? 0]);
          known.set(key, ground);
        }
        ratio = Math.min(ratio, (Math.max(own, ground) + 0.05) / (Math.min(own, ground) + 0.05));
        if (drawn) grounds.set(ground, (grounds.get(ground) ?? 0) + 1);
      }
    }
    if (drawn) {
      const [[most] = [own]] = [...grounds].sort((a, b) => b[1] - a[1]);
      ratio = (Math.max(own, most) + 0.05) / (Math.min(own, most) + 0.05);
    }
    return Number.isFinite(ratio) ? [{ text: text.slice(0, 50), ink, ratio }] : [];
  });
};

/**
 * Measures the contrast of all text in sight against what is really painted behind it: gradients, weave and pictures
 * included. A second page does the sums, because the page's own policy is strict.
 */
export async function contrasts(browser: Browser, page: Page): Promise<readonly Contrast[]> {
  const runs = await page.evaluate(bare);
  const scale = await page.evaluate(() => devicePixelRatio);
  const png = await page.screenshot({ scale: 'device' });
  await page.evaluate(clothed);
  const bench = await browser.newPage();
  try {
    return await bench.evaluate(worst, [png.toString('base64'), runs, scale] as [string, Run[], number]);
  } finally {
    await bench.close();
  }
}
