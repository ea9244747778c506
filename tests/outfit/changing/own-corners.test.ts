import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inches, mm, nm } from '../../../src/length/length.ts';
import {
  cornersOf,
  edgeSpelled,
  moveCorners,
  readCorners,
} from '../../../src/outfit/changing/own-corners.ts';
import { ownOutline } from '../../../src/outfit/changing/own-piece.ts';
import { point } from '../../../src/outfit/units/rectangle.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';

const corners = (text: string, unit: 'in' | 'mm' = 'in') => {
  const read = readCorners(text, unit);
  return read.ok ? read.value : read.error;
};

describe('corners typed one a line', () => {
  test('are read with fractions, units, decimals and names of edges', () => {
    const found = corners('0, 0 Upper edge\n10 1/2, 0\n10.5 in, 4 in inner\n\n0; 101,6 mm left');
    if (typeof found === 'string') throw new Error(found);
    expect(found.edges.map(({ name }) => name)).toEqual(['upper-edge', 'edge-2', 'inner', 'left']);
    expect(cornersOf(found).map(({ at }) => [at.x, at.y])).toEqual([
      [0, 0],
      [inches(21, 2), 0],
      [inches(21, 2), inches(4)],
      [0, inches(4)],
    ]);
    expect(found.edges.at(-1)?.segments.at(-1)?.to).toEqual(found.start);
  });

  test.each([
    ['0, 0\n4, 4', /at least three/],
    ['0, 0\n4, four\n0, 4', /“4, four” is not a corner/],
    ['0, 0\n4\n0, 4', /“4” is not a corner/],
    ['0, 0 side\n4, 0 side\n0, 4', /Two edges are called “side”/],
    ['0, 0\n4, 0\n8, 0', /enclose nothing/],
    ['0, 0\n4, 0\n4, 0\n0, 4', /has no length/],
    ['0, 0\n4, 4\n4, 0\n0, 4', /crosses itself/],
    ['1, 0\n4, 0\n1, 4 fold', /across is 0/],
  ])('%j is refused', (text, says) => {
    expect(corners(text)).toMatch(says);
  });

  test('too many are refused', () => {
    expect(corners(Array.from({ length: 201 }, (_, i) => `${i}, ${i * i}`).join('\n'))).toMatch(
      /more than 200/,
    );
  });
});

test('an edge name is spelled as files spell it', () => {
  expect(edgeSpelled('  Front edge, “upper” ')).toBe('front-edge-upper');
  expect(edgeSpelled('É!')).toBe('e');
  expect(edgeSpelled('…')).toBe('');
});

describe('moving a corner', () => {
  const box = (wide: string, high: string) => {
    const made = ownOutline('half', { wide, high }, 'in');
    if (!made.ok) throw new Error('no box');
    return made.value;
  };
  const move = (edge: string, x: number, y: number) =>
    moveCorners(box('6', '4'), new Map([[edge, point(nm(x), nm(y))]]));

  test('moves that corner and no other, and the outline stays closed', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 400 }), fc.integer({ min: -50, max: 90 }), (x, y) => {
        const moved = move('side', mm(x), mm(y));
        if (!moved.ok) throw new Error(JSON.stringify(moved.error));
        expect(cornersOf(moved.value).map(({ edge, at }) => [edge, at.x, at.y])).toEqual([
          ['upper', 0, 0],
          ['side', mm(x), mm(y)],
          ['lower', inches(6), inches(4)],
          ['fold', 0, inches(4)],
        ]);
        expect(moved.value.edges.at(-1)?.segments.at(-1)?.to).toEqual(moved.value.start);
      }),
      { seed: 11 },
    );
  });

  test('the first corner stays where the last edge ends', () => {
    const moved = move('upper', 0, -mm(10));
    expect(moved.ok && moved.value.start).toEqual(point(nm(0), mm(-10)));
    expect(moved.ok && moved.value.edges.at(-1)?.segments.at(-1)?.to).toEqual(point(nm(0), mm(-10)));
  });

  test('curves that meet there keep their lean, so a moved arc is as long as before away from the corner', () => {
    const made = ownOutline('circle', { inner: '5', deep: '10', degrees: '90' }, 'in');
    if (!made.ok) throw new Error('no circle');
    const corner = cornersOf(made.value).find(({ edge }) => edge === 'outer');
    if (!corner) throw new Error('no corner');
    const moved = moveCorners(made.value, new Map([['outer', point(nm(corner.at.x + mm(5)), corner.at.y)]]));
    if (!moved.ok) throw new Error(JSON.stringify(moved.error));
    const [was, now] = [made.value, moved.value].map((one) => one.edges.find(({ name }) => name === 'outer'));
    const [a, b] = [was?.segments[0], now?.segments[0]];
    if (a?.kind !== 'curve' || b?.kind !== 'curve') throw new Error('no curve');
    expect(b.first.x - a.first.x).toBe(mm(5));
    expect(b.second).toEqual(a.second);
    expect(edgeLengths(now ? moved.value : was ? made.value : made.value).get('inner')).toBe(
      edgeLengths(made.value).get('inner'),
    );
  });

  test.each([
    ['nowhere', 0, 0, /no edge/],
    ['upper', mm(1), 0, /on the fold/],
    ['fold', mm(1), mm(90), /on the fold/],
    ['side', 0, 0, /no length/],
    ['side', -mm(300), mm(50), /crosses itself/],
  ])('%s to %d, %d is refused', (edge, x, y, says) => {
    const moved = move(edge, x, y);
    expect(moved.ok ? [] : moved.error).toEqual([{ edge, say: expect.stringMatching(says) }]);
  });

  test('all corners can be moved together, though none of them could stand there alone', () => {
    const outline = box('6', '4');
    const down = new Map(cornersOf(outline).map(({ edge, at }) => [edge, point(at.x, nm(at.y + mm(500)))]));
    const moved = moveCorners(outline, down);
    if (!moved.ok) throw new Error(JSON.stringify(moved.error));
    expect(edgeLengths(moved.value)).toEqual(edgeLengths(outline));
    expect(moved.value.start).toEqual(point(nm(0), mm(500)));
    const [first] = down;
    expect(first && moveCorners(outline, new Map([first])).ok).toBe(false);
  });
});
