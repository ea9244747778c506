import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { built, DIST, filesUnder, storedFiles } from './files.ts';

describe('offline copy', () => {
  it('is the whole build, and nothing else', () => {
    // The worker stores all but itself; a browser keeps that one on its own.
    expect(storedFiles()).toEqual(filesUnder(DIST).filter((path) => path !== 'sw.js'));
  });

  it('is served by a worker that waits to be told before it takes over', () => {
    const worker = built('sw.js');
    expect(worker.match(/skipWaiting\(\)/g)).toHaveLength(1);
    expect(worker).toMatch(/SKIP_WAITING.{0,40}skipWaiting\(\)/);
    expect(worker).not.toContain('importScripts(');
  });

  it('can be installed: the manifest is whole, and every picture it names is there', () => {
    const manifest = JSON.parse(built('manifest.webmanifest'));
    expect(manifest).toMatchObject({
      name: 'Slipbaste',
      display: 'standalone',
      start_url: './',
      scope: './',
    });
    expect(manifest).not.toHaveProperty('orientation');
    const icons: { src: string; sizes: string; purpose?: string }[] = manifest.icons;
    expect(icons.map((icon) => icon.sizes)).toEqual(expect.arrayContaining(['192x192', '512x512']));
    expect(icons.some((icon) => icon.purpose === 'maskable')).toBe(true);
    expect(icons.filter((icon) => !existsSync(join(DIST, icon.src)))).toEqual([]);
  });
});
