import { dirname, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ROOT } from './house.mjs';

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

/**
 * Bundles files of the project as the app is, so that node can run them and what is timed is the code that ships and
 * not a development form of it.
 * @param {readonly string[]} files from the project's folder, ending in .ts
 * @param {string} name of the folder under .cache that they go to
 * @returns {Promise<ReadonlyMap<string, string>>} addresses to import each of them by
 */
export async function bundled(files, name) {
  // Only now: before the installation there is no vite to import.
  const { build } = await import('vite');
  const outDir = join(ROOT, '.cache', name);
  const named = files.map((file) => [file.replaceAll('/', '-').replace(/\.ts$/, ''), join(ROOT, file)]);
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
        input: Object.fromEntries(named),
        output: { entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' },
      },
    },
  });
  return new Map(files.map((file, i) => [file, pathToFileURL(join(outDir, `${named[i]?.[0]}.mjs`)).href]));
}
