import { describe, expect, test } from 'vitest';
import clockmakerFile from '../../../demo-data/harbour-clockmaker.json' with { type: 'json' };
import shirtFile from '../../../demo-data/plain-shirt.json' with { type: 'json' };
import { inches, mm } from '../../../src/length/length.ts';
import type { Garment, Outfit, Work } from '../../../src/outfit/outfit.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import type { Asks, Here } from '../../../src/screens/describe/asks.ts';
import { JOIN_ASKS, PIECE_ASKS, TRY_ON_ASKS } from '../../../src/screens/describe/part-asks.ts';
import { faultsOf } from '../../../src/screens/describe/part-faults.ts';
import { build } from '../../../src/screens/describe/part-form.ts';
import { readRows, standing } from '../../../src/screens/describe/stands.ts';
import { WORK_KINDS } from '../../../src/screens/describe/work-kinds.ts';

const outfits = [clockmakerFile, shirtFile].map((file): Outfit => {
  const read = readOutfit(file);
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  return read.value;
});
const NAME: Asks = { name: { kind: 'words', label: 'Name', start: '' } };

interface Subject {
  readonly here: Here;
  readonly what: string;
  readonly asks: Asks;
  readonly part: Readonly<Record<string, unknown>>;
  /** What no form asks. */
  readonly given: Readonly<Record<string, unknown>>;
}

const partsOf = (outfit: Outfit, garment: Garment): readonly Subject[] => {
  const marking = outfit.units === 'in' ? { unit: 'in', per: 16 } : { unit: 'mm', step: 0.5 };
  const here = { outfit, garment, marking } as Here;
  return [
    ...garment.pieces.map(({ ...part }) => ({ part, asks: PIECE_ASKS, given: { outline: part.outline } })),
    ...garment.works.map(({ ...part }) => ({
      part,
      asks: WORK_KINDS[part.kind].asks,
      given: { kind: part.kind, on: part.on },
    })),
    ...garment.joins.map(({ ...part }) => ({ part, asks: JOIN_ASKS, given: {} })),
    ...garment.gates.map(({ ...part }) => ({ part, asks: TRY_ON_ASKS, given: {} })),
  ].map(({ part, asks, given }) => ({
    here,
    what: `${outfit.id}/${garment.id}/${part.id}`,
    asks: { ...NAME, ...asks },
    part: part as unknown as Subject['part'],
    given: { ...given, id: part.id },
  }));
};
const subjects = outfits.flatMap((outfit) => outfit.garments.flatMap((garment) => partsOf(outfit, garment)));

/** Every answer as it stands in the form, typed out, rows too. */
function typedOut(here: Here, asks: Asks, part: unknown): Record<string, string> {
  return Object.fromEntries(
    Object.entries(asks).map(([name, ask]) => {
      const text = standing(here, name, ask, {}, part);
      if (ask.kind !== 'rows') return [name, text];
      const list = (part as Record<string, readonly unknown[]>)[name] ?? [];
      const rows = list.map((one) => typedOut(here, ask.row, ask.plain ? { words: one } : one));
      return [name, JSON.stringify(rows)];
    }),
  );
}

describe('every part of the demonstrations', () => {
  test.each(subjects)('$what comes out of its untouched form as it was', ({ here, asks, part }) => {
    expect(build(here, asks, {}, part, {})).toEqual({ ok: true, value: part });
  });

  test.each(subjects)('$what can be typed anew from what its form shows', ({ here, asks, part, given }) => {
    const made = build(here, asks, typedOut(here, asks, part), undefined, given);
    expect(made).toEqual({ ok: true, value: part });
  });
});

test('every kind of work that the demonstrations have is asked for, and none is left out of the table', () => {
  const kinds = new Set(
    outfits.flatMap(({ garments }) => garments.flatMap(({ works }) => works.map((w) => w.kind))),
  );
  for (const kind of kinds) expect(Object.keys(WORK_KINDS)).toContain(kind);
});

const { here } = subjects[0]!;
const sample = (kind: Work['kind'], written: Readonly<Record<string, string>>) =>
  build(here, { ...NAME, ...WORK_KINDS[kind].asks }, { name: 'Try', ...written }, undefined, { kind });
const fields = (made: ReturnType<typeof sample>): readonly string[] =>
  made.ok ? [] : made.error.map(({ field }) => field);

describe('a new work', () => {
  test('takes what stands there first, and its piece from its edge', () => {
    expect(sample('gather', { edge: 'back.neck' })).toEqual({
      ok: true,
      value: {
        kind: 'gather',
        name: 'Try',
        on: 'back',
        edge: 'neck',
        fullness: 2.5,
        divide: 4,
        marker: 'chalk',
      },
    });
    const hem = sample('hem', { along: 'back.hem other:back.hem' });
    expect(hem.ok && hem.value).toMatchObject({
      on: 'back',
      along: [
        { piece: 'back', edge: 'hem', other: false },
        { piece: 'back', edge: 'hem', other: true },
      ],
      ring: false,
      turn: inches(1),
    });
  });

  test('says at each field what is wrong with it', () => {
    expect(fields(sample('gather', { name: ' ', fullness: 'much', marker: 'quill' }))).toEqual([
      'name',
      'edge',
      'fullness',
      'marker',
    ]);
    expect(fields(sample('own', { on: 'back', steps: '[{"say":"Steam","minutes":"soon"},{}]' }))).toEqual([
      'steps.0.minutes',
      'steps.1.say',
    ]);
    expect(fields(sample('own', { on: 'back', steps: '[]' }))).toEqual(['steps']);
    expect(fields(sample('tucks', { from: 'back.fold', 'family.depths': '600 × 1/4' }))).toEqual([
      'family.depths',
    ]);
  });

  test('wants all of what belongs together, or none of it', () => {
    const on = { on: 'back' };
    const plain = sample('interfacing', on);
    expect(plain.ok && 'fuse' in plain.value).toBe(false);
    expect(fields(sample('interfacing', { ...on, 'fuse.degrees': '150' }))).toEqual([
      'fuse.seconds',
      'fuse.coolMinutes',
    ]);
    const fused = sample('interfacing', {
      ...on,
      'fuse.degrees': '150',
      'fuse.seconds': '12',
      'fuse.coolMinutes': '20',
    });
    expect(fused.ok && fused.value.fuse).toEqual({ degrees: 150, seconds: 12, coolMinutes: 20 });
    const beads = sample('lattice-beads', on);
    expect(beads.ok && 'cluster' in beads.value).toBe(false);
  });

  test('counts lengths that are alike', () => {
    const made = sample('tucks', { from: 'back.fold', 'family.depths': '3 × 1/4, 5 mm\n2x 3/8' });
    expect(made.ok && made.value.family).toMatchObject({
      depths: [inches(1, 4), inches(1, 4), inches(1, 4), mm(5), inches(3, 8), inches(3, 8)],
    });
  });
});

describe('what is changed', () => {
  const band: Work = {
    id: 'band',
    name: 'Band',
    on: 'back',
    kind: 'folded-band',
    edge: 'hem',
    // Between two marks of any rule.
    firstTurn: mm(12.345678),
    secondTurn: mm(25.4),
  };
  const asks = { ...NAME, ...WORK_KINDS['folded-band'].asks };

  test('is that alone: a length between two marks stays exactly as it was', () => {
    expect(build(here, asks, { secondTurn: '2' }, band, {})).toEqual({
      ok: true,
      value: { ...band, secondTurn: inches(2) },
    });
  });

  test('rows that are moved keep what nobody typed in them', () => {
    const step = { station: 'hand', rest: 0, final: true, wets: false } as const;
    const own = {
      id: 'own',
      name: 'Own',
      on: 'back',
      kind: 'own',
      with: [],
      when: 'flat',
      steps: [
        { ...step, say: 'Starch', minutes: 7.25 },
        { ...step, say: 'Dry', minutes: 1 },
      ],
    };
    const rows = [{ '#': '1', minutes: '2' }, { '#': '0' }, { say: 'Look' }];
    const made = build(here, { ...NAME, ...WORK_KINDS.own.asks }, { steps: JSON.stringify(rows) }, own, {});
    expect(made.ok && made.value.steps).toEqual([
      { ...step, say: 'Dry', minutes: 2 },
      { ...step, say: 'Starch', minutes: 7.25 },
      { say: 'Look', station: 'hand', minutes: 10, rest: 0, final: false, wets: false },
    ]);
  });

  test('an emptied field that may be empty is left out', () => {
    const join = subjects.find(({ part }) => 'stopsAt' in part);
    if (!join) throw new Error('no join stops short');
    const made = build(join.here, join.asks, { stopsAt: ' ' }, join.part, {});
    const { stopsAt: _, ...rest } = join.part;
    expect(made).toEqual({ ok: true, value: rest });
  });
});

test('problems of a description stand at the field that they are about', () => {
  const at = (path: string, asks: Asks) =>
    faultsOf([{ at: `/garments/0/works/3${path}`, wrong: 'w', cure: 'c' }], '/garments/0/works/3', asks)[0]
      ?.field;
  expect(at('/turn', WORK_KINDS.hem.asks)).toBe('turn');
  expect(at('/on', WORK_KINDS.hem.asks)).toBe('along');
  expect(at('/along/2', WORK_KINDS.hem.asks)).toBe('along');
  expect(at('/families/1/depths/4', WORK_KINDS['crossed-tucks'].asks)).toBe('families.1.depths');
  expect(at('/steps/1/minutes', WORK_KINDS.own.asks)).toBe('steps.1.minutes');
  expect(at('/checks/0', TRY_ON_ASKS)).toBe('checks.0.words');
  expect(at('/catches/0/depth', JOIN_ASKS)).toBe('catches.0.depth');
  expect(at('/fuse', WORK_KINDS.interfacing.asks)).toBe('fuse.degrees');
  expect(at('', WORK_KINDS.hem.asks)).toBe('');
  expect(
    faultsOf(
      [{ at: '/garments/0/works/31/turn', wrong: 'w', cure: '' }],
      '/garments/0/works/3',
      WORK_KINDS.hem.asks,
    ),
  ).toEqual([{ field: '', say: 'w' }]);
});

test('a kept draft that cannot be read is no row at all', () => {
  expect(readRows('{')).toEqual([]);
  expect(readRows('{"a":1}')).toEqual([]);
  expect(readRows('[{"a":"1"},null,3]')).toEqual([{ a: '1' }]);
});
