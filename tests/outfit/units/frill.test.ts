import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { atPlace, type FrillTold, frillParts, tooFull } from '../../../src/outfit/units/frill.ts';

const told: FrillTold = {
  id: (part) => (part === undefined ? 'frill' : `frill-${part}`),
  name: 'Frill',
  cloth: 'lawn',
  cut: 'one',
  allowance: mm(12),
  depth: mm(50),
  made: { strip: mm(1000), strips: 1, fullness: 2 },
  divide: 8,
  marker: 'chalk',
  finish: 'hem',
  ends: 'hem',
  grain: 90,
};
const parts = (more: Partial<FrillTold>) => {
  const made = frillParts({ ...told, ...more });
  if (!made.ok) throw new Error(made.error.wrong);
  return made.value;
};
const steps = (more: Partial<FrillTold>) =>
  parts(more).works.flatMap((work) => (work.kind === 'own' ? work.steps.map(({ say }) => say) : []));

test('a frill is a strip with its seam uppermost, gathered there', () => {
  const { pieces, works } = parts({});
  expect(pieces[0]?.outline.edges.map(({ name }) => name)).toEqual([
    'seam',
    'front-end',
    'outer',
    'back-end',
  ]);
  expect(works.at(-1)).toMatchObject({ kind: 'gather', edge: 'seam', fullness: 2, divide: 8 });
});

test('ends are hemmed, joined into a ring, or left to their seam', () => {
  expect(steps({})[0]).toContain('the outer edge and both ends of the frill');
  expect(steps({ ends: 'ring' })[0]).toContain('Join the two ends of the frill');
  expect(steps({ ends: 'sewn' })[0]).toContain('Turn the outer edge of the frill');
  expect(steps({ finish: 'bound', ends: 'sewn' })).toEqual([]);
});

test('a folded one is stitched across its ends before it is turned, pressed and basted', () => {
  expect(steps({ finish: 'folded' }).map((say) => say.split(',')[1])).toEqual([
    ' right sides together',
    ' right side out',
    undefined,
  ]);
});

test('a figure about its place stands at the place', () => {
  const wrong = (field: string) => ({ ok: false, error: { field, wrong: 'No.', cure: 'Yes.' } }) as const;
  expect(atPlace(wrong('place'), 'edge')).toMatchObject({ error: { field: 'at.edge' } });
  expect(atPlace(wrong('clothWidth'), 'edge')).toMatchObject({ error: { field: 'cloth.main' } });
  expect(atPlace(wrong('depth'), 'edge')).toMatchObject({ error: { field: 'depth' } });
  expect(atPlace({ ok: true, value: 1 }, 'edge')).toEqual({ ok: true, value: 1 });
  expect([tooFull(6), tooFull(6.1)?.field]).toEqual([undefined, 'fullness']);
});
