import { expect, test } from 'vitest';
import { readOutfitFile } from '../../src/outfit/reading-file.ts';
import { small } from './small.ts';
import { change } from './spoil.ts';

/** As many pieces as a file may have, with an edge of five of them joined to the next, and as many works. */
function large(): unknown {
  const data = small();
  const [garment] = data.garments;
  const [front] = garment!.pieces;
  const [gather] = garment!.works;
  const ids = Array.from({ length: 500 }, (_, i) => `piece-${i}`);
  garment!.pieces = ids.map((id) => ({ ...front!, id, name: id }));
  garment!.works = ids.map((id) => ({ ...gather!, id: `gathers-${id}`, name: `Gathers ${id}`, on: id }));
  garment!.joins = ids.slice(1).map((id, i) => ({
    id: `seam-${id}`,
    name: `Seam ${id}`,
    this: [`${ids[i]!}.side`],
    to: [`${id}.opening`],
    depth: '15 mm',
  }));
  garment!.gates = [{ id: 'try', name: 'Try-on', after: [`seam-${ids[1]!}`], checks: ['It hangs straight'] }];
  return data;
}
const G = '/garments/0';
const wrong = (): unknown => {
  const data = large();
  for (let i = 0; i < 500; i += 10) {
    change(data, `${G}/pieces/${i}/cut`, 'twice');
    change(data, `${G}/works/${i}/${i % 20 === 0 ? 'marker' : 'kind'}`, 'pencil');
    change(data, `${G}/joins/${Math.min(i, 498)}/to/0`, i % 20 === 0 ? 'nowhere' : 'piece-1.sdie');
  }
  return data;
};

/** A file of 500 pieces is read or refused within this, ms of the processor’s time: other tests run beside this one. */
const SOON = 300;
/** The quickest of so many is counted. */
const RUNS = 7;

test.each([
  ['right', large(), 0],
  ['wrong', wrong(), 100],
] as const)(
  'a %s file of 500 pieces is answered soon, with what is wrong in it',
  (what, data, mistakes) => {
    const text = JSON.stringify(data, null, 2);
    const took: number[] = [];
    for (let n = 0; n < RUNS; n += 1) {
      const before = process.cpuUsage();
      const read = readOutfitFile(text);
      const { user, system } = process.cpuUsage(before);
      took.push((user + system) / 1000);
      expect(read.ok ? 0 : read.error.wrong.length).toBe(mistakes);
    }
    console.log(
      `a ${what} file of 500 pieces (${Math.round(text.length / 1000)} KB): ${took.map((one) => Math.ceil(one)).join(', ')} ms`,
    );
    expect(Math.min(...took)).toBeLessThan(SOON);
  },
  60_000,
);
