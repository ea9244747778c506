import { mm } from '../../../src/length/length.ts';
import { disagreements } from '../../../src/outfit/agreement.ts';
import { edgeName } from '../../../src/outfit/chains.ts';
import type { Chain, Garment, Join, Outfit, Wearer } from '../../../src/outfit/outfit.ts';
import type { Built, Putting, Unit } from '../../../src/outfit/units/unit.ts';
import { edgeLengths } from '../../../src/shape/measure.ts';
import { forced, order } from '../../order/make.ts';
import { demo } from '../demo-files.ts';

/** An invented wearer, measured all over. */
export const measured: Wearer = {
  id: 'edda',
  name: 'Edda',
  measures: {
    'upper-arm': mm(305),
    'arm-length': mm(585),
    wrist: mm(160),
    hand: mm(215),
    waist: mm(780),
    hip: mm(1000),
    thigh: mm(600),
    knee: mm(370),
    calf: mm(375),
    ankle: mm(225),
    heel: mm(315),
    'waist-to-crotch': mm(265),
    rise: mm(640),
    'crotch-to-knee': mm(330),
    'knee-to-floor': mm(450),
    'foot-length': mm(245),
    ball: mm(235),
  },
};

const single = (piece: string, edge: string): Chain => [{ piece, edge, other: false }];

/** A shirt without its sleeves: fronts and back, joined at shoulder and side; the clockmaker’s cloths to choose from. */
export function sleeveless(wearer?: Wearer): Outfit {
  const shirt = demo('plain-shirt');
  const [garment] = shirt.garments;
  const side = garment!.joins.find(({ id }) => id === 'underarm')!;
  const { stopsAt: _, ...plain } = { ...side, id: 'side', name: 'Side seam' };
  return {
    ...shirt,
    cloths: [...shirt.cloths, ...demo('harbour-clockmaker').cloths],
    wearers: wearer ? [wearer] : [],
    garments: [
      {
        ...garment!,
        ...(wearer ? { wearer: wearer.id } : {}),
        pieces: garment!.pieces.filter(({ id }) => id === 'front' || id === 'back'),
        works: garment!.works.filter(({ id, on }) => (on === 'front' || on === 'back') && id !== 'pockets'),
        joins: [
          ...garment!.joins.filter(({ id }) => id === 'shoulder'),
          { ...plain, this: single('front', 'side'), to: single('back', 'side') },
        ],
        gates: [],
      },
    ],
  };
}

/** A garment with nothing in it yet. */
export function bare(wearer?: Wearer): Outfit {
  const outfit = sleeveless(wearer);
  const [garment] = outfit.garments;
  return { ...outfit, garments: [{ ...garment!, pieces: [], works: [], joins: [], gates: [] }] };
}

/** What is put on, with nothing written in its fields unless given. */
export const putting = (unit: Unit, told: Partial<Putting> = {}): Putting => ({
  id: unit.id,
  name: unit.name,
  entries: {},
  at: {},
  cloths: {},
  ...told,
});

/** The outfit with the unit on its first garment. */
export interface Put {
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly built: Built;
}

/** Puts a unit on the first garment; throws with what was refused, and where names do not agree afterwards. */
export function put(outfit: Outfit, unit: Unit, told: Partial<Putting> = {}): Put {
  const [garment] = outfit.garments;
  const built = unit.build({ outfit, garment: garment! }, putting(unit, told));
  if (!built.ok) throw new Error(built.error.map(({ field, say }) => `${field}: ${say}`).join('\n'));
  const { pieces, works, joins, gates, catches } = built.value;
  const caught = (join: Join): Join => ({
    ...join,
    catches: [...join.catches, ...catches.filter((one) => one.join === join.id).map((one) => one.caught)],
  });
  const next: Garment = {
    ...garment!,
    pieces: [...garment!.pieces, ...pieces],
    works: [...garment!.works, ...works],
    joins: [...garment!.joins.map(caught), ...joins],
    gates: [...garment!.gates, ...gates],
  };
  const made = { ...outfit, garments: [next] };
  const wrong = disagreements(made);
  if (wrong.length > 0) throw new Error(wrong.map(({ at, wrong: say }) => `${at}: ${say}`).join('\n'));
  return { outfit: made, garment: next, built: built.value };
}

/** Faults that a unit finds, as `field: words`; empty where it can be put on. */
export function faults(outfit: Outfit, unit: Unit, told: Partial<Putting> = {}): readonly string[] {
  const built = unit.build({ outfit, garment: outfit.garments[0]! }, putting(unit, told));
  return built.ok ? [] : built.error.map(({ field, say }) => `${field}: ${say}`);
}

/** Finished length of a run in millimetres, gathers drawn up. */
export function finished(garment: Garment, chain: Chain): number {
  let sum = 0;
  for (const ref of chain) {
    const piece = garment.pieces.find(({ id }) => id === ref.piece);
    const long = piece && edgeLengths(piece.outline).get(ref.edge);
    if (long === undefined) throw new Error(`no edge ${edgeName(ref)}`);
    const gather = garment.works.find(
      (work) => work.kind === 'gather' && work.on === ref.piece && work.edge === ref.edge,
    );
    sum += long / (gather?.kind === 'gather' ? gather.fullness : 1);
  }
  return sum / 1e6;
}

/** By how many millimetres the `to` side of a join is longer than its `this` side. */
export function longerTo(garment: Garment, join: string): number {
  const found = garment.joins.find(({ id }) => id === join);
  if (!found) throw new Error(`no join ${join}; there are ${garment.joins.map(({ id }) => id).join(', ')}`);
  return finished(garment, found.to) - finished(garment, found.this);
}

/** Pairs of steps of the first garment that the constraints do not put in this order, as `a before b`; empty where all are. */
export function forcedPairs(
  outfit: Outfit,
  ...pairs: readonly (readonly [string, string])[]
): readonly string[] {
  const running = order(outfit);
  return pairs
    .filter(([before, after]) => !forced(running, before, after, outfit.garments[0]!.id))
    .map(([before, after]) => `${before} before ${after}`);
}
