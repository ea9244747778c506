import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, run } from './house.mjs';

/**
 * @typedef {{ version?: string, integrity?: string, optional?: boolean, link?: boolean }} Locked
 * @param {string} path
 * @returns {Record<string, Locked> | undefined}
 */
function locked(path) {
  try {
    return JSON.parse(readFileSync(join(ROOT, path), 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/**
 * What the lock file wants and `node_modules` does not hold. npm leaves its own list there when an installation has
 * ended well, so a broken-off one counts as missing. Packages for another kind of machine are optional and may lack.
 * @returns {string[]} paths of packages
 */
export function missingPackages() {
  const wanted = locked('package-lock.json') ?? {};
  const present = locked('node_modules/.package-lock.json') ?? {};
  return Object.entries(wanted)
    .filter(([path, want]) => {
      if (path === '' || want.link) return false;
      const have = present[path];
      if (!have) return !want.optional;
      if (have.version !== want.version || have.integrity !== want.integrity) return true;
      return !want.optional && !existsSync(join(ROOT, path, 'package.json'));
    })
    .map(([path]) => path);
}

/**
 * Installs the packages if any is missing or of another version; needs no network if all are there.
 * @returns {Promise<boolean>} whether all are there now
 */
export async function ensurePackages() {
  const missing = missingPackages();
  if (missing.length === 0) return true;
  console.log(`Installing packages (${missing.length} missing or of another version) …`);
  const words = ['ci', '--include=dev', '--no-audit', '--no-fund', '--loglevel=error'];
  // On Windows npm is a command script, which only a shell can start.
  if (await run('npm', words, { shell: process.platform === 'win32' })) return true;
  console.error('The packages could not be installed. A connection to the npm registry is needed once.');
  return false;
}
