import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HEADER_POLICY, PAGE_POLICY } from '../../.ci/policy.mjs';
import { built, filesUnder, ROOT } from './files.ts';

const metaPolicy = (html: string): string | undefined =>
  /<meta http-equiv="Content-Security-Policy" content="([^"]*)">/.exec(html)?.[1];

describe('page policy', () => {
  it('is the same in the page, in the built page and in the header', () => {
    expect(metaPolicy(readFileSync(join(ROOT, 'index.html'), 'utf8'))).toBe(PAGE_POLICY);
    expect(metaPolicy(built('index.html'))).toBe(PAGE_POLICY);
    expect(HEADER_POLICY).toBe(`${PAGE_POLICY}; frame-ancestors 'none'`);
  });

  it('starts from nothing and opens no way out', () => {
    expect(PAGE_POLICY.startsWith("default-src 'none'; ")).toBe(true);
    expect(PAGE_POLICY).not.toMatch(/unsafe|https?:|\*/);
  });

  it('stands before anything that the page loads', () => {
    const html = built('index.html');
    expect(html.indexOf('Content-Security-Policy')).toBeLessThan(html.search(/<(script|link|style)\b/));
  });
});

describe('built page', () => {
  const html = built('index.html');

  it('holds no inline script, style or handler', () => {
    const scripts = [...html.matchAll(/<script\b([^>]*)>([\s\S]*?)<\/script>/g)];
    expect(scripts.length).toBeGreaterThan(0);
    for (const [, attributes, content] of scripts) {
      expect(attributes).toMatch(/\bsrc="\.\//);
      expect(content?.trim()).toBe('');
    }
    expect(html).not.toMatch(/<style\b|\sstyle=|\son\w+=|javascript:/i);
  });

  it('names only files of its own, from where it stands', () => {
    const addresses = [...html.matchAll(/\b(?:src|href)="([^"]*)"/g)].map((match) => match[1]!);
    expect(addresses.filter((one) => !one.startsWith('./'))).toEqual([]);
  });

  it('lets the maker zoom', () => {
    expect(html).toContain(
      'content="width=device-width, initial-scale=1, viewport-fit=cover, interactive-widget=resizes-content"',
    );
  });
});

describe('markup in the sources', () => {
  // Preact sets a style property through the object model, which the policy allows; raw markup would be refused.
  it('is never set as raw text', () => {
    const files = filesUnder(join(ROOT, 'src')).filter((path) => /\.tsx?$/.test(path));
    const raw = files.filter((path) =>
      /dangerouslySetInnerHTML|\.(inner|outer)HTML\s*=|insertAdjacentHTML|document\.write/.test(
        readFileSync(join(ROOT, 'src', path), 'utf8'),
      ),
    );
    expect(raw).toEqual([]);
  });
});
