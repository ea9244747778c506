import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import clockmaker from '../../demo-data/harbour-clockmaker.json' with { type: 'json' };
import shirt from '../../demo-data/plain-shirt.json' with { type: 'json' };
import { changesBetween } from '../../src/store/changes-between.ts';
import { type Change, describeChange } from '../../src/store/describe-change.ts';
import { sameData } from '../../src/store/same-data.ts';

const applied = (was: unknown, changes: readonly Change[]): unknown =>
  changes.reduce((description, change) => {
    const changed = describeChange(description, change);
    if (!changed.ok) throw new Error(changed.error);
    return changed.value;
  }, was);

const size = (changes: readonly Change[]): number => JSON.stringify(changes).length;

/** Lists of things with ids, as a description has them, some of them gone, moved, changed or new. */
const thing = fc.record({
  id: fc.constantFrom('front', 'back', 'sleeve', 'cuff', 'collar', 'frill'),
  name: fc.constantFrom('Front', 'Back'),
  edges: fc.array(
    fc.record({ name: fc.constantFrom('neck', 'side', 'hem'), to: fc.tuple(fc.nat(9), fc.nat(9)) }),
    {
      maxLength: 4,
    },
  ),
});
const described = fc.record(
  {
    name: fc.string({ maxLength: 5 }),
    pieces: fc.array(thing, { maxLength: 8 }),
    joins: fc.array(fc.array(fc.constantFrom('front.side', 'back.side', 'cuff.upper'), { maxLength: 4 })),
    'a/b~c': fc.jsonValue({ maxDepth: 2 }),
  },
  { requiredKeys: [] },
);

describe('the changes between two descriptions', () => {
  test('give exactly the later one', () => {
    fc.assert(
      fc.property(described, described, (was, now) => {
        expect(applied(was, changesBetween(was, now))).toEqual(now);
      }),
      { seed: 11, numRuns: 2000 },
    );
  });

  test('give exactly the later one, whatever the data', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (was, now) => {
        expect(sameData(applied(was, changesBetween(was, now)), now)).toBe(true);
      }),
      { seed: 12, numRuns: 2000 },
    );
  });

  test('are never larger than putting everything down anew', () => {
    fc.assert(
      fc.property(described, described, (was, now) => {
        expect(size(changesBetween(was, now))).toBeLessThanOrEqual(size([{ at: '', was, now }]));
      }),
      { seed: 13, numRuns: 500 },
    );
  });

  test('there are none between two that say the same', () => {
    fc.assert(
      fc.property(described, (was) => {
        expect(changesBetween(was, structuredClone(was))).toEqual([]);
      }),
      { seed: 14 },
    );
    expect(changesBetween({ a: 1, b: 2 }, { b: 2, a: 1 })).toEqual([]);
  });

  test('a figure is changed where it stands', () => {
    const was = {
      pieces: [
        { id: 'front', depth: '15 mm', note: 'as cut from the roll' },
        { id: 'back', depth: '15 mm' },
      ],
    };
    const now = structuredClone(was);
    now.pieces[0]!.depth = '10 mm';
    expect(changesBetween(was, now)).toEqual([
      { at: '/pieces/0/id', was: 'front', now: 'front' },
      { at: '/pieces/0/depth', was: '15 mm', now: '10 mm' },
    ]);
  });

  test('an entry put in, one taken out and one moved leave the others alone', () => {
    const entry = (id: string) => ({ id, name: 'A piece with a rather long name', outline: [0, 1, 2, 3] });
    const was = ['a', 'b', 'c', 'd'].map(entry);
    expect(changesBetween(was, ['a', 'x', 'b', 'c', 'd'].map(entry))).toEqual([
      { at: '/1', now: entry('x') },
    ]);
    expect(changesBetween(was, ['a', 'b', 'd'].map(entry))).toEqual([{ at: '/2', was: entry('c') }]);
    expect(changesBetween(was, ['d', 'a', 'b', 'c'].map(entry))).toEqual([
      { at: '/0', now: entry('d') },
      { at: '/4', was: entry('d') },
    ]);
  });

  test('an edge of an outline is known again by its name', () => {
    const edges = (...names: readonly string[]) => ({
      edges: names.map((name) => ({ name, to: [120.5, 340.25] })),
    });
    expect(changesBetween(edges('neck', 'side', 'hem'), edges('neck', 'shoulder', 'side', 'hem'))).toEqual([
      { at: '/edges/1', now: { name: 'shoulder', to: [120.5, 340.25] } },
    ]);
  });

  test('names with strokes and tildes are spelled as pointers need them', () => {
    const was = { 'a/b': { '~': 1, kept: 'a long enough value to be worth it' } };
    const now = { 'a/b': { '~': 2, kept: 'a long enough value to be worth it' } };
    expect(changesBetween(was, now)).toEqual([{ at: '/a~1b/~0', was: 1, now: 2 }]);
  });

  test('a field that no pointer may lead over is put down with what holds it', () => {
    const was = JSON.parse('{"words":{"__proto__":{"a":1},"b":2}}');
    const now = JSON.parse('{"words":{"__proto__":{"a":2},"b":2}}');
    expect(sameData(applied(was, changesBetween(was, now)), now)).toBe(true);
  });

  test.each([
    ['the plain shirt', shirt as unknown],
    ['the clockmaker', clockmaker as unknown],
  ])('changing one figure of %s takes the figure, and the ids of what it is in', (_, raw) => {
    const was = raw as { garments: { joins: { depth: string }[] }[] };
    const now = structuredClone(was);
    now.garments[0]!.joins[2]!.depth = '7/8 in';
    const changes = changesBetween(was, now);
    expect(changes.map(({ at }) => at)).toEqual([
      '/garments/0/id',
      '/garments/0/joins/2/id',
      '/garments/0/joins/2/depth',
    ]);
    expect(size(changes)).toBeLessThan(250);
  });
});
