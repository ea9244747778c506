import { readFileSync } from 'node:fs';

/** Texts of the examples and demonstrations, which files are made from. */
const texts = [
  '../../public/examples/small-blouse.jsonc',
  '../../public/examples/gathered-skirt.jsonc',
  '../../public/examples/stretch-legs.jsonc',
  '../../demo-data/plain-shirt.json',
  '../../demo-data/harbour-clockmaker.json',
].map((path) => readFileSync(new URL(path, import.meta.url), 'utf8'));

/** Numbers from 0 up to 1, the same ones for the same seed (a small generator with 32 bits of state). */
export function chance(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

/** A way to spoil a text. */
type Spoil = (text: string, roll: () => number) => string;

const upTo = (roll: () => number, most: number): number => Math.floor(roll() * most);
const pick = <T>(roll: () => number, all: readonly T[]): T => all[upTo(roll, all.length)]!;
const instead = (text: string, at: number, length: number, by: string): string =>
  text.slice(0, at) + by + text.slice(at + length);

const LETTERS = [...'{}[]",:/*\\\u0000\u2028\uFEFF\uD800é𝄞 \n\r\t-+.eE09'];
const TOKENS = [
  ...[
    'null',
    'true',
    '-0',
    '1e308',
    '1e999',
    '-1e-999',
    '123456789012345678901234567890',
    '0.1e+5',
    '[]',
    '{}',
    '""',
  ],
  ...[
    '"__proto__"',
    '"constructor"',
    '"toString"',
    '"hasOwnProperty"',
    '"other:front.side"',
    '"1/0 in"',
    '"-3 mm"',
  ],
  ...[
    '"9999999999999999 km"',
    '"4 3/8"',
    `"${'a'.repeat(5000)}"`,
    '"\\ud800"',
    '"ﬁ ﷺ"',
    'NaN',
    'Infinity',
    "'x'",
  ],
];
const NAMES = [
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  'length',
  '',
  '0',
  'then',
];

const tokens = (text: string): RegExpExecArray[] => [
  ...text.matchAll(/"(?:[^"\\\n]|\\.)*"|-?\d[\d.eE+-]*|true|false|null/g),
];

const bytes: Spoil = (text, roll) => {
  let now = text;
  for (let n = 1 + upTo(roll, 3); n > 0; n -= 1) {
    const [at, length] = [upTo(roll, now.length), upTo(roll, 3)];
    now = instead(now, at, length, roll() < 0.6 ? pick(roll, LETTERS) : '');
  }
  return now;
};
const slices: Spoil = (text, roll) => {
  const [at, length, to] = [upTo(roll, text.length), upTo(roll, 400), upTo(roll, text.length)];
  const slice = text.slice(at, at + length);
  return pick(roll, [
    text.slice(0, at),
    instead(text, at, length, ''),
    instead(text, to, 0, slice),
    instead(text, to, length, slice),
  ]);
};
const words: Spoil = (text, roll) => {
  let now = text;
  for (let n = 1 + upTo(roll, 2); n > 0; n -= 1) {
    const found = tokens(now);
    const one = found[upTo(roll, found.length)];
    if (!one) return now;
    const by = roll() < 0.5 ? pick(roll, TOKENS) : (pick(roll, found)[0] ?? '');
    now = instead(now, one.index, one[0].length, by);
  }
  return now;
};
const deep: Spoil = (text, roll) => {
  const found = tokens(text);
  const one = found[upTo(roll, found.length)];
  const depth = pick(roll, [3, 55, 59, 61, 1000, 200_000]);
  const [open, shut] = pick(roll, [
    ['[', ']'],
    ['{"a":', '}'],
    ['[[{"name":', '}]]'],
  ] as const);
  return one
    ? instead(text, one.index, one[0].length, open.repeat(depth) + one[0] + shut.repeat(depth))
    : text;
};

/** Plain JSON of a text with comments; those shipped have no strokes within their texts but in the schema’s address. */
const plain = (text: string): unknown =>
  JSON.parse(text.replace(/^\s*\/\/.*$|(?<=[\s,{[])\/\/ .*$/gm, '').replace(/,(\s*[}\]])/g, '$1'));

interface Spot {
  readonly in: Record<string, unknown>;
  readonly key: string;
}
function spots(data: unknown): Spot[] {
  const found: Spot[] = [];
  const waiting = [data];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next !== 'object' || next === null) continue;
    for (const [key, value] of Object.entries(next)) {
      found.push({ in: next as Record<string, unknown>, key });
      waiting.push(value);
    }
  }
  return found;
}

const structure: Spoil = (text, roll) => {
  const data = plain(text);
  const all = spots(data);
  for (let n = 1 + upTo(roll, 3); n > 0; n -= 1) {
    const [to, from] = [pick(roll, all), pick(roll, all)];
    const value = structuredClone(from.in[from.key]);
    const list = to.in[to.key];
    const act = upTo(roll, 5);
    if (act === 0) delete to.in[to.key];
    else if (act === 1) to.in[to.key] = value;
    else if (act === 2 && !Array.isArray(to.in))
      Object.defineProperty(to.in, pick(roll, NAMES), { value, enumerable: true, configurable: true });
    else if (act === 3 && Array.isArray(list))
      for (let i = upTo(roll, 800); i > 0; i -= 1) list.push(value ?? list[0]);
    else
      to.in[to.key] = pick(roll, [
        1e300,
        -1,
        0.1,
        '',
        [],
        {},
        [[[]]],
        Number.MAX_SAFE_INTEGER,
        'other:a.b',
        true,
      ]);
    if (JSON.stringify(data).length > 1_500_000) break;
  }
  return JSON.stringify(data, null, pick(roll, [0, 2]));
};

const WAYS: readonly Spoil[] = [bytes, slices, words, structure, structure, deep];

/** File number `n`: always the same text. Some are spoilt twice over. */
export function fuzzFile(n: number): string {
  const roll = chance(5 + n * 7919);
  const way = WAYS[n % WAYS.length]!;
  const once = way(pick(roll, texts), roll);
  return roll() < 0.1 ? pick(roll, [bytes, words])(once, roll) : once;
}
