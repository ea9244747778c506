import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HEADER_POLICY } from '../../.ci/policy.mjs';
import { serve } from '../../.ci/static-server.mjs';

const base = mkdtempSync(join(tmpdir(), 'slipbaste-serve-'));
const folder = join(base, 'dist');
let server: Awaited<ReturnType<typeof serve>>;

beforeAll(async () => {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  mkdirSync(join(base, 'dist-other'));
  writeFileSync(join(folder, 'index.html'), '<p>here</p>');
  writeFileSync(join(folder, 'sw.js'), '1');
  writeFileSync(join(folder, 'assets/index-CF--hPC1.js'), '2');
  writeFileSync(join(base, 'secret.txt'), 'secret');
  writeFileSync(join(base, 'dist-other/secret.txt'), 'secret');
  server = await serve({ folder });
});
afterAll(async () => {
  await server.close();
  rmSync(base, { recursive: true, force: true });
});

/** Asks with the path exactly as written; fetch would tidy it up first. */
const ask = (path: string, method = 'GET') =>
  new Promise<{ status: number | undefined; headers: Record<string, unknown>; body: string }>(
    (done, fail) => {
      request({ host: '127.0.0.1', port: server.port, path, method }, (response) => {
        let body = '';
        response.on('data', (part) => {
          body += part;
        });
        response.on('end', () => done({ status: response.statusCode, headers: response.headers, body }));
      })
        .on('error', fail)
        .end();
    },
  );

describe('static server', () => {
  it('serves the page with its policy, to be asked for again each time', async () => {
    const { status, headers, body } = await ask('/');
    expect(status).toBe(200);
    expect(body).toBe('<p>here</p>');
    expect(headers).toMatchObject({
      'content-type': 'text/html; charset=utf-8',
      'content-security-policy': HEADER_POLICY,
      'cache-control': 'no-cache',
    });
  });

  it('lets hashed files be kept for good, but not the worker', async () => {
    expect((await ask('/assets/index-CF--hPC1.js')).headers['cache-control']).toContain('immutable');
    expect((await ask('/sw.js')).headers['cache-control']).toBe('no-cache');
  });

  it.each([
    '/../secret.txt',
    '/%2e%2e/secret.txt',
    '/..%2fsecret.txt',
    '/../dist-other/secret.txt',
    '/..%2fdist-other/secret.txt',
    '/%00',
    '/%',
    '//../secret.txt',
    '/assets',
    '/none',
  ])('gives nothing for %s', async (path) => {
    const { status, body } = await ask(path);
    expect(status).toBe(404);
    expect(body).not.toContain('secret');
  });

  it('refuses to be written to, and answers a question for headers without a body', async () => {
    expect((await ask('/', 'POST')).status).toBe(405);
    expect(await ask('/', 'HEAD')).toMatchObject({ status: 200, body: '' });
  });

  it('takes the next free port when the wanted one is taken', async () => {
    const other = await serve({ folder, port: server.port });
    try {
      expect(other.port).toBeGreaterThan(server.port);
    } finally {
      await other.close();
    }
  });
});
