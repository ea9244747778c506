import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { ensureChromium, NO_CHROMIUM } from './chromium.mjs';
import { buildApp, runTool } from './house.mjs';
import { ensurePackages } from './packages.mjs';
import { countReport } from './report.mjs';

let passed = 0;
let failed = 0;
/** @type {string[]} */
const failures = [];

/** @param {string} what @param {() => Promise<boolean>} work */
async function step(what, work) {
  console.log(`\n── ${what}`);
  if (await work()) {
    passed += 1;
  } else {
    failed += 1;
    failures.push(what);
  }
}

/** Runs every vitest project and adds up what its own report says. */
async function tests() {
  console.log('\n── tests');
  const folder = mkdtempSync(join(tmpdir(), 'slipbaste-report-'));
  const file = join(folder, 'report.json');
  const endedWell = await runTool('vitest', [
    'run',
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${file}`,
  ]);
  let text;
  try {
    text = readFileSync(file, 'utf8');
  } catch {
    text = undefined;
  }
  rmSync(folder, { recursive: true, force: true });
  const count = countReport(text, endedWell);
  passed += count.passed;
  failed += count.failed;
  failures.push(...count.failures);
}

function end() {
  if (failures.length > 0) console.log(`\nFailed:\n${failures.map((one) => `  ${one}`).join('\n')}`);
  console.log(`\n${passed} passed, ${failed} failed`);
  // The exit code, not exit(): what is written must reach a pipe first.
  process.exitCode = failed > 0 ? 1 : 0;
}

if (await ensurePackages()) {
  const chromium = await ensureChromium();
  // Without a browser the rest is still worth knowing; the browser tests fail and are counted.
  console.log(chromium ? `Chromium: ${chromium}` : NO_CHROMIUM);
  await step('types of the core', () => runTool('tsc', ['-p', 'src/core.tsconfig.json']));
  await step('types of the app', () => runTool('tsc', ['-p', 'tsconfig.json']));
  await step('lint', () => runTool('biome', ['ci']));
  await step('build', buildApp);
  await tests();
} else {
  failed = 1;
  failures.push('packages');
}
end();
