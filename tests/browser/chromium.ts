import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type LaunchOptions,
} from 'playwright-core';
import { BROWSER_FLAGS, findChromium, NO_CHROMIUM } from '../../.ci/chromium.mjs';

/** A phone of common size, held upright. */
export const PHONE: BrowserContextOptions = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  hasTouch: true,
  isMobile: true,
};

function withFlags(options: LaunchOptions): LaunchOptions {
  const executablePath = options.executablePath ?? findChromium();
  if (!executablePath) throw new Error(NO_CHROMIUM);
  return { ...options, executablePath, args: [...BROWSER_FLAGS, ...(options.args ?? [])] };
}

/** Starts a browser that forgets everything when closed. Throws a clear message when no Chromium is installed. */
export function launch(options: LaunchOptions = {}): Promise<Browser> {
  return chromium.launch(withFlags(options));
}

/** Starts a browser that keeps its storage in `profile`, so that it can be closed, or killed, and opened again. */
export function launchPersistent(
  profile: string,
  options: LaunchOptions & BrowserContextOptions = {},
): Promise<BrowserContext> {
  return chromium.launchPersistentContext(profile, { ...options, ...withFlags(options) });
}
