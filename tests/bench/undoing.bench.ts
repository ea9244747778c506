import { readFileSync } from 'node:fs';
import { runningOrder } from '../../src/order/running.ts';
import { prepareUndoing, undoing, undoingMinutes } from '../../src/order/undoing/undoing.ts';
import type { Alteration } from '../../src/order/undoing/undoing-types.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { againPlainly } from '../order/undoing/plainly.ts';
import { ratio } from './ratio.ts';

type Data = Readonly<Record<string, unknown>>;

const file = (): Data & { readonly garments: readonly Data[] } =>
  JSON.parse(readFileSync('demo-data/harbour-clockmaker.json', 'utf8'));

function outfitOf(data: unknown): Outfit {
  const read = readOutfit(JSON.parse(JSON.stringify(data)));
  if (!read.ok) throw new Error(JSON.stringify(read.error.slice(0, 3)));
  return read.value;
}

/** The demonstration so many times over, each garment under a name of its own. */
const manyGarments = (times: number): Outfit => {
  const data = file();
  return outfitOf({
    ...data,
    garments: Array.from({ length: times }, (_, n) =>
      data.garments.map((garment) => ({
        ...garment,
        id: `${String(garment.id)}-${n}`,
        wearer: undefined,
        units: undefined,
      })),
    ).flat(),
  });
};

/** One garment of so many panels side by side, each with tucks and a tape, hemmed along the bottom of all. */
function manyPanels(panels: number): Outfit {
  const names = Array.from({ length: panels }, (_, n) => `panel-${n}`);
  const outline = {
    unit: 'mm',
    start: [0, 0],
    edges: [
      ['top', [200, 0]],
      ['right', [200, 700]],
      ['bottom', [0, 700]],
      ['left', [0, 0]],
    ].map(([name, to]) => ({ name, to })),
  };
  return outfitOf({
    ...file(),
    garments: [
      {
        id: 'skirt',
        name: 'Skirt',
        pieces: names.map((id) => ({ id, name: id, cloth: 'lawn', cut: 'one', allowance: '15 mm', outline })),
        works: [
          ...names.flatMap((on) => [
            {
              kind: 'applied-tape',
              id: `${on}-tape`,
              name: 'Tape',
              on,
              edge: 'bottom',
              inset: '40 mm',
              tape: 'Braid',
              marker: 'chalk',
            },
            {
              kind: 'tucks',
              id: `${on}-tucks`,
              name: 'Tucks',
              on,
              from: 'left',
              marker: 'chalk',
              family: { depths: ['5 mm', '5 mm'], spacing: '20 mm', first: '20 mm', pressed: 'away' },
            },
          ]),
          {
            kind: 'hem',
            id: 'hem',
            name: 'Hem',
            on: 'panel-0',
            along: names.map((name) => `${name}.bottom`),
            turn: '20 mm',
            by: 'machine',
          },
        ],
        joins: names.slice(1).map((name, n) => ({
          id: `seam-${n}`,
          name: `Seam ${n}`,
          this: [`${names[n]}.right`],
          to: [`${name}.left`],
          depth: '15 mm',
          finish: 'overlock',
        })),
        gates: [],
      },
    ],
  });
}

for (const [name, outfit, pieces] of [
  ['the demonstration 5 times over, one piece', manyGarments(5), 1],
  ['the demonstration 5 times over, 12 pieces', manyGarments(5), 12],
  ['one garment of 85 panels, every seventh cut anew', manyPanels(85), 12],
] as const) {
  const found = runningOrder(outfit);
  if (!found.ok) throw new Error(found.error.say);
  const running = found.value;
  const done = [...running.sequence];
  const at = { done: new Set(done), id: 'r', say: '' };
  const all = outfit.garments.flatMap((garment) =>
    garment.pieces.map((piece) => ({ garment: garment.id, piece: piece.id })),
  );
  const every = Math.floor(all.length / pieces);
  const alterations = all
    .filter((_, i) => i % every === 0)
    .slice(0, pieces)
    .map((one): Alteration => ({ ...one, how: 'anew', edges: [], side: 'both', say: '' }));
  let start = performance.now();
  const prepared = prepareUndoing(outfit, running);
  const preparing = performance.now() - start;
  start = performance.now();
  const undone = undoing(prepared, alterations, at);
  const cold = performance.now() - start;
  console.log(
    `  ${name}: ${done.length} steps, ${undone.rework.undo.length} to undo, ${undone.rework.again.length} to do again; prepared in ${preparing.toFixed(1)} ms, first undoing in this process ${cold.toFixed(2)} ms`,
  );
  const plain = againPlainly(outfit, running, alterations, done);
  const rows = undone.rework.again.filter(({ step }) => step.endsWith('/rows') && !plain.has(step)).length;
  if (plain.size + rows !== undone.rework.again.length) throw new Error('the two do not agree');
  ratio(
    `${name}, undoing against going through everything again and again`,
    () => undoing(prepared, alterations, at),
    () => againPlainly(outfit, running, alterations, done),
  );
  ratio(
    `${name}, its minutes alone against undoing`,
    () => undoingMinutes(prepared, alterations, at),
    () => undoing(prepared, alterations, at),
  );
}
