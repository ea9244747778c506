import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, resolve, sep } from 'node:path';
import { HEADER_POLICY } from './policy.mjs';

/** @type {Record<string, string>} */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.woff': 'font/woff',
  '.txt': 'text/plain; charset=utf-8',
};

/** Names under assets/ carry a hash of their content, so they never change; all else is asked for again. */
const HASHED = /^\/assets\/.+-[\w-]{8,}\.\w+$/;

/**
 * The file that a request asks for, or nothing if it lies outside the folder or cannot be read as a path.
 * @param {string} folder absolute
 * @param {string} url as it came in the request
 */
function asked(folder, url) {
  let path;
  try {
    path = decodeURIComponent(new URL(url, 'http://here').pathname);
  } catch {
    return undefined;
  }
  if (path.includes('\0')) return undefined;
  const file = resolve(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  return file === folder || file.startsWith(folder + sep) ? { path, file } : undefined;
}

/**
 * Serves a built folder as a plain static host would, with our content security policy.
 * @param {{ folder: string, port?: number, host?: string }} options Port 0 (the default) takes any free one; with
 *   another, the first free one from there up. Host defaults to this machine only.
 * @returns {Promise<{ port: number, origin: string, close: () => Promise<void> }>}
 */
export async function serve({ folder, port = 0, host = '127.0.0.1' }) {
  const root = resolve(folder);
  const server = createServer(async (request, response) => {
    /** @param {number} status @param {string} text */
    const say = (status, text) => {
      response.writeHead(status, {
        'content-type': 'text/plain; charset=utf-8',
        'cache-control': 'no-store',
      });
      response.end(text);
    };
    if (request.method !== 'GET' && request.method !== 'HEAD')
      return say(405, 'Only reading is possible here.');
    const wanted = asked(root, request.url ?? '/');
    const found = wanted && (await stat(wanted.file).catch(() => undefined));
    if (!wanted || !found?.isFile()) return say(404, 'There is no such file.');
    response.writeHead(200, {
      'content-type': TYPES[extname(wanted.file)] ?? 'application/octet-stream',
      'content-length': found.size,
      'cache-control': HASHED.test(wanted.path) ? 'public, max-age=31536000, immutable' : 'no-cache',
      'content-security-policy': HEADER_POLICY,
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
    if (request.method === 'HEAD') return response.end();
    createReadStream(wanted.file)
      .on('error', () => response.destroy())
      .pipe(response);
  });
  const taken = await listen(server, host, port);
  return {
    port: taken,
    origin: `http://localhost:${taken}`,
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        server.closeAllConnections();
      }),
  };
}

/**
 * @param {import('node:http').Server} server
 * @param {string} host
 * @param {number} first
 * @returns {Promise<number>} the port that was free
 */
async function listen(server, host, first) {
  for (let port = first; port < first + 100; port += 1) {
    const taken = await new Promise((done, fail) => {
      /** @param {NodeJS.ErrnoException} error */
      const refused = (error) => (error.code === 'EADDRINUSE' ? done(undefined) : fail(error));
      server.once('error', refused);
      server.listen(port, host, () => {
        server.off('error', refused);
        const address = server.address();
        done(typeof address === 'object' ? address?.port : undefined);
      });
    });
    if (taken !== undefined) return taken;
  }
  throw new Error(
    `No free port between ${first} and ${first + 99}. Close a program that serves there and try again.`,
  );
}
