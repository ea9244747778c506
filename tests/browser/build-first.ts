import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { buildApp, ROOT } from '../../.ci/house.mjs';

const SOURCES = ['src', 'public', 'demo-data', 'index.html', 'vite.config.ts', 'package-lock.json'];

/** When the newest file at or under a path was written, in ms since 1970; 0 when there is none. */
function newest(path: string): number {
  const found = statSync(path, { throwIfNoEntry: false });
  if (!found) return 0;
  if (!found.isDirectory()) return found.mtimeMs;
  return readdirSync(path, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .reduce((latest, entry) => Math.max(latest, statSync(join(entry.parentPath, entry.name)).mtimeMs), 0);
}

/** Builds the app before the browser tests unless the build is newer than everything it is made from. */
export default async function buildFirst(): Promise<void> {
  const built = newest(join(ROOT, 'dist/index.html'));
  if (built > 0 && SOURCES.every((path) => newest(join(ROOT, path)) <= built)) return;
  if (!(await buildApp())) throw new Error('The build failed; see above.');
}
