import { networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { buildApp, ROOT } from './house.mjs';
import { ensurePackages } from './packages.mjs';
import { serve } from './static-server.mjs';

if (!(await ensurePackages())) process.exit(1);
console.log('Building …');
if (!(await buildApp())) process.exit(1);

const server = await serve({ folder: join(ROOT, 'dist'), port: 4173, host: '0.0.0.0' });
const nearby = Object.values(networkInterfaces())
  .flatMap((list) => list ?? [])
  .filter((one) => one.family === 'IPv4' && !one.internal)
  .map((one) => `http://${one.address}:${server.port}/`);

console.log(`\n  Slipbaste is at  ${server.origin}/\n`);
if (nearby.length > 0) {
  console.log(`  On a phone in the same network:  ${nearby.join('  ')}`);
  console.log(
    '  There it works only while this computer serves it: browsers keep an app for offline use only when it',
  );
  console.log(
    '  comes over https (or from the device itself). For a phone that works offline, put the folder dist/ on',
  );
  console.log(
    '  any static host with https, open it once on the phone, and install it from the browser menu.',
  );
  console.log('  Anyone in this network can open the address. They see the program, never your outfits.\n');
}
console.log('  Ctrl-C ends it.');

const end = () => server.close().then(() => process.exit(0));
process.on('SIGINT', end);
process.on('SIGTERM', end);
// When npm itself is told to end, it ends the shell between but not us; so watch whether that shell is still there.
if (process.env.npm_lifecycle_event === 'start') {
  const parent = process.ppid;
  setInterval(() => {
    if (process.ppid !== parent) end();
  }, 1000).unref();
}
