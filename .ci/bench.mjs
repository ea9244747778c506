import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './house.mjs';
import { ensurePackages } from './packages.mjs';

if (!(await ensurePackages())) process.exit(1);
// Only now: before the installation there is no vite to import.
const { createServer } = await import('vite');

const folder = join(ROOT, 'tests/bench');
const wanted = process.argv.slice(2);
const files = readdirSync(folder)
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .sort();
if (files.length === 0) {
  console.error(`No benchmark in tests/bench matches ${wanted.join(', ') || '*.bench.ts'}.`);
  process.exit(1);
}

const vite = await createServer({
  root: ROOT,
  configFile: false,
  logLevel: 'error',
  appType: 'custom',
  server: { middlewareMode: true, hmr: false, ws: false, watch: null },
});
try {
  for (const name of files) {
    console.log(`\n${name.replace(/\.bench\.ts$/, '')}`);
    await vite.ssrLoadModule(join(folder, name));
  }
} catch (error) {
  console.error(error);
  process.exitCode = 1;
} finally {
  await vite.close();
}
