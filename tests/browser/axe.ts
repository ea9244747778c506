import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { AxeResults, RunOptions } from 'axe-core';
import type { Page } from 'playwright-core';

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What axe finds wrong, a line each. Put in by the debugger's door, because the page's policy lets no script in. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(async (): Promise<AxeResults> => {
    const { axe: here } = globalThis as unknown as { axe: { run(options: RunOptions): Promise<AxeResults> } };
    return here.run({ resultTypes: ['violations'] });
  });
  return violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(' ')}`));
}

/** How far a page is wider than the screen, in pixels of the page. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
