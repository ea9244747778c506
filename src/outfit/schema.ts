import * as v from 'valibot';
import { inches, type Length, mm } from '../length/length.ts';
import { readLength } from '../length/reading.ts';
import type { Outline, Point, Segment } from '../shape/outline.ts';
import { readEdge } from './chains.ts';
import { MEASURES, type MeasureId } from './measures.ts';
import { nearest } from './suggest.ts';

/** The marker and version that every outfit file begins with. */
export const FORMAT = 'slipbaste-outfit';
export const VERSION = 1;

/** Longest list, longest text and deepest number that a file may hold; a guard against files made to hang the app. */
const MANY = 500;
const LONG = 2000;
/** Most edges that the pieces of one garment may have together, and that its joins may name together. */
const MANY_EDGES = 5000;

const id = v.pipe(
  v.string('must be text'),
  v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'must be small letters, digits and hyphens, such as `side-front`'),
  v.description('small letters, digits and hyphens'),
);
const text = v.pipe(v.string('must be text'), v.maxLength(LONG, `must not be longer than ${LONG} letters`));
const name = v.pipe(text, v.minLength(1, 'must not be empty'));
const list = <T extends v.GenericSchema>(item: T) =>
  v.pipe(
    v.array(item, 'must be a list, in [ ]'),
    v.maxLength(MANY, `must not have more than ${MANY} entries`),
  );

/** A thing with these names and no others: a mistyped one must not pass for one that was left out. */
const record = <T extends v.ObjectEntries>(entries: T) =>
  v.strictObject(entries, (issue) => {
    if (issue.expected !== 'never') return 'must be an object, in { }';
    return notUsed(String(issue.input), Object.keys(entries));
  });

/** What is said of a name that a thing does not have. */
export function notUsed(name: string, used: readonly string[]): string {
  const near = nearest(name, used);
  return near === undefined
    ? `is not used here; leave it out, or use one of: ${used.join(', ')}`
    : `is not used here; did you mean \`${near}\`?`;
}

/** A length as people write it, with its unit: `4 3/8 in`, `11.1 cm`. */
const length = v.pipe(
  v.string('must be a length in quotes, such as "4 3/8 in" or "111 mm"'),
  v.maxLength(40, 'is too long for a length'),
  v.description('a length with its unit, such as "4 3/8 in" or "111 mm"'),
  v.rawTransform<string, Length>(({ dataset, addIssue, NEVER }) => {
    if (!/[a-z"″′'”]/i.test(dataset.value)) {
      addIssue({
        message: `\`${dataset.value}\` has no unit; write for example "${dataset.value} in" or "${dataset.value} mm"`,
      });
      return NEVER;
    }
    const read = readLength(dataset.value, 'mm');
    if (read.ok) return read.value;
    addIssue({ message: read.error });
    return NEVER;
  }),
);
const positive = v.pipe(
  length,
  v.check((l: Length) => l > 0, 'must be more than nothing'),
);
const notNegative = v.pipe(
  length,
  v.check((l: Length) => l >= 0, 'must not be negative'),
);

/** `piece.edge`, or `other:piece.edge` for the mirrored mate. */
const edgeRef = v.pipe(
  v.string('must be text such as "back.side"'),
  v.regex(
    /^(other:)?[a-z0-9][a-z0-9-]*\.[a-z0-9][a-z0-9-]*$/,
    'must be a piece and an edge with a dot between, such as "back.side", or "other:back.side" for the mirrored mate',
  ),
  v.description('a piece and its edge: "back.side", or "other:back.side" for the mirrored mate'),
  v.transform(readEdge),
);
const chain = v.pipe(list(edgeRef), v.minLength(1, 'must name at least one edge'));

const number = (least: number, most: number) =>
  v.pipe(
    v.number('must be a number'),
    v.finite('must be a number'),
    v.minValue(least, `must be at least ${least}`),
    v.maxValue(most, `must be at most ${most}`),
  );
const whole = (least: number, most: number) =>
  v.pipe(number(least, most), v.integer('must be a whole number'));
const oneOf = <const T extends readonly string[]>(words: T) =>
  v.picklist(words, `must be one of: ${words.map((w) => `"${w}"`).join(', ')}`);

const pair = v.tuple([number(-100_000, 100_000), number(-100_000, 100_000)], 'must be two numbers, [x, y]');
const curve = v.tuple(
  [
    number(-100_000, 100_000),
    number(-100_000, 100_000),
    number(-100_000, 100_000),
    number(-100_000, 100_000),
  ],
  'must be four numbers: the two handles of the curve, [x1, y1, x2, y2]',
);
const stretch = { to: pair, curve: v.exactOptional(curve) };
const drawnIn = oneOf(['in', 'mm']);
const place =
  (unit: 'in' | 'mm') =>
  (x: number, y: number): Point =>
    unit === 'in' ? { x: inches(x), y: inches(y) } : { x: mm(x), y: mm(y) };
const outline = v.pipe(
  record({
    unit: drawnIn,
    start: pair,
    edges: v.pipe(
      list(
        record({
          name: id,
          /** Stretches that come before the last one, where an edge has several. */
          via: v.exactOptional(v.pipe(v.array(record(stretch), 'must be a list, in [ ]'), v.maxLength(2000))),
          ...stretch,
        }),
      ),
      v.minLength(3, 'must have at least three edges'),
    ),
  }),
  v.transform(({ unit, start, edges }): Outline => {
    const at = place(unit);
    const segment = ({
      to,
      curve: handles,
    }: v.InferOutput<ReturnType<typeof record<typeof stretch>>>): Segment =>
      handles
        ? {
            kind: 'curve',
            first: at(handles[0], handles[1]),
            second: at(handles[2], handles[3]),
            to: at(...to),
          }
        : { kind: 'line', to: at(...to) };
    return {
      start: at(...start),
      edges: edges.map((edge) => ({
        name: edge.name,
        segments: [...(edge.via ?? []), edge].map(segment),
      })),
    };
  }),
);

/** True for a day that the month has. */
const isDay = (date: string): boolean => {
  const [year = 0, month = 0, day = 0] = date.split('-').map(Number);
  return new Date(Date.UTC(year, month - 1, day)).getUTCDate() === day;
};

const cloth = record({
  id,
  name,
  width: positive,
  fibre: name,
  stretch: v.optional(record({ across: number(0, 400), along: number(0, 400) }), { across: 0, along: 0 }),
  iron: v.picklist([0, 110, 150, 200], 'must be 110, 150 or 200 (one, two, three dots), or 0 for no iron'),
  oneWay: v.optional(v.boolean('must be true or false'), false),
  thread: name,
  needle: name,
});
const marker = record({
  id,
  name,
  kind: oneOf(['chalk', 'thread', 'heat-fading', 'air-fading', 'water-fading']),
});
const piece = record({
  id,
  name,
  cloth: id,
  cut: oneOf(['one', 'pair', 'fold']),
  unit: v.exactOptional(id),
  allowance: notNegative,
  cutAfterWork: v.optional(v.boolean('must be true or false'), false),
  grain: v.exactOptional(number(-180, 180)),
  marks: v.optional(
    list(
      v.pipe(
        record({ name, unit: drawnIn, at: pair }),
        v.transform((mark) => ({ name: mark.name, at: place(mark.unit)(...mark.at) })),
      ),
    ),
    [],
  ),
  outline,
});

/** Words by name: what was written in the fields of a unit, which cloth it takes. */
/** Anything by names of its own. */
const named = <T extends v.GenericSchema>(each: T) => v.record(v.string(), each, 'must be an object, in { }');
const wordsBy = named(v.pipe(text, v.maxLength(200, 'must not be longer than 200 letters')));
const unitUse = record({
  id,
  name,
  unit: id,
  entries: v.optional(wordsBy, {}),
  at: v.optional(named(list(text)), {}),
  cloths: v.optional(named(id), {}),
  brought: v.optional(list(id), []),
  own: v.optional(list(id), []),
});

const family = record({
  depths: v.pipe(list(positive), v.minLength(1, 'must have at least one depth')),
  spacing: positive,
  first: notNegative,
  angle: v.optional(number(-90, 90), 0),
  pressed: v.optional(oneOf(['away', 'toward']), 'away'),
});
const latticeFamily = record({ angle: number(-90, 90), spacing: positive });
const beads = record({
  name,
  length: positive,
  atATime: v.optional(v.picklist([1, 2], 'must be 1 or 2'), 1),
});
const on = { id, name, on: id };
const work = v.variant(
  'kind',
  [
    record({ kind: v.literal('tucks'), ...on, from: id, marker: id, family }),
    record({
      kind: v.literal('crossed-tucks'),
      ...on,
      from: id,
      marker: id,
      families: v.tuple([family, family], 'must be two families of tucks, in [ ]'),
    }),
    record({
      kind: v.literal('folded-band'),
      ...on,
      edge: id,
      firstTurn: v.optional(positive, '1/2 in'),
      secondTurn: v.optional(positive, '1 in'),
    }),
    record({
      kind: v.literal('interfacing'),
      ...on,
      material: name,
      fuse: v.exactOptional(
        record({ degrees: number(80, 230), seconds: number(1, 120), coolMinutes: number(0, 120) }),
      ),
    }),
    record({
      kind: v.literal('applied-tape'),
      ...on,
      edge: id,
      inset: notNegative,
      tape: name,
      marker: id,
    }),
    record({
      kind: v.literal('gather'),
      ...on,
      edge: id,
      fullness: v.optional(number(1, 6), 2.5),
      divide: v.optional(v.picklist([4, 8], 'must be 4 or 8'), 4),
      marker: id,
    }),
    record({ kind: v.literal('bind-edge'), ...on, edge: id, strip: positive }),
    record({ kind: v.literal('press-edge'), ...on, edge: id, turn: positive }),
    record({ kind: v.literal('stay-stitch'), ...on, edge: id }),
    record({
      kind: v.literal('buttonholes'),
      ...on,
      through: v.optional(list(id), []),
      along: id,
      count: whole(1, 100),
      first: notNegative,
      last: notNegative,
      held: v.exactOptional(positive),
      from: name,
      button: record({ diameter: positive, thickness: notNegative }),
      direction: oneOf(['along', 'across']),
      top: oneOf(['left', 'right', 'each']),
      marker: id,
    }),
    record({
      kind: v.literal('lattice-beads'),
      ...on,
      families: v.tuple([latticeFamily, latticeFamily], 'must be two families of lines, in [ ]'),
      line: beads,
      cluster: v.exactOptional(record({ of: whole(1, 12), bead: beads })),
      marker: id,
    }),
    record({
      kind: v.literal('hem'),
      ...on,
      along: chain,
      ring: v.optional(v.boolean('must be true or false'), false),
      turn: positive,
      by: oneOf(['hand', 'machine']),
      hang: v.optional(number(0, 240), 0),
    }),
    record({
      kind: v.literal('casing'),
      ...on,
      along: chain,
      ring: v.optional(v.boolean('must be true or false'), false),
      turn: positive,
      elastic: positive,
      cut: v.exactOptional(positive),
    }),
    record({ kind: v.literal('ribbon'), ...on, ribbon: positive, where: name }),
    record({
      kind: v.literal('own'),
      ...on,
      with: v.optional(list(id), []),
      when: oneOf(['flat', 'free', 'late']),
      finishes: v.exactOptional(list(edgeRef)),
      steps: v.pipe(
        list(
          record({
            say: name,
            station: oneOf(['cut', 'mark', 'pin', 'machine', 'overlocker', 'iron', 'hand', 'try-on']),
            minutes: number(0, 6000),
            rest: v.optional(number(0, 20_160), 0),
            final: v.optional(v.boolean('must be true or false'), false),
            wets: v.optional(v.boolean('must be true or false'), false),
          }),
        ),
        v.minLength(1, 'must have at least one step'),
      ),
    }),
  ],
  'must be one of the kinds of work: tucks, crossed-tucks, folded-band, interfacing, applied-tape, gather, bind-edge, press-edge, stay-stitch, buttonholes, lattice-beads, hem, casing, ribbon, own',
);

const join = record({
  id,
  name,
  this: chain,
  to: chain,
  seam: v.optional(oneOf(['plain', 'stretch', 'turned', 'ends', 'covered', 'bound', 'laid-on']), 'plain'),
  depth: positive,
  catches: v.optional(
    list(record({ trim: edgeRef, basteTo: v.optional(oneOf(['this', 'to']), 'this'), depth: positive })),
    [],
  ),
  cover: v.exactOptional(edgeRef),
  ring: v.optional(v.boolean('must be true or false'), false),
  closes: v.optional(v.boolean('must be true or false'), false),
  worked: v.optional(oneOf(['flat', 'round']), 'flat'),
  tacked: v.optional(v.boolean('must be true or false'), false),
  stopsAt: v.exactOptional(name),
  finish: v.optional(oneOf(['none', 'overlock', 'pinked']), 'none'),
});
const gate = record({
  id,
  name,
  after: v.optional(list(id), []),
  tack: v.optional(list(id), []),
  trial: v.exactOptional(v.boolean('must be true or false')),
  checks: v.pipe(list(name), v.minLength(1, 'must name at least one thing to look at')),
});
const garment = v.pipe(
  record({
    id,
    name,
    wearer: v.exactOptional(id),
    units: v.optional(list(unitUse), []),
    pieces: list(piece),
    works: v.optional(list(work), []),
    joins: v.optional(list(join), []),
    gates: v.optional(list(gate), []),
  }),
  v.check(
    ({ pieces, joins }) =>
      pieces.reduce((sum, { outline: { edges } }) => sum + edges.length, 0) <= MANY_EDGES &&
      joins.reduce((sum, j) => sum + j.this.length + j.to.length + j.catches.length, 0) <= MANY_EDGES,
    `must not have more than ${MANY_EDGES} edges, nor name more than ${MANY_EDGES} in its joins`,
  ),
);

/** Every measure may be there or not; one that no list of measures has is refused, with the nearest name. */
const measures = record(
  Object.fromEntries(MEASURES.map((one) => [one.id, v.exactOptional(positive)])) as Record<
    MeasureId,
    v.ExactOptionalSchema<typeof positive, undefined>
  >,
);
const wearer = record({ id, name, measures: v.optional(measures, {}) });

/** The shape of an outfit file; what the names in it must agree about is checked in `reading.ts`. */
export const outfitSchema = record({
  $schema: v.exactOptional(text),
  format: v.literal(FORMAT, `must be "${FORMAT}": this is not an outfit file`),
  version: v.literal(VERSION, `must be ${VERSION}: this app reads version ${VERSION} of outfit files`),
  id,
  name,
  about: v.optional(text, ''),
  invented: v.optional(v.boolean('must be true or false'), false),
  event: record({
    name,
    date: v.pipe(
      v.string('must be text'),
      v.isoDate('must be a date such as "2027-05-29"'),
      v.check(isDay, 'is not a day of the calendar'),
    ),
  }),
  units: v.optional(oneOf(['in', 'mm']), 'mm'),
  cloths: v.pipe(list(cloth), v.minLength(1, 'must name at least one cloth')),
  markers: v.pipe(list(marker), v.minLength(1, 'must name at least one marker')),
  wearers: v.optional(list(wearer), []),
  garments: list(garment),
});
