import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { bundled } from './bundled.mjs';
import { ROOT } from './house.mjs';
import { ensurePackages } from './packages.mjs';

if (!(await ensurePackages())) process.exit(1);

const wanted = process.argv.slice(2);
const files = readdirSync(join(ROOT, 'tests/bench'))
  .filter((name) => name.endsWith('.bench.ts'))
  .filter((name) => wanted.length === 0 || wanted.some((part) => name.includes(part)))
  .sort()
  .map((name) => `tests/bench/${name}`);
if (files.length === 0) {
  console.error(`No benchmark in tests/bench matches ${wanted.join(', ') || '*.bench.ts'}.`);
  process.exit(1);
}

for (const [file, address] of await bundled(files, 'bench')) {
  console.log(`\n${file.replace(/^.*\/(.*)\.bench\.ts$/, '$1')}`);
  try {
    await import(address);
  } catch (error) {
    console.error(error);
    process.exitCode = 1;
  }
}
