import fc from 'fast-check';
import type { Alteration } from '../../../src/order/undoing/undoing-types.ts';
import type { Outfit } from '../../../src/outfit/outfit.ts';
import { readOutfit } from '../../../src/outfit/reading.ts';
import {
  type Data,
  data,
  gate,
  holes,
  join,
  lattice,
  type Parts,
  pair,
  piece,
  twoTucks,
  work,
} from '../make.ts';

const seams = fc.constantFrom('plain', 'stretch', 'bound', 'laid-on', 'turned');
const few = fc.constantFrom(
  'tucks',
  'bind-edge',
  'stay-stitch',
  'press-edge',
  'gather',
  'lattice-beads',
  'own',
  'folded-band',
);

/** What a garment of panels is made of: every choice by itself. */
const choices = fc.record({
  panels: fc.array(
    fc.record({
      cut: fc.constantFrom('pair', 'pair', 'one', 'fold'),
      seam: seams,
      tacked: fc.boolean(),
      finish: fc.constantFrom('none', 'overlock', 'pinked'),
      works: fc.uniqueArray(few, { maxLength: 3 }),
      edge: fc.constantFrom('top', 'right', 'bottom', 'left'),
      final: fc.boolean(),
      after: fc.boolean(),
    }),
    { minLength: 2, maxLength: 5 },
  ),
  hem: fc.boolean(),
  frill: fc.boolean(),
  frillAt: fc.nat(),
  collar: fc.constantFrom('none', 'bound', 'plain', 'covered'),
  buttons: fc.constantFrom('none', 'left', 'each'),
  through: fc.boolean(),
  gate: fc.boolean(),
});

type Choices = typeof choices extends fc.Arbitrary<infer T> ? T : never;
type Panel = Choices['panels'][number];

function worksOf({ works, edge, final, cut }: Panel, on: string): readonly Data[] {
  const possible = works.filter((kind) => kind !== 'folded-band' || cut !== 'fold');
  return possible.map((kind): Data => {
    const id = `${on}-${kind}`;
    switch (kind) {
      case 'tucks':
        return work(kind, id, on, { from: 'left', marker: 'chalk', family: twoTucks });
      case 'bind-edge':
        return work(kind, id, on, { edge, strip: '30 mm' });
      case 'stay-stitch':
        return work(kind, id, on, { edge });
      case 'press-edge':
        return work(kind, id, on, { edge, turn: '10 mm' });
      case 'gather':
        return work(kind, id, on, { edge, fullness: 2, divide: 4, marker: 'thread' });
      case 'lattice-beads':
        return work(kind, id, on, { ...lattice, marker: 'chalk' });
      case 'folded-band':
        return work(kind, id, on, { edge, firstTurn: '10 mm', secondTurn: '20 mm' });
      default:
        return work(kind, id, on, {
          when: 'free',
          steps: [{ say: `Embroider ${on}`, station: 'hand', minutes: 9, final }],
        });
    }
  });
}

function described(made: Choices): Parts {
  const names = made.panels.map((_, i) => `panel-${i}`);
  const seamsBetween = made.panels.slice(1).map((panel, i) => {
    const caught = made.frill && made.frillAt % (made.panels.length - 1) === i;
    return join(`seam-${i}`, `${names[i]}.right`, `${names[i + 1]}.left`, {
      seam: panel.seam,
      tacked: panel.tacked && (panel.seam === 'plain' || panel.seam === 'stretch'),
      finish: panel.finish,
      ...(caught
        ? { catches: [{ trim: 'frill.inner', basteTo: i % 2 === 0 ? 'this' : 'to', depth: '10 mm' }] }
        : {}),
    });
  });
  const tops = names.map((name) => `${name}.top`).join(' ');
  const collar =
    made.collar === 'none'
      ? []
      : [
          join('collar-seam', 'upper.outer', 'under.outer', { seam: 'turned' }),
          join('neck', tops, 'under.lower', {
            seam: made.collar,
            ...(made.collar === 'covered' ? { cover: 'upper.lower' } : {}),
          }),
        ];
  return {
    pieces: [
      ...made.panels.map(({ cut, after }, i) =>
        piece(names[i] ?? '', 'top right bottom left', { cut, cutAfterWork: after }),
      ),
      ...(made.frill ? [pair('frill', 'inner front outer back')] : []),
      ...(made.collar === 'none'
        ? []
        : [piece('upper', 'outer front lower back'), piece('under', 'outer front lower back')]),
    ],
    works: [
      ...made.panels.flatMap((panel, i) => worksOf(panel, names[i] ?? '')),
      ...(made.frill
        ? [
            work('gather', 'frill-gathers', 'frill', {
              edge: 'inner',
              fullness: 2,
              divide: 8,
              marker: 'thread',
            }),
          ]
        : []),
      ...(made.hem
        ? [
            work('hem', 'hem', names[0] ?? '', {
              along: names.map((name) => `${name}.bottom`),
              turn: '20 mm',
              by: 'machine',
            }),
          ]
        : []),
      ...(made.buttons === 'none'
        ? []
        : [
            work('buttonholes', 'buttons', names[0] ?? '', {
              ...holes,
              along: 'left',
              top: made.buttons,
              through: made.through ? [names[1]] : [],
            }),
          ]),
    ],
    joins: [...seamsBetween, ...collar],
    gates: made.gate ? [gate('try-on', 'seam-0')] : [],
  };
}

/** Garments of panels side by side, with trims, hems, collars, holes and works; only such as can be described. */
export const anyGarment: fc.Arbitrary<Outfit> = choices
  .map((made) => readOutfit(data(described(made))))
  .filter((read) => read.ok)
  .map((read) => {
    if (!read.ok) throw new Error('only what can be read');
    return read.value;
  });

/** Alterations of pieces of an outfit: some that are cut anew, some with an edge moved. */
export function anyAlterations(of: Outfit, most = 3): fc.Arbitrary<readonly Alteration[]> {
  const pieces = of.garments.flatMap((garment) =>
    garment.pieces.map((one) => ({ garment: garment.id, one })),
  );
  return fc.uniqueArray(
    fc.constantFrom(...pieces).chain(({ garment, one }) =>
      fc.record({
        garment: fc.constant(garment),
        piece: fc.constant(one.id),
        how: fc.constantFrom('anew' as const, 'edges' as const),
        edges: fc.subarray(one.outline.edges.map(({ name }) => name).filter((name) => name !== 'fold')),
        side: fc.constantFrom('both' as const, 'both' as const, 'left' as const, 'right' as const),
        say: fc.constant(''),
      }),
    ),
    { selector: ({ garment, piece: id }) => `${garment}/${id}`, maxLength: most },
  );
}
