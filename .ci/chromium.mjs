import { accessSync, constants, existsSync, statSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { run, runTool } from './house.mjs';

const NAMES = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome', 'chrome'];

const PLACES = [
  '/usr/bin/chromium',
  '/usr/lib/chromium/chromium',
  '/snap/bin/chromium',
  '/opt/google/chrome/chrome',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
  'C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe',
];

/** How tests start it: able to run as root and on a machine without a screen card, and quiet on the network. */
export const BROWSER_FLAGS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/** @param {string} path */
function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}

/** Where Playwright keeps a browser of its own, whether it is there or not. */
function playwrightsOwn() {
  try {
    return createRequire(import.meta.url)('playwright-core').chromium.executablePath();
  } catch {
    return undefined;
  }
}

/**
 * The Chromium to test with: the one named in CHROMIUM_PATH, or on the search path, or in a usual place, or Playwright's.
 * @returns {string | undefined}
 */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) return runs(named) ? named : undefined;
  const onPath = (process.env.PATH ?? '')
    .split(delimiter)
    .filter(Boolean)
    .flatMap((folder) => NAMES.map((name) => join(folder, name)));
  const own = playwrightsOwn();
  return [...onPath, ...PLACES, ...(own ? [own] : [])].find(runs);
}

/** What to say when there is no browser. */
export const NO_CHROMIUM =
  'No Chromium was found. Install chromium or Chrome, or name one in the variable CHROMIUM_PATH, and run again.';

/**
 * Finds Chromium, or installs it: Debian's package if we may, else Playwright's own build.
 * @returns {Promise<string | undefined>}
 */
export async function ensureChromium() {
  const found = findChromium();
  if (found || process.env.CHROMIUM_PATH) return found;
  const isRoot = process.getuid?.() === 0;
  if (
    process.platform === 'linux' &&
    isRoot &&
    existsSync('/etc/debian_version') &&
    existsSync('/usr/bin/apt-get')
  ) {
    console.log('Installing Chromium (Debian package) …');
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    await run('apt-get', ['update', '-qq'], { env });
    await run('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium'], { env });
    const installed = findChromium();
    if (installed) return installed;
  }
  console.log("Installing Chromium (Playwright's build) …");
  await runTool('playwright', ['install', 'chromium']);
  return findChromium();
}
