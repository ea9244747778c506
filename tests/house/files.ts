import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { gzipSync } from 'node:zlib';
import { parseSync, Visitor } from 'vite';
import { ROOT } from '../../.ci/house.mjs';

export { ROOT };

/** The folder of the build. */
export const DIST = join(ROOT, 'dist');

/** Every file under a folder, as paths from it with forward slashes, sorted. */
export function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)).split(sep).join('/'))
    .sort();
}

/** The text of a built file. Throws, saying what to do, when it is not there. */
export function built(path: string): string {
  const file = join(DIST, path);
  if (!existsSync(file)) throw new Error(`dist/${path} is missing. Run npm run build first.`);
  return readFileSync(file, 'utf8');
}

/** The size of a built file after gzip at its strongest, in bytes. */
export const gzipped = (path: string): number =>
  gzipSync(readFileSync(join(DIST, path)), { level: 9 }).length;

/** The files that the service worker stores, as the built worker itself lists them: each `{ url, revision }` in it. */
export function storedFiles(): string[] {
  const { program, errors } = parseSync('sw.js', built('sw.js'));
  if (errors.length > 0) throw new Error('dist/sw.js cannot be parsed.');
  const urls: string[] = [];
  new Visitor({
    ObjectExpression: ({ properties }) => {
      const values = new Map<string, unknown>();
      for (const one of properties) {
        if (one.type !== 'Property' || one.value.type !== 'Literal') return;
        if (one.key.type === 'Identifier') values.set(one.key.name, one.value.value);
      }
      const url = values.get('url');
      if (values.has('revision') && typeof url === 'string') urls.push(url);
    },
  }).visit(program);
  return urls.sort();
}
