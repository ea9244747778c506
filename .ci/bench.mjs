import { readdirSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './house.mjs';
import { ensurePackages } from './packages.mjs';

if (!(await ensurePackages())) process.exit(1);
// Only now: before the installation there is no vite to import.
const { build } = await import('vite');

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

/**
 * The tools in this folder find the project by where they lie, so they are not bundled.
 * @type {import('vite').Plugin}
 */
const toolsStay = {
  name: 'tools-stay',
  enforce: 'pre',
  resolveId: (source, importer) =>
    importer && /\/\.ci\/[\w-]+\.mjs$/.test(source)
      ? { id: pathToFileURL(resolve(dirname(importer), source)).href, external: true }
      : undefined,
};

// Bundled as the app is, so that what is timed is the code that ships and not a development form of it.
const outDir = join(ROOT, '.cache/bench');
await build({
  root: ROOT,
  configFile: false,
  publicDir: false,
  logLevel: 'error',
  plugins: [toolsStay],
  build: {
    ssr: true,
    target: 'es2022',
    outDir,
    emptyOutDir: true,
    rollupOptions: {
      input: Object.fromEntries(files.map((name) => [name.replace(/\.ts$/, ''), join(folder, name)])),
      output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
    },
  },
});

for (const name of files) {
  console.log(`\n${name.replace(/\.bench\.ts$/, '')}`);
  try {
    await import(pathToFileURL(join(outDir, name.replace(/\.ts$/, '.mjs'))).href);
  } catch (error) {
    console.error(error);
    process.exitCode = 1;
  }
}
