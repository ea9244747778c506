import fc from 'fast-check';
import type { Act, Deed, DeedId } from '../../src/store/deed.ts';
import type { Progress } from '../../src/store/progress-types.ts';

/** A deed of device `a` with this number, written one second after the one before. */
export const deed = (seq: number, act: Act, more: Partial<Deed> = {}): Deed => {
  const device = more.device ?? 'a';
  return { id: `${device}-${seq}`, device, seq, at: 1_000 * seq, outfit: 'o', act, ...more };
};

/** The same without the trail, for comparing what a screen sees. */
export const seen = (progress: Progress): Omit<Progress, 'trail'> => {
  const { trail: _hidden, ...rest } = progress;
  return rest;
};

const name = fc.constantFrom('hem', 'collar', 'constructor', 'cuff');
const value = fc.oneof(fc.integer(), fc.string(), fc.constant(['x']), fc.constant({ y: 1 }));
const pointer = fc.constantFrom(
  '',
  '/cloth',
  '/cloth/y',
  '/list/0',
  '/list/-',
  '/constructor',
  '/a~1b',
  'broken',
);

const deedName = fc
  .tuple(fc.constantFrom('a', 'b'), fc.nat(30))
  .map(([device, n]): DeedId => `${device}-${n}`);

/** A rework of these steps; its id is one of few, so that two devices happen to choose the same. */
const rework = fc.record({
  id: fc.constantFrom('r-1', 'r-2', 'r-3'),
  say: fc.constant('Front wider'),
  undo: fc.constant([]),
  again: fc.array(fc.record({ step: name, minutes: fc.nat(60) }), { maxLength: 3 }),
});

/** Any act of a try-on. */
export const anyFitting: fc.Arbitrary<Act> = fc.oneof(
  fc.record(
    {
      kind: fc.constant('seen' as const),
      garment: name,
      entry: fc.constantFrom('surplus-under-the-arm', 'cuff-tight'),
      side: fc.constantFrom('both' as const, 'left' as const),
      amount: fc.integer(),
      photo: fc.constant('data:image/jpeg;base64,AAAA'),
    },
    { requiredKeys: ['kind', 'garment', 'entry', 'side'] },
  ),
  fc.record({ kind: fc.constant('let-be' as const), seen: deedName }),
  fc.record({
    kind: fc.constant('reworked' as const),
    say: fc.constant('made the front wider'),
    changes: fc.array(fc.record({ at: pointer, was: value, now: value }, { requiredKeys: ['at'] }), {
      maxLength: 1,
    }),
    rework,
    cures: fc.array(deedName, { maxLength: 6 }),
  }),
);

/** Any act but taking back. Steps, items and places are few, so that acts meet. */
export const anyAct: fc.Arbitrary<Act> = fc.oneof(
  anyFitting,
  anyFitting,
  fc.record({
    kind: fc.constant('outfit-begun' as const),
    description: fc.constant({ cloth: {}, list: [1] }),
  }),
  fc.record(
    { kind: fc.constant('described' as const), at: pointer, was: value, now: value },
    { requiredKeys: ['kind', 'at'] },
  ),
  fc.record({
    kind: fc.constant('redescribed' as const),
    say: fc.constantFrom('added the collar', 'changed the cloth'),
    changes: fc.array(fc.record({ at: pointer, was: value, now: value }, { requiredKeys: ['at'] }), {
      maxLength: 3,
    }),
  }),
  fc.record({ kind: fc.constant('step-opened' as const), step: name }),
  fc.record({ kind: fc.constant('step-done' as const), step: name }),
  fc.record({ kind: fc.constant('item-done' as const), step: name, item: name }),
  fc.record({
    kind: fc.constant('tap' as const),
    step: name,
    item: name,
    add: fc.integer({ min: 1, max: 4 }),
  }),
  fc.record({ kind: fc.constant('line-closed' as const), step: name, item: name, count: fc.nat(200) }),
  fc.record({ kind: fc.constant('timer-started' as const), step: name, item: name, seconds: fc.nat(900) }),
  fc.record({ kind: fc.constant('timer-stopped' as const), step: name, item: name }),
  fc.record({ kind: fc.constant('reason-added' as const), before: name, after: name, because: fc.string() }),
  fc.record({ kind: fc.constant('reason-waived' as const), key: name }),
  fc.record({ kind: fc.constant('note' as const), step: name, text: fc.string() }),
  fc.record({
    kind: fc.constant('reckoned' as const),
    step: name,
    reckoning: fc.constantFrom('parallel-tucks', 'circle-frill'),
    unit: fc.constantFrom('in' as const, 'mm' as const),
    title: fc.constantFrom('Parallel tucks', 'Circle frill'),
    entries: fc.dictionary(fc.constantFrom('depth', 'count', 'constructor'), fc.string(), {
      noNullPrototype: true,
    }),
    figures: fc.array(fc.record({ name: fc.string(), figure: fc.string({ minLength: 1 }) }), {
      minLength: 1,
      maxLength: 4,
    }),
  }),
);

const undoneOf = (device: string): fc.Arbitrary<Act> =>
  fc.record({
    kind: fc.constant('undone' as const),
    deed: fc.tuple(fc.constantFrom('a', 'b', device), fc.nat(30)).map(([d, n]): DeedId => `${d}-${n}`),
  });

/** Deeds of one device in the order of its numbers; clocks stand still, run and are set back. */
export const anyDeeds = (device: string, maxLength = 30): fc.Arbitrary<Deed[]> =>
  fc
    .array(
      fc.tuple(
        fc.oneof({ weight: 5, arbitrary: anyAct }, { weight: 1, arbitrary: undoneOf(device) }),
        fc.nat(40),
        fc.option(fc.nat(40), { nil: undefined, freq: 8 }),
      ),
      { maxLength },
    )
    .map((rows) =>
      rows.map(([act, at, place], seq) =>
        deed(seq, act, { device, at, ...(place !== undefined && { place }) }),
      ),
    );

/** Deeds of device `a` that are mostly taps of two lines in a row, some of them taken back: what counting is like. */
export const counting: fc.Arbitrary<Deed[]> = fc
  .array(
    fc.oneof(
      { weight: 12, arbitrary: fc.constantFrom('line 1', 'line 1', 'line 1', 'line 2') },
      { weight: 1, arbitrary: anyAct },
      { weight: 2, arbitrary: undoneOf('a') },
    ),
    { maxLength: 80 },
  )
  .map((rows) =>
    rows.map((row, seq) =>
      deed(seq, typeof row === 'string' ? { kind: 'tap', step: 's', item: row, add: 0.1 } : row),
    ),
  );
