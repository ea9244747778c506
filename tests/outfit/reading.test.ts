import { describe, expect, test } from 'vitest';
import { inches, mm } from '../../src/length/length.ts';
import { writeProblem } from '../../src/outfit/problem.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { demo, demoData, demos } from './demo-files.ts';
import { change, look } from './spoil.ts';

/** Everything that is said of a file, as place and line; an empty list where it is good. */
const said = (raw: unknown): readonly (readonly [string, string])[] => {
  const read = readOutfit(raw);
  return read.ok ? [] : read.error.map((problem) => [problem.at, writeProblem(problem)]);
};

/** What is said of the plain shirt when one place in it is changed, or taken out. */
const spoilt = (at: string, value?: unknown) => said(change(demoData('plain-shirt'), at, value));

const PIECE = '/garments/0/pieces';
const WORK = '/garments/0/works';
const JOIN = '/garments/0/joins';

/** Place of the thing with this id in the plain shirt. */
const place = (list: string, id: string): string => {
  const things = look(demoData('plain-shirt'), list) as { id: string }[];
  return `${list}/${things.findIndex((thing) => thing.id === id)}`;
};

describe('good files', () => {
  test.each(demos)('%s is read', (name) => {
    expect(said(demoData(name))).toEqual([]);
  });

  test('lengths are exact, in inches and in millimetres', () => {
    const { cloths, garments } = demo('harbour-clockmaker');
    const shirt = garments.find((garment) => garment.id === 'shirt')!;
    const tucks = shirt.works.find((work) => work.kind === 'tucks')!;
    expect(tucks.family.depths).toEqual([1, 2, 3, 4, 5].map((n) => inches(n, 16)));
    expect(tucks.family.first).toBe(inches(3, 2));
    expect(cloths.find((cloth) => cloth.id === 'mesh')!.width).toBe(mm(1500));
    const back = shirt.pieces.find((piece) => piece.id === 'back')!;
    expect(back.outline.start).toEqual({ x: 0, y: inches(3, 4) });
    const leg = garments.find((garment) => garment.id === 'hose')!.pieces[1]!;
    expect(leg.outline.edges[0]!.segments[0]!.to.x).toBe(mm(312.5));
  });

  test('what is left out gets its usual value', () => {
    const data = demoData('plain-shirt');
    const band = place(WORK, 'front-band');
    change(data, `${band}/firstTurn`, undefined);
    change(data, `${band}/secondTurn`, undefined);
    change(data, '/units', undefined);
    change(data, `${JOIN}/0/finish`, undefined);
    const read = readOutfit(data);
    if (!read.ok) throw new Error(JSON.stringify(read.error));
    const [shirt] = read.value.garments;
    expect(read.value.units).toBe('mm');
    expect(read.value.cloths[0]!.stretch).toEqual({ across: 0, along: 0 });
    expect(shirt!.joins[0]).toMatchObject({ seam: 'plain', finish: 'none', catches: [], worked: 'flat' });
    expect(shirt!.works.find((work) => work.id === 'front-band')).toMatchObject({
      firstTurn: inches(1, 2),
      secondTurn: inches(1),
    });
  });

  test('an edge of the mirrored mate is told from the edge itself', () => {
    const neck = demo('plain-shirt').garments[0]!.joins.find((join) => join.id === 'neck')!;
    expect(neck.this).toEqual([
      { piece: 'front', edge: 'neck', other: false },
      { piece: 'back', edge: 'neck', other: false },
      { piece: 'back', edge: 'neck', other: true },
      { piece: 'front', edge: 'neck', other: true },
    ]);
  });

  test('a name that objects have from birth is a name like any other', () => {
    const data = JSON.parse(
      JSON.stringify(demoData('plain-shirt'))
        .replaceAll('"front"', '"constructor"')
        .replaceAll('front.', 'constructor.')
        .replaceAll('"collar-layers"', '"valueof"'),
    );
    expect(said(data)).toEqual([]);
  });
});

describe('files of the wrong shape', () => {
  test.each([undefined, null, 5, 'a shirt', true])('%s is no outfit file', (raw) => {
    expect(said(raw)).toEqual([['', 'the file must be an object, in { }']]);
  });

  test.each<readonly [string, unknown, string]>([
    ['/format', 'pattern', '`format` must be "slipbaste-outfit": this is not an outfit file'],
    ['/version', 2, '`version` must be 1: this app reads version 1 of outfit files'],
    ['/event', undefined, '`event` is missing; add it'],
    ['/event', 5, '`event` must be an object, in { }'],
    ['/event/date', '29.5.2027', 'must be a date such as "2027-05-29"'],
    ['/event/date', '2027-02-29', 'is not a day of the calendar'],
    ['/units', 'cm', '`units` must be one of: "in", "mm"'],
    ['/cloths', [], '`cloths` must name at least one cloth'],
    ['/cloths', {}, '`cloths` must be a list, in [ ]'],
    [
      '/cloths/0/width',
      '1.5',
      'Cotton shirting: `width` `1.5` has no unit; write for example "1.5 in" or "1.5 mm"',
    ],
    ['/cloths/0/width', 3, '`width` must be a length in quotes, such as "4 3/8 in" or "111 mm"'],
    ['/cloths/0/width', '0 mm', '`width` must be more than nothing'],
    ['/cloths/0/iron', 180, '`iron` must be 110, 150 or 200'],
    ['/cloths/0/thread', '', '`thread` must not be empty'],
    [`${PIECE}/0/id`, 'Front', '`id` must be small letters, digits and hyphens, such as `side-front`'],
    [`${PIECE}/0/id`, '__proto__', '`id` must be small letters, digits and hyphens'],
    [`${PIECE}/0/outline/edges/1/to/1`, 1e9, 'neck: entry 2 of `to` must be at most 100000'],
    [`${PIECE}/0/outline/edges/1/to/1`, null, 'neck: entry 2 of `to` must be a number'],
    [`${PIECE}/0/outline/edges`, [], 'Front: `edges` must have at least three edges'],
    [`${WORK}/0/kind`, 'smocking', '`kind` must be one of the kinds of work: tucks, crossed-tucks,'],
    [`${JOIN}/0/this`, 'front.shoulder', 'Shoulder seam: `this` must be a list, in [ ]'],
    [`${JOIN}/0/this/0`, 'shoulder', 'must be a piece and an edge with a dot between, such as "back.side"'],
    [`${JOIN}/0/depth`, undefined, 'Shoulder seam: `depth` is missing; add it'],
  ])('%s as %j: %s', (at, value, message) => {
    const problems = spoilt(at, value);
    expect(problems).toEqual([[at, expect.stringContaining(message)]]);
  });

  test('a mistyped name does not pass for one that was left out', () => {
    const gathers = place(WORK, 'wrist-gathers');
    expect(spoilt(`${gathers}/fulness`, 3)).toEqual([
      [`${gathers}/fulness`, 'Wrist gathers: `fulness` is not used here; did you mean `fullness`?'],
    ]);
    const data = JSON.parse('{"__proto__": {"format": "slipbaste-outfit"}}');
    expect(said(data).map(([at]) => at)).toContain('/__proto__');
  });

  test('everything that is wrong is said at once', () => {
    const data = demoData('plain-shirt');
    change(data, '/units', 'cm');
    change(data, '/cloths/0/width', '3');
    change(data, `${PIECE}/0/cut`, 'double');
    change(data, `${JOIN}/1/depth`, undefined);
    expect(said(data).map(([at]) => at)).toEqual([
      '/units',
      '/cloths/0/width',
      `${PIECE}/0/cut`,
      `${JOIN}/1/depth`,
    ]);
  });
});
