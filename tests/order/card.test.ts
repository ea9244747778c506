import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { toInches, toMm } from '../../src/length/length.ts';
import { cardFor } from '../../src/order/card.ts';
import type { Card } from '../../src/order/card-types.ts';
import { explain, runningOrder } from '../../src/order/running.ts';
import type { Running } from '../../src/order/running-types.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';

type Raw = Record<string, unknown>;

const read = (raw: unknown): { outfit: Outfit; running: Running } => {
  const outfit = readOutfit(raw);
  if (!outfit.ok) throw new Error(JSON.stringify(outfit.error, null, 1));
  const running = runningOrder(outfit.value);
  if (!running.ok) throw new Error(running.error.say);
  return { outfit: outfit.value, running: running.value };
};

const card = (of: { outfit: Outfit; running: Running }, step: string): Card => {
  const found = cardFor(of.outfit, of.running, step);
  if (!found) throw new Error(`no card ${step}`);
  return found;
};

const panel = {
  unit: 'in',
  start: [0, 0],
  edges: [
    { name: 'top', to: [8, 0] },
    { name: 'right', to: [8, 10] },
    { name: 'hem', to: [0, 10] },
    { name: 'left', to: [0, 0] },
  ],
};

/** The same as half of a piece that is cut on the fold. */
const onFold = {
  ...panel,
  edges: panel.edges.map((edge) => (edge.name === 'left' ? { ...edge, name: 'fold' } : edge)),
};

/** A single panel with these works, in a cloth that stands 150 °C. */
const onePanel = (
  works: Raw[],
  more: { cut?: string; marker?: string; cloth?: Raw; joins?: Raw[]; pieces?: Raw[] } = {},
) =>
  read({
    format: 'slipbaste-outfit',
    version: 1,
    id: 'test',
    name: 'Test',
    event: { name: 'Show', date: '2027-05-01' },
    units: 'in',
    cloths: [
      {
        id: 'lawn',
        name: 'Lawn',
        width: '54 in',
        fibre: 'cotton',
        iron: 150,
        thread: 'white',
        needle: '70/10',
        ...more.cloth,
      },
    ],
    markers: [{ id: 'chalk', name: 'Chalk', kind: more.marker ?? 'chalk' }],
    garments: [
      {
        id: 'g',
        name: 'Panel',
        pieces: [
          {
            id: 'panel',
            name: 'Panel',
            cloth: 'lawn',
            cut: more.cut ?? 'one',
            allowance: '1/2 in',
            outline: more.cut === 'fold' ? onFold : panel,
          },
          ...(more.pieces ?? []),
        ],
        works: works.map((work, i) => ({ id: `w${i}`, name: `Work ${i}`, on: 'panel', ...work })),
        joins: more.joins ?? [],
      },
    ],
  });

test('the card of an elastic gives the length to cut before its width', () => {
  const casing = { kind: 'casing', along: ['panel.hem'], turn: '1 in', elastic: '3/4 in', cut: '25 1/2 in' };
  expect(card(onePanel([casing]), 'g/w0/elastic').settings).toEqual([
    { name: 'elastic, cut', figure: '25 1/2 in' },
    { name: 'elastic, width', figure: '3/4 in' },
  ]);
});

describe('marks of tucks', () => {
  const tucks = {
    kind: 'tucks',
    from: 'left',
    marker: 'chalk',
    family: { depths: ['1/8 in', '1/4 in', '1/2 in'], spacing: '1 in', first: '1 in' },
  };
  test('are fold lines on the flat cloth, each from the edge', () => {
    const { readout } = card(onePanel([tucks]), 'g/w0/mark');
    if (readout.kind !== 'marks') throw new Error(readout.kind);
    // By hand: stitching lines finish at 1, 2, 3 in; before them lie 0, 1/4 and 3/4 in of take-up; the fold is one depth on.
    expect(readout.sets[0]?.marks.map((m) => toInches(m.at))).toEqual([1.125, 2.5, 4.25]);
    expect(readout.sets[0]?.from).toBe('the left edge');
  });
  test('are given left and right for a pair, with item names of their own', () => {
    const { readout } = card(onePanel([tucks], { cut: 'pair' }), 'g/w0/mark');
    if (readout.kind !== 'marks') throw new Error(readout.kind);
    const items = readout.sets.flatMap((set) => set.marks.map((m) => m.item));
    expect(items).toHaveLength(6);
    expect(new Set(items).size).toBe(6);
  });
  test('that overlap are refused in words, and the card is still there', () => {
    const deep = { ...tucks, family: { depths: ['2 in', '2 in'], spacing: '1 in', first: '1 in' } };
    const made = card(onePanel([deep]), 'g/w0/mark');
    expect(made.readout.kind).toBe('none');
    expect(made.cautions[0]).toMatch(/cannot be worked out.*deeper than the spacing/);
  });
  test('aslant to the edge are measured from one of its ends', () => {
    const aslant = {
      kind: 'crossed-tucks',
      from: 'top',
      marker: 'chalk',
      families: [
        { depths: ['1/8 in'], spacing: '1 in', first: '2 in', angle: 45 },
        { depths: ['1/8 in'], spacing: '1 in', first: '2 in', angle: -45 },
      ],
    };
    const { readout } = card(onePanel([aslant]), 'g/w0/mark');
    if (readout.kind !== 'marks') throw new Error(readout.kind);
    expect(readout.sets.map((set) => set.from)).toEqual([
      'the left end of the top edge, square to the tucks',
      'the right end of the top edge, square to the tucks',
    ]);
  });
});

describe('counts', () => {
  const lattice = {
    kind: 'lattice-beads',
    marker: 'chalk',
    families: [
      { angle: 45, spacing: '2 in' },
      { angle: -45, spacing: '2 in' },
    ],
    line: { name: 'Bugle beads', length: '6 mm', atATime: 2 },
    cluster: { of: 3, bead: { name: 'Pearls', length: '4 mm' } },
  };
  test('are even on every line where beads are sewn two at a time', () => {
    const { readout } = card(onePanel([lattice]), 'g/w0/bead');
    if (readout.kind !== 'count') throw new Error(readout.kind);
    expect(readout.perTouch).toBe(2);
    expect(readout.lines.length).toBeGreaterThan(4);
    for (const line of readout.lines) expect(line.target % 2).toBe(0);
  });
  test('of clusters are the crossings counted by hand, three to each', () => {
    const { readout } = card(onePanel([lattice]), 'g/w0/cluster');
    if (readout.kind !== 'count') throw new Error(readout.kind);
    // Lines x ± y = 2√2 k about the middle of a 8 × 10 in panel, less 6 mm all round: crossings at x = √2 (i + j), y = √2 (i - j).
    const [w, h, root] = [4 - 6 / 25.4, 5 - 6 / 25.4, Math.SQRT2];
    let crossings = 0;
    for (let i = -9; i <= 9; i += 1)
      for (let j = -9; j <= 9; j += 1) {
        if (Math.abs(root * (i + j)) < w && Math.abs(root * (i - j)) < h) crossings += 1;
      }
    expect(readout.lines.reduce((sum, line) => sum + line.target, 0)).toBe(3 * crossings);
  });
});

describe('gathers', () => {
  const strip = {
    id: 'strip',
    name: 'Strip',
    cloth: 'lawn',
    cut: 'one',
    allowance: '1/2 in',
    outline: {
      unit: 'in',
      start: [0, 0],
      edges: [
        { name: 'top', to: [20, 0] },
        { name: 'end', to: [20, 3] },
        { name: 'lower', to: [0, 3] },
        { name: 'start', to: [0, 0] },
      ],
    },
  };
  test('are quartered on the strip and on its place', () => {
    const of = onePanel([{ kind: 'gather', on: 'strip', edge: 'top', marker: 'chalk', divide: 4 }], {
      pieces: [strip],
      joins: [{ id: 'j', name: 'Frill seam', this: ['panel.hem'], to: ['strip.top'], depth: '1/2 in' }],
    });
    const { readout, advice } = card(of, 'g/w0/mark');
    if (readout.kind !== 'marks') throw new Error(readout.kind);
    expect(readout.sets.map((set) => set.marks.map((m) => toInches(m.at)))).toEqual([
      [5, 10, 15],
      [2, 4, 6],
    ]);
    expect(advice[0]?.say).toContain('2.5 times');
  });

  test('on an edge at the fold have all of it for their place, named once or as two halves', () => {
    for (const hem of [['panel.hem'], ['panel.hem', 'other:panel.hem']]) {
      const of = onePanel([{ kind: 'gather', on: 'strip', edge: 'top', marker: 'chalk', divide: 4 }], {
        cut: 'fold',
        pieces: [strip],
        joins: [{ id: 'j', name: 'Frill seam', this: hem, to: ['strip.top'], depth: '1/2 in' }],
      });
      const { readout } = card(of, 'g/w0/mark');
      if (readout.kind !== 'marks') throw new Error(readout.kind);
      expect(readout.sets[1]?.marks.map((m) => toInches(m.at))).toEqual([4, 8, 12]);
    }
  });
});

describe('buttonholes', () => {
  const holes = {
    kind: 'buttonholes',
    along: 'right',
    count: 4,
    first: '1 in',
    last: '9 in',
    held: '4 in',
    from: 'the top',
    button: { diameter: '1/2 in', thickness: '1/8 in' },
    direction: 'along',
    top: 'right',
    marker: 'chalk',
  };
  test('stand evenly on both sides of the held one, each 1/8 in above where its button rests', () => {
    const made = card(onePanel([holes], { cut: 'pair' }), 'g/w0/mark');
    if (made.readout.kind !== 'marks') throw new Error(made.readout.kind);
    expect(made.readout.sets).toHaveLength(1);
    expect(made.readout.sets[0]?.marks.map((m) => toInches(m.at) + 1 / 8)).toEqual([1, 4, 6.5, 9]);
    expect(made.settings).toContainEqual({ name: 'hole', figure: '5/8 in' });
    expect(made.say).toBe('Mark 4 buttonholes on the right panel');
  });
  test('are slit with a caution of their own', () => {
    expect(card(onePanel([holes], { cut: 'pair' }), 'g/w0/slit').cautions[0]).toMatch(/pin across each end/);
  });
});

describe('heat', () => {
  const fuse = {
    kind: 'interfacing',
    material: 'Firm fusible',
    fuse: { degrees: 160, seconds: 12, coolMinutes: 10 },
  };
  test('beyond what the cloth bears is refused in words on the card', () => {
    expect(card(onePanel([fuse]), 'g/w0/fuse').cautions.join(' ')).toMatch(
      /wants 160 °C, but the lawn bears 150 °C/,
    );
  });
  test('within it runs as timers, pressing and cooling', () => {
    const { readout, cautions } = card(onePanel([fuse], { cloth: { iron: 200 } }), 'g/w0/fuse');
    expect(cautions.join(' ')).not.toMatch(/wants 160/);
    expect(readout).toMatchObject({
      kind: 'timers',
      timers: [
        { item: 'press', seconds: 12 },
        { item: 'cool', seconds: 600 },
      ],
    });
  });
  test('is told by the dots of the care label when something is pressed', () => {
    const of = onePanel([{ kind: 'press-edge', edge: 'top', turn: '1/2 in' }], { cloth: { iron: 110 } });
    expect(card(of, 'g/w0/press').settings).toContainEqual({
      name: 'heat, at most',
      figure: '110 °C, one dot',
    });
  });
});

for (const name of ['plain-shirt', 'harbour-clockmaker']) {
  describe(`every card of ${name}`, () => {
    const of = read(
      JSON.parse(readFileSync(new URL(`../../demo-data/${name}.json`, import.meta.url), 'utf8')),
    );
    const cards = of.running.sequence.map((step) => card(of, step));
    test('can be worked out', () => {
      for (const made of cards)
        expect(made.cautions.join(' '), made.step).not.toMatch(/cannot be worked out|cannot be fused/);
    });
    test('has its place in its garment, an instruction that fits the screen, and a drawing', () => {
      for (const made of cards) {
        expect(made.k).toBeGreaterThan(0);
        expect(made.k).toBeLessThanOrEqual(made.n);
        expect(made.say.length, made.say).toBeLessThan(150);
        expect(made.say).not.toMatch(/\.$|undefined|NaN/);
        expect(made.drawing.length, made.step).toBeGreaterThan(0);
        expect(made.settings.length).toBeLessThanOrEqual(4);
      }
    });
    test('has items that the ledger can tell apart, marks on the tape and targets that can be counted', () => {
      for (const { readout, step } of cards) {
        const items =
          readout.kind === 'ticks'
            ? readout.items.map((i) => i.item)
            : readout.kind === 'marks'
              ? readout.sets.flatMap((s) => s.marks.map((m) => m.item))
              : readout.kind === 'count'
                ? readout.lines.map((l) => l.item)
                : readout.kind === 'timers'
                  ? readout.timers.map((t) => t.item)
                  : [];
        expect(new Set(items).size, step).toBe(items.length);
        if (readout.kind === 'marks')
          for (const set of readout.sets)
            for (const mark of set.marks) {
              expect(toMm(mark.at)).toBeGreaterThanOrEqual(0);
              expect(mark.at, `${step} ${set.name} ${mark.name}`).toBeLessThanOrEqual(set.span);
            }
        if (readout.kind === 'count')
          for (const line of readout.lines) expect(line.target).toBeGreaterThan(0);
      }
    });
    test('can say why it stands where it does', () => {
      const first = explain(of.running, of.running.sequence[0] ?? '');
      expect(first.notYet).toEqual([]);
      expect(first.waits.length).toBeGreaterThan(0);
      const last = explain(of.running, of.running.sequence.at(-1) ?? '');
      expect(last.notYet.length).toBeGreaterThan(0);
      expect(last.waits).toEqual([]);
    });
  });
}
