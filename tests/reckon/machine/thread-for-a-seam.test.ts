import fc from 'fast-check';
import { expect, test } from 'vitest';
import { toMm } from '../../../src/length/index.ts';
import { threadForASeam } from '../../../src/reckon/machine/thread-for-a-seam.ts';
import { pathLength } from '../../../src/shape/index.ts';
import { faultsAt, figure, worked } from '../legs/reckoned.ts';

test('two seams of 500 mm in lockstitch, with waste, half of it from the bobbin', () => {
  const made = worked(threadForASeam);
  const all = 2 * (500 * 2.5 + 2 * 30) * 1.15;
  expect(figure(made, 'Thread to have')).toBeCloseTo(all, 4);
  expect(figure(made, 'Needle thread')).toBeCloseTo(all / 2, 4);
  expect(figure(made, 'Bobbin thread')).toBeCloseTo(all / 2, 4);
  expect(figure(made, 'Spools')).toBe(1);
});

test('in inches', () => {
  const made = worked(threadForASeam, { length: '10', count: '1', waste: '0', tail: '0' }, 'in');
  expect(figure(made, 'Thread to have')).toBeCloseTo(25 * 25.4, 6);
});

test('loopers are named and counted; what is not known is not given', () => {
  const three = worked(threadForASeam, { type: '504' });
  expect(figure(three, 'Looper threads, 2 together')).toBeCloseTo(
    (figure(three, 'Thread to have') as number) * 0.8,
    4,
  );
  const flat = worked(threadForASeam, { type: '606' });
  expect(flat.figures.some(({ name }) => name.includes('eedle thread'))).toBe(false);
  expect(flat.assumed.join(' ')).toContain('not known here');
  expect(worked(threadForASeam, { type: '101' }).figures.map(({ name }) => name)).toContain('Needle thread');
});

test('the thread is drawn as long as that of one seam, but for its turns', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('101', '301', '504', '606'),
      fc.integer({ min: 1, max: 20_000 }),
      fc.integer({ min: 0, max: 200 }),
      (type, length, tail) => {
        const made = worked(threadForASeam, { type, length: String(length), tail: String(tail) });
        const drawn = made.drawing.drawn.at(-1);
        if (drawn?.kind !== 'path') throw new Error('no thread');
        let long = 0;
        for (let i = 0; i + 1 < drawn.points.length; i += 2) {
          long += toMm(pathLength(drawn.points.slice(i, i + 2)));
        }
        expect(long).toBeCloseTo(figure(made, 'For one seam') as number, 3);
        expect(drawn.points.length).toBeLessThanOrEqual(84);
      },
    ),
  );
});

test.each([
  [{ length: '0' }, 'length'],
  [{ length: '200 m' }, 'length'],
  [{ count: '0' }, 'count'],
  [{ count: '2.5' }, 'count'],
  [{ count: '100000' }, 'count'],
  [{ waste: '-1' }, 'waste'],
  [{ waste: '101' }, 'waste'],
  [{ tail: '-1' }, 'tail'],
  [{ tail: '5 m' }, 'tail'],
  [{ spool: '0' }, 'spool'],
  [{ type: '999' }, 'type'],
])('refuses %j at its own field', (entries, field) => {
  expect(faultsAt(threadForASeam, entries)).toEqual([field]);
});
