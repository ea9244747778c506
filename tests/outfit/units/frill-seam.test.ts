import { expect, test } from 'vitest';
import { mm } from '../../../src/length/length.ts';
import { readEdge, spell } from '../../../src/outfit/chains.ts';
import { seamToEdge } from '../../../src/outfit/units/frill-seam.ts';
import { findPlace } from '../../../src/outfit/units/place.ts';
import { runOf } from '../../../src/outfit/units/runs.ts';
import { garmentOf } from './made-of.ts';
import { changed, HEM, plainBody } from './plain-body.ts';

const join = (
  outfit: ReturnType<typeof plainBody>,
  edges: readonly string[],
  goes: 'open' | 'ring',
  parts = ['a', 'b'],
) => {
  const garment = garmentOf(outfit);
  return seamToEdge.join({
    id: (part) => `frill-${part}`,
    name: 'Frill',
    garment,
    run: runOf(garment, edges.map(readEdge)),
    allowance: mm(12),
    goes,
    parts,
  });
};

test('parts are sewn end to end, in the round the last to the first', () => {
  const ends = (goes: 'open' | 'ring') => {
    const made = join(plainBody(), ['front.armhole', 'back.armhole'], goes);
    return made.ok ? made.value.slice(0, -1).map((one) => [...one.this, ...one.to].map(spell)) : [];
  };
  expect(ends('open')).toEqual([['a.front-end', 'b.back-end']]);
  expect(ends('ring')).toEqual([
    ['a.front-end', 'b.back-end'],
    ['b.front-end', 'a.back-end'],
  ]);
});

test('on an edge that is sewn already it is laid over that seam', () => {
  const made = join(plainBody(), ['front.shoulder'], 'open', ['a']);
  expect(made).toMatchObject({ value: [{ seam: 'laid-on', finish: 'none' }] });
});

test('an edge that is turned up, and a ring that nothing closes, are refused', () => {
  const hem = {
    kind: 'hem',
    id: 'h',
    name: 'Hem',
    on: 'back',
    along: HEM.map(readEdge),
    ring: false,
    turn: mm(10),
    by: 'hand',
    hang: 0,
  } as const;
  expect(
    join(
      changed(plainBody(), () => ({ works: [hem] })),
      ['front.hem'],
      'open',
    ),
  ).toMatchObject({ error: { field: 'at.edge' } });
  expect(join(plainBody(), ['front.neck'], 'ring')).toMatchObject({ error: { field: 'goes' } });
});

test('the way round and the allowance are proposed from the edge', () => {
  const garment = garmentOf(plainBody());
  const from = (...edges: readonly string[]) => {
    const asked = { kind: 'edges', label: 'the edge', like: [] } as const;
    const at = findPlace(garment, asked, edges);
    return at.ok && at.value.kind === 'edges' ? seamToEdge.propose(garment, at.value) : undefined;
  };
  expect(from('front.armhole', 'back.armhole')).toMatchObject({
    goes: { value: 'ring' },
    allowance: { value: mm(15) },
  });
  expect(from('front.neck')).not.toHaveProperty('goes');
  expect(seamToEdge.propose(garment, undefined)).toEqual({});
});
