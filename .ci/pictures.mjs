import { bundled } from './bundled.mjs';
import { buildApp } from './house.mjs';
import { ensurePackages } from './packages.mjs';

// Pictures of every screen into the folder named, and the one of the README: see tests/browser/pictures.ts.
const [folder] = process.argv.slice(2);
if (folder === undefined) {
  console.error('Name a folder for the pictures: node .ci/pictures.mjs /tmp/pictures');
  process.exit(1);
}
if (!(await ensurePackages()) || !(await buildApp())) process.exit(1);
const file = 'tests/browser/pictures.ts';
const address = (await bundled([file], 'pictures')).get(file);
if (address !== undefined) await (await import(address)).takePictures(folder);
