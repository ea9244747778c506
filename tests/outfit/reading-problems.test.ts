import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { writeProblem } from '../../src/outfit/problem.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { demoData } from './demo-files.ts';
import { small } from './small.ts';
import { change, look } from './spoil.ts';

type Change = readonly [at: string, value: unknown];
const told = (raw: unknown): string[] => {
  const read = readOutfit(raw);
  return read.ok ? [] : read.error.map(({ at }) => at);
};
const said = (...changes: readonly Change[]): string[] => {
  const data = small();
  for (const [at, value] of changes) change(data, at, value);
  const read = readOutfit(data);
  return read.ok ? [] : read.error.map((problem) => `${problem.at} ${writeProblem(problem)}`);
};
const G = '/garments/0';

describe('mistakes of shape and of names together', () => {
  test('are told in the order of the file', () => {
    expect(
      said(
        [`${G}/pieces/0/cut`, 'twice'],
        [`${G}/pieces/1/cloth`, 'lwn'],
        [`${G}/works/1/turn`, '20'],
        [`${G}/joins/1/to/0`, 'back.sidde'],
        [`${G}/gates/0/after/0`, 'sied'],
        ['/cloths/0/width', undefined],
      ),
    ).toEqual([
      '/cloths/0/width lawn: `width` is missing; add it; it must be a length in quotes, such as "4 3/8 in" or "111 mm"',
      `${G}/pieces/0/cut front: \`cut\` must be one of: "one", "pair", "fold"`,
      `${G}/pieces/1/cloth piece \`back\`: cloth \`lwn\` does not exist; did you mean \`lawn\`?`,
      `${G}/works/1/turn hem: \`turn\` \`20\` has no unit; write for example "20 in" or "20 mm"`,
      `${G}/joins/1/to/0 join \`side seam\`: edge \`back.sidde\` does not exist; did you mean \`back.side\`?`,
      `${G}/gates/0/after/0 try-on \`first try-on\`: join or work \`sied\` does not exist; did you mean \`side\`?`,
    ]);
  });

  test('a kind of work that does not exist hides neither the work nor what names it', () => {
    expect(
      said(
        [`${G}/works/0/kind`, 'smocking'],
        [`${G}/works/0/on`, 'fron'],
        [`${G}/works/0/name`, ''],
        [`${G}/joins/2/to/0`, 'other:pocket.top'],
      ).map((line) => line.split(' ')[0]),
    ).toEqual([`${G}/works/0/kind`, `${G}/works/0/name`, `${G}/works/0/on`, `${G}/joins/2/to/0`]);
  });

  test('a mistyped kind of work is looked at as the kind that is meant', () => {
    const lines = said(
      [`${G}/works/0/kind`, 'gathr'],
      [`${G}/works/0/marker`, 'pencil'],
      [`${G}/works/0/fulness`, 2],
    );
    expect(lines[0]).toBe(
      `${G}/works/0/kind front gathers: \`kind\` \`gathr\` is no kind of work; did you mean \`gather\`?`,
    );
    expect(lines.slice(1)).toEqual([
      `${G}/works/0/marker work \`front gathers\`: marker \`pencil\` does not exist; add it to the markers`,
      `${G}/works/0/fulness front gathers: \`fulness\` is not used here; did you mean \`fullness\`?`,
    ]);
  });

  test('what stands under a mistyped name is looked at as what is meant, in its own place', () => {
    const data = small() as unknown as Record<string, Record<string, unknown>[]>;
    const [garment] = data.garments!;
    const { joins, ...rest } = garment!;
    data.garments = [{ ...rest, jions: joins }];
    change(data, `${G}/jions/1/depth`, '15');
    change(data, `${G}/jions/2/to/0`, 'other:pocket.top');
    expect(told(data)).toEqual([`${G}/jions`, `${G}/jions/1/depth`, `${G}/jions/2/to/0`]);
  });

  test('of a later version of files only that is told', () => {
    expect(said(['/version', 2], ['/units', 'ell'], [`${G}/works/0/on`, 'fron'])).toEqual([
      '/version `version` must be 1: this app reads version 1 of outfit files',
    ]);
  });

  test('every name that a thing does not have is told at once', () => {
    expect(said([`${G}/pieces/0/one`, 1], [`${G}/pieces/0/two`, 2], ['/three', 3]).length).toBe(3);
  });

  test.each<readonly [string, readonly Change[]]>([
    ['the list of pieces', [[`${G}/pieces`, 'front and back']]],
    ['a piece', [[`${G}/pieces/0`, null]]],
    ['the id of a piece', [[`${G}/pieces/0/id`, 'Front']]],
    ['the name of a piece, missing', [[`${G}/pieces/0/name`, undefined]]],
    ['an outline', [[`${G}/pieces/0/outline`, []]]],
    ['the edges of a piece', [[`${G}/pieces/0/outline/edges`, {}]]],
    ['an edge', [[`${G}/pieces/0/outline/edges/0`, 5]]],
    ['the name of an edge', [[`${G}/pieces/0/outline/edges/0/name`, 'The Side']]],
    ['the fold', [[`${G}/pieces/1/outline/edges/3/name`, '']]],
    ['the end of an outline', [[`${G}/pieces/1/outline/edges/3/to`, [0]]]],
    ['the start of an outline', [[`${G}/pieces/1/outline/start/0`, 'left']]],
    ['the unit of an outline', [[`${G}/pieces/1/outline/unit`, 'cm']]],
    ['how a piece is cut', [[`${G}/pieces/0/cut`, undefined]]],
    ['the cloths', [['/cloths', undefined]]],
    ['the id of a cloth', [['/cloths/0/id', 3]]],
    ['the markers', [['/markers', 'chalk']]],
    ['the works', [[`${G}/works`, {}]]],
    ['a work', [[`${G}/works/0`, []]]],
    ['a kind of work', [[`${G}/works/0/kind`, undefined]]],
    ['the joins', [[`${G}/joins`, 1]]],
    ['a join', [[`${G}/joins/0`, 'shoulder']]],
    ['the id of a join', [[`${G}/joins/1/id`, undefined]]],
    ['an edge of a join', [[`${G}/joins/0/this/0`, 'shoulder']]],
    ['a run of a join', [[`${G}/joins/0/to`, []]]],
    ['the depth of a join', [[`${G}/joins/0/depth`, 15]]],
    ['what a try-on follows', [[`${G}/gates/0/after`, 'side']]],
    [
      'what a try-on follows, mistyped',
      [
        [`${G}/gates/0/afetr`, ['side']],
        [`${G}/gates/0/after`, undefined],
      ],
    ],
    ['a garment', [[G, null]]],
    ['the garments', [['/garments', {}]]],
  ])('of %s alone, one mistake is told and nothing that comes of it', (_, changes) => {
    const [line, ...more] = said(...changes);
    expect(more).toEqual([]);
    expect(line?.startsWith(changes[0]![0])).toBe(true);
  });
});

const places = (list: string): string[] => {
  const things = look(demoData('plain-shirt'), list) as unknown[];
  return things.map((_, i) => `${list}/${i}`);
};
const pieces = places(`${G}/pieces`);
const works = places(`${G}/works`);
const joins = places(`${G}/joins`);

/** Mistakes of shape that touch no name that something else needs. */
const shapes: readonly Change[] = [
  ['/units', 'cm'],
  ['/event/date', 'in May'],
  ['/event/place', 'the opera'],
  ['/cloths/0/width', '3'],
  ['/cloths/0/thread', ''],
  ...pieces.flatMap((at): Change[] => [
    [`${at}/allowance`, 'half an inch'],
    [`${at}/grain`, 'straight'],
    [`${at}/outline/edges/1/to/0`, 'left'],
    [`${at}/color`, 'white'],
  ]),
  ...works.map((at): Change => [`${at}/colour`, 'white']),
  ...joins.flatMap((at): Change[] => [
    [`${at}/seam`, 'flat'],
    [`${at}/depth`, undefined],
    [`${at}/finish`, true],
    [`${at}/tacked`, 'yes'],
  ]),
];
/** Names that do not go together with the rest. */
const names: readonly Change[] = [
  ...pieces.flatMap((at): Change[] => [
    [`${at}/cloth`, 'no-such-cloth'],
    [`${at}/outline/edges/0/name`, 'no-such-edge'],
  ]),
  ...works.flatMap((at): Change[] => [[`${at}/on`, 'no-such-piece']]),
  ...joins.flatMap((at): Change[] => [
    [`${at}/this/0`, 'no-such.edge'],
    [`${at}/id`, 'front'],
    [`${at}/catches`, [{ trim: 'no-such.trim', depth: '1 mm' }]],
  ]),
];
const some = (all: readonly Change[], most: number) =>
  fc
    .uniqueArray(fc.nat({ max: all.length - 1 }), { minLength: 1, maxLength: most })
    .map((n) => n.map((i) => all[i]!));
const spoilt = (changes: readonly Change[]): unknown =>
  changes.reduce<unknown>((data, [at, value]) => change(data, at, value), demoData('plain-shirt'));

describe('a right file, spoilt in its shape and in its names', () => {
  test('is told of both, and of the names just what is told once its shape is right', () => {
    fc.assert(
      fc.property(some(shapes, 6), some(names, 4), (inShape, inNames) => {
        const all = told(spoilt([...inNames, ...inShape]));
        const ofNames = told(spoilt(inNames));
        expect(all).toEqual(expect.arrayContaining(inShape.map(([at]) => at)));
        const rest = all.filter((at) => !inShape.some(([shape]) => shape === at));
        expect(rest.toSorted()).toEqual(ofNames.toSorted());
        expect(new Set(all).size).toBe(all.length);
      }),
      { seed: 6, numRuns: 150 },
    );
  }, 60_000);

  test('is told nothing that is not still told once its shape is right, whatever was spoilt', () => {
    const data = demoData('plain-shirt');
    const every: string[] = [];
    const walk = (at: string, here: unknown): void => {
      if (typeof here !== 'object' || here === null) return;
      for (const [key, part] of Object.entries(here)) {
        every.push(`${at}/${key}`);
        walk(`${at}/${key}`, part);
      }
    };
    walk('', data);
    const needed = /\/(id|name|cut|cloth|allowance|outline|edges|start|kind|on|this|to|depth)$/;
    const nonsense = fc.constantFrom<unknown>(undefined, null, '!', [null], { '!': 1 });
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.nat({ max: every.length - 1 }), nonsense), { minLength: 1, maxLength: 3 }),
        fc.option(some(names, 2)),
        (spoils, inNames) => {
          const right = spoilt(inNames ?? []);
          const before = told(right);
          const changes: Change[] = [];
          for (const [n, value] of spoils) {
            const at = every[n]!;
            if (changes.some(([one]) => one.startsWith(at) || at.startsWith(one))) continue;
            if (value === undefined && !needed.test(at)) continue;
            if (look(right, at.slice(0, at.lastIndexOf('/'))) === undefined) continue;
            changes.push([at, value]);
          }
          const wrong = changes
            .toSorted()
            .reduceRight<unknown>((whole, [at, value]) => change(whole, at, value), right);
          for (const at of told(wrong)) {
            const ofShape = changes.some(([one]) => at.startsWith(one) || one.startsWith(`${at}/`));
            expect(ofShape || before.includes(at), `${at} after ${JSON.stringify(changes)}`).toBe(true);
          }
        },
      ),
      { seed: 6, numRuns: 600 },
    );
  }, 60_000);
});
