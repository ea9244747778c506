import fc from 'fast-check';
import { inches, type Length, mm, nm } from '../../src/length/length.ts';
import { MEASURES } from '../../src/outfit/measures.ts';
import type { EdgeRef, Garment, Join, Outfit, Piece, Work } from '../../src/outfit/outfit.ts';
import type { Point } from '../../src/shape/outline.ts';

/** Lengths as makers write them and as arithmetic leaves them. */
const length = (least: number): fc.Arbitrary<Length> =>
  fc.oneof(
    fc.integer({ min: Math.ceil(least / 396_875), max: 5000 }).map((parts) => inches(parts, 64)),
    fc.integer({ min: Math.ceil(least / 500_000), max: 5000 }).map((halves) => mm(halves / 2)),
    fc.integer({ min: least, max: 3_000_000_000 }).map((whole) => nm(whole)),
  );
const positive = length(1);
const notNegative = length(0);
const place: fc.Arbitrary<Point> = fc.oneof(
  fc.record({
    x: fc.integer({ min: -640, max: 6400 }).map((n) => inches(n, 64)),
    y: fc.integer({ min: -640, max: 6400 }).map((n) => inches(n, 64)),
  }),
  fc.record({
    x: fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }).map(nm),
    y: fc.integer({ min: -2_000_000_000, max: 2_000_000_000 }).map(nm),
  }),
);

const id = fc.stringMatching(/^[a-z0-9][a-z0-9-]{0,20}$/);
const name = fc.oneof(
  fc.constantFrom('Front', 'Side back', 'Écharpe “à la”'),
  fc.string({ minLength: 1, maxLength: 20 }),
);
const few = <T>(one: fc.Arbitrary<T>, least = 0) => fc.array(one, { minLength: least, maxLength: 3 });
const whole = (min: number, max: number) => fc.integer({ min, max });
/** A field that may be missing altogether. */
const perhaps = <K extends string, T>(
  key: K,
  one: fc.Arbitrary<T>,
): fc.Arbitrary<{ readonly [P in K]?: T }> =>
  fc.oneof(
    fc.constant({}),
    one.map((value) => ({ [key]: value }) as { readonly [P in K]?: T }),
  );
const both = <A, B>(one: fc.Arbitrary<A>, other: fc.Arbitrary<B>): fc.Arbitrary<A & B> =>
  fc.tuple(one, other).map(([a, b]) => ({ ...a, ...b }));

const edge: fc.Arbitrary<EdgeRef> = fc.record({ piece: id, edge: id, other: fc.boolean() });
const chain = few(edge, 1);
const segment = fc.oneof(
  fc.record({ kind: fc.constant('line' as const), to: place }),
  fc.record({ kind: fc.constant('curve' as const), first: place, second: place, to: place }),
);
const piece: fc.Arbitrary<Piece> = both(
  fc.record({
    id,
    name,
    cloth: id,
    cut: fc.constantFrom('one' as const, 'pair' as const, 'fold' as const),
    allowance: notNegative,
    cutAfterWork: fc.boolean(),
    marks: few(fc.record({ name, at: place })),
    outline: fc.record({
      start: place,
      edges: fc.array(fc.record({ name: id, segments: fc.array(segment, { minLength: 1, maxLength: 3 }) }), {
        minLength: 3,
        maxLength: 5,
      }),
    }),
  }),
  both(perhaps('unit', id), perhaps('grain', whole(-180, 180))),
);

const family = fc.record({
  depths: few(positive, 1),
  spacing: positive,
  first: notNegative,
  angle: whole(-90, 90),
  pressed: fc.constantFrom('away' as const, 'toward' as const),
});
const latticeFamily = fc.record({ angle: whole(-90, 90), spacing: positive });
const beads = fc.record({ name, length: positive, atATime: fc.constantFrom(1 as const, 2 as const) });
const on = { id, name, on: id };
const kind = <const K extends Work['kind']>(one: K) => fc.constant(one);
const work: fc.Arbitrary<Work> = fc.oneof(
  fc.record({ kind: kind('tucks'), ...on, from: id, marker: id, family }),
  fc.record({ kind: kind('crossed-tucks'), ...on, from: id, marker: id, families: fc.tuple(family, family) }),
  fc.record({
    kind: kind('folded-band'),
    ...on,
    edge: id,
    firstTurn: fc.oneof(fc.constant(inches(1, 2)), positive),
    secondTurn: fc.oneof(fc.constant(inches(1)), positive),
  }),
  both(
    fc.record({ kind: kind('interfacing'), ...on, material: name }),
    perhaps(
      'fuse',
      fc.record({ degrees: whole(80, 230), seconds: whole(1, 120), coolMinutes: whole(0, 120) }),
    ),
  ),
  fc.record({ kind: kind('applied-tape'), ...on, edge: id, inset: notNegative, tape: name, marker: id }),
  fc.record({
    kind: kind('gather'),
    ...on,
    edge: id,
    fullness: fc.constantFrom(1.5, 2.5, 3),
    divide: fc.constantFrom(4 as const, 8 as const),
    marker: id,
  }),
  fc.record({ kind: kind('bind-edge'), ...on, edge: id, strip: positive }),
  fc.record({ kind: kind('press-edge'), ...on, edge: id, turn: positive }),
  fc.record({ kind: kind('stay-stitch'), ...on, edge: id }),
  both(
    fc.record({
      kind: kind('buttonholes'),
      ...on,
      through: few(id),
      along: id,
      count: whole(1, 100),
      first: notNegative,
      last: notNegative,
      from: name,
      button: fc.record({ diameter: positive, thickness: notNegative }),
      direction: fc.constantFrom('along' as const, 'across' as const),
      top: fc.constantFrom('left' as const, 'right' as const, 'each' as const),
      marker: id,
    }),
    perhaps('held', positive),
  ),
  both(
    fc.record({
      kind: kind('lattice-beads'),
      ...on,
      families: fc.tuple(latticeFamily, latticeFamily),
      line: beads,
      marker: id,
    }),
    perhaps('cluster', fc.record({ of: whole(1, 12), bead: beads })),
  ),
  fc.record({
    kind: kind('hem'),
    ...on,
    along: chain,
    ring: fc.boolean(),
    turn: positive,
    by: fc.constantFrom('hand' as const, 'machine' as const),
    hang: whole(0, 240),
  }),
  both(
    fc.record({
      kind: kind('casing'),
      ...on,
      along: chain,
      ring: fc.boolean(),
      turn: positive,
      elastic: positive,
    }),
    perhaps('cut', positive),
  ),
  fc.record({ kind: kind('ribbon'), ...on, ribbon: positive, where: name }),
  fc.record({
    kind: kind('own'),
    ...on,
    with: few(id),
    when: fc.constantFrom('flat' as const, 'free' as const, 'late' as const),
    steps: few(
      fc.record({
        say: name,
        station: fc.constantFrom('cut' as const, 'hand' as const, 'overlocker' as const),
        minutes: whole(0, 600),
        rest: whole(0, 600),
        final: fc.boolean(),
        wets: fc.boolean(),
      }),
      1,
    ),
  }),
);
const join: fc.Arbitrary<Join> = both(
  fc.record({
    id,
    name,
    this: chain,
    to: chain,
    seam: fc.constantFrom('plain' as const, 'stretch' as const, 'covered' as const, 'laid-on' as const),
    depth: positive,
    catches: few(
      fc.record({ trim: edge, basteTo: fc.constantFrom('this' as const, 'to' as const), depth: positive }),
    ),
    ring: fc.boolean(),
    closes: fc.boolean(),
    worked: fc.constantFrom('flat' as const, 'round' as const),
    tacked: fc.boolean(),
    finish: fc.constantFrom('none' as const, 'overlock' as const, 'pinked' as const),
  }),
  both(perhaps('cover', edge), perhaps('stopsAt', name)),
);
const words = fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), fc.string({ maxLength: 20 }), { maxKeys: 3 });
const garment: fc.Arbitrary<Garment> = both(
  fc.record({
    id,
    name,
    units: few(
      fc.record({
        id,
        name,
        unit: id,
        entries: words,
        at: fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), few(fc.string({ maxLength: 20 })), {
          maxKeys: 3,
        }),
        cloths: fc.dictionary(fc.stringMatching(/^[a-z]{1,8}$/), id, { maxKeys: 2 }),
        brought: few(id),
        own: few(id),
      }),
    ),
    pieces: few(piece),
    works: few(work),
    joins: few(join),
    gates: few(fc.record({ id, name, after: few(id), tack: few(id), checks: few(name, 1) })),
  }),
  perhaps('wearer', id),
);
const measures = fc.dictionary(fc.constantFrom(...MEASURES.map((one) => one.id)), positive, { maxKeys: 5 });

/** A well-formed description of anything; what its names must agree about is left to chance. */
export const anyOutfit: fc.Arbitrary<Outfit> = fc.record({
  id,
  name,
  about: fc.oneof(fc.constant(''), name),
  invented: fc.boolean(),
  event: fc.record({ name, date: fc.constantFrom('2027-05-29', '2028-02-29') }),
  units: fc.constantFrom('in' as const, 'mm' as const),
  cloths: few(
    fc.record({
      id,
      name,
      width: positive,
      fibre: name,
      stretch: fc.record({ across: whole(0, 400), along: whole(0, 60) }),
      iron: fc.constantFrom(0 as const, 110 as const, 150 as const, 200 as const),
      oneWay: fc.boolean(),
      thread: name,
      needle: name,
    }),
    1,
  ),
  markers: few(
    fc.record({
      id,
      name,
      kind: fc.constantFrom('chalk' as const, 'thread' as const, 'air-fading' as const),
    }),
    1,
  ),
  wearers: few(fc.record({ id, name, measures })),
  garments: few(garment),
});
