import { spawn } from 'node:child_process';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project. */
export const ROOT = dirname(dirname(fileURLToPath(import.meta.url)));

/** The tools that come with the packages, each as the script that node runs, so that no shell is needed. */
export const TOOLS = {
  tsc: 'node_modules/typescript/bin/tsc',
  biome: 'node_modules/@biomejs/biome/bin/biome',
  vite: 'node_modules/vite/bin/vite.js',
  vitest: 'node_modules/vitest/vitest.mjs',
  playwright: 'node_modules/playwright-core/cli.js',
};

/**
 * Runs a program in the project's folder, its output shown as it comes, with nothing to read from.
 * @param {string} program
 * @param {readonly string[]} words
 * @param {{ shell?: boolean, env?: Record<string, string> }} [options]
 * @returns {Promise<boolean>} whether it ended well
 */
export function run(program, words, options = {}) {
  return new Promise((done) => {
    const child = spawn(program, words, {
      cwd: ROOT,
      stdio: ['ignore', 'inherit', 'inherit'],
      shell: options.shell ?? false,
      env: { ...process.env, ...options.env },
    });
    child.on('error', (error) => {
      console.error(`Could not run ${program}: ${error.message}`);
      done(false);
    });
    child.on('close', (code) => done(code === 0));
  });
}

/**
 * Runs one of the tools above.
 * @param {keyof typeof TOOLS} tool
 * @param {readonly string[]} words
 */
export const runTool = (tool, words) => run(process.execPath, [join(ROOT, TOOLS[tool]), ...words]);

/** Builds the app as it ships, also when called from a test run, whose NODE_ENV would make it a development build. */
export const buildApp = () =>
  run(process.execPath, [join(ROOT, TOOLS.vite), 'build', '--logLevel', 'warn'], {
    env: { NODE_ENV: 'production' },
  });
