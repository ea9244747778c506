import { fileURLToPath } from 'node:url';
import preact from '@preact/preset-vite';
import type { Plugin } from 'vite';
import { VitePWA } from 'vite-plugin-pwa';
import { defineConfig } from 'vitest/config';
import { figures } from './.ci/constants.mjs';

/** The development server puts styles and scripts inline, which the page's own policy refuses: leave it out there only. */
const policyOnlyWhenBuilt: Plugin = {
  name: 'policy-only-when-built',
  apply: 'serve',
  transformIndexHtml: (html) => html.replace(/<meta http-equiv="Content-Security-Policy"[^>]*>/, ''),
};

const offline = VitePWA({
  strategies: 'generateSW',
  registerType: 'prompt',
  injectRegister: null,
  includeManifestIcons: false,
  manifest: {
    id: './',
    name: 'Slipbaste',
    short_name: 'Slipbaste',
    description:
      'The companion that leans against the sewing machine: what to sew next, and every measure for it.',
    lang: 'en',
    start_url: './',
    scope: './',
    display: 'standalone',
    background_color: '#f3ead6',
    theme_color: '#f3ead6',
    categories: ['utilities', 'lifestyle'],
    icons: [
      { src: 'icons/icon.svg', sizes: 'any', type: 'image/svg+xml' },
      { src: 'icons/icon-192.png', sizes: '192x192', type: 'image/png' },
      { src: 'icons/icon-512.png', sizes: '512x512', type: 'image/png' },
      { src: 'icons/icon-maskable-512.png', sizes: '512x512', type: 'image/png', purpose: 'maskable' },
    ],
  },
  workbox: {
    // All or nothing: what is built is what is kept. A test compares the two lists.
    globPatterns: ['**/*'],
    globIgnores: ['sw.js', 'manifest.webmanifest'],
    navigateFallback: 'index.html',
    cleanupOutdatedCaches: true,
    // The first visit is under the worker's care at once. A later worker waits until the maker says yes.
    clientsClaim: true,
    skipWaiting: false,
    inlineWorkboxRuntime: true,
    sourcemap: false,
  },
});

/** A machine that is busy with other things is slow, not wrong; how long something takes is measured where it matters. */
const PATIENCE = 30_000;

export default defineConfig({
  base: './',
  resolve: {
    // The PDF library could load these to print web pages and pictures. We draw lines and words only.
    alias: Object.fromEntries(
      ['html2canvas', 'canvg', 'dompurify'].map((name) => [
        name,
        fileURLToPath(new URL('src/print/left-out.ts', import.meta.url)),
      ]),
    ),
  },
  plugins: [preact(), policyOnlyWhenBuilt, figures(), offline],
  build: {
    target: 'es2022',
    sourcemap: false,
    modulePreload: { polyfill: false },
    // The policy lets fonts and pictures come from files, so none is folded into a data address.
    assetsInlineLimit: 0,
  },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: 'core',
          environment: 'node',
          include: [
            'tests/{length,shape,cloth,outfit,paper,reckon,order,fitting,time,traced,outside,house}/**/*.test.ts',
          ],
          testTimeout: PATIENCE,
        },
      },
      {
        extends: true,
        test: {
          name: 'screens',
          environment: 'happy-dom',
          include: ['tests/{store,ui,screens,pwa}/**/*.test.{ts,tsx}'],
          testTimeout: PATIENCE,
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/browser/**/*.test.ts'],
          globalSetup: ['tests/browser/build-first.ts'],
          testTimeout: 120_000,
          hookTimeout: 120_000,
          expect: { poll: { timeout: 15_000 } },
          fileParallelism: false,
          // After the others: what is timed in the browser must not share the machine with them.
          sequence: { groupOrder: 1 },
        },
      },
    ],
  },
});
