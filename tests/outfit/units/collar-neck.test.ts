import { expect, test } from 'vitest';
import { mm, zero } from '../../../src/length/length.ts';
import { readEdge } from '../../../src/outfit/chains.ts';
import { neckSeam } from '../../../src/outfit/units/collar-neck.ts';
import { neckLine } from '../../../src/outfit/units/neck-line.ts';
import { runOf } from '../../../src/outfit/units/runs.ts';
import { garmentOf } from './made-of.ts';
import { NECK, plainBody } from './plain-body.ts';

const garment = garmentOf(plainBody());
const run = runOf(garment, NECK.map(readEdge));
const seam = (by: 'bound' | 'faced' | 'inside') => {
  const line = neckLine(garment, run.chain, zero)!;
  const told = { id: (part: string) => `c-${part}`, name: 'Collar', run, line, by, upper: 'u', under: 'n' };
  const made = neckSeam({ ...told, cloth: 'shirting', allowance: mm(12) });
  if (!made.ok) throw new Error(made.error.wrong);
  return made.value;
};

test('a neck seam is bound, faced or covered by the collar itself', () => {
  expect(seam('bound').joins).toMatchObject([
    { seam: 'bound', to: [{ piece: 'n' }, { piece: 'n', other: true }] },
  ]);
  expect(seam('bound').assumed.join()).toContain('25 mm (1 in)');
  expect(seam('inside').joins).toMatchObject([{ seam: 'covered', cover: { piece: 'u', edge: 'neck' } }]);
  expect(seam('inside').works).toMatchObject([{ kind: 'press-edge', on: 'u', turn: mm(12) }]);
  const faced = seam('faced');
  expect(faced.joins).toMatchObject([{ seam: 'turned', catches: [{ trim: { piece: 'n' }, depth: mm(8) }] }]);
  expect(faced.pieces).toMatchObject([{ id: 'c-facing', cut: 'fold' }]);
});
