import { posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import { built, gzipped, storedFiles } from './files.ts';
import { importsIn } from './imports.ts';

/** 1 KB here is 1000 bytes, the stricter reading. */
const KB = 1000;
const FIRST_LOAD_LIMIT = 40 * KB;
const STORED_LIMIT = 680 * KB;

/** The scripts that must arrive before the app starts: those in index.html and all they import, by way of others too. */
function firstScripts(): string[] {
  const html = built('index.html');
  const tags = [
    ...html.matchAll(/<script\b[^>]*\bsrc="([^"]+)"/g),
    ...html.matchAll(/<link\b[^>]*rel="modulepreload"[^>]*\bhref="([^"]+)"/g),
  ];
  const scripts = new Set(tags.map((match) => posix.normalize(match[1]!)));
  // A set takes what is added while it is walked, so this follows every import.
  for (const file of scripts) {
    for (const { from, later } of importsIn(file, built(file))) {
      if (!later) scripts.add(posix.join(posix.dirname(file), from));
    }
  }
  return [...scripts];
}

const kb = (bytes: number): string => `${(bytes / KB).toFixed(1)} KB`;
const sum = (files: readonly string[]): number => files.reduce((total, file) => total + gzipped(file), 0);

describe('sizes after gzip', () => {
  it('loads little script before the first screen', () => {
    const scripts = firstScripts();
    expect(scripts.length).toBeGreaterThan(0);
    const size = sum(scripts);
    console.log(`First-load script: ${kb(size)} gzip of ${kb(FIRST_LOAD_LIMIT)} (${scripts.length} files)`);
    expect(size).toBeLessThanOrEqual(FIRST_LOAD_LIMIT);
  });

  it('stores little for offline use', () => {
    const stored = [...storedFiles(), 'sw.js'];
    expect(stored.length).toBeGreaterThan(3);
    const size = sum(stored);
    console.log(`Whole offline copy: ${kb(size)} gzip of ${kb(STORED_LIMIT)} (${stored.length} files)`);
    expect(size).toBeLessThanOrEqual(STORED_LIMIT);
  });
});
