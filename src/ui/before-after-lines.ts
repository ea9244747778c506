import { type Length, toMm } from '../length/length.ts';
import { insideOf, placeAt } from '../paper/parallel-edge.ts';
import { edgeRuns } from '../paper/piece-marks.ts';
import { distance } from '../shape/measure.ts';
import type { Outline } from '../shape/outline.ts';
import { type Box, boxRound, drawEdges, pathThrough, type Spot } from './drawing-lines.ts';

/** A change to be written beside a drawing, at the height where it is made. */
export interface ChangeAt {
  /** `5/8 in`. */
  readonly size: string;
  /** `wider`. */
  readonly way: string;
  /** `chest`. */
  readonly where: string;
  /** The height on the new outline; for a length the upper one. */
  readonly y: Length;
  /** For a length: where it ends. */
  readonly to?: Length;
}

/** A change with its place on the drawing. */
interface Label extends Spot {
  readonly size: string;
  readonly way: string;
  readonly where: string;
  /** The line across the piece, or down beside it. */
  readonly across: readonly [Spot, Spot];
  /** From that line to the words. */
  readonly lead: readonly [Spot, Spot];
}

/** The name of an edge of the new outline, or its number where it is too short for the name. */
interface EdgeName extends Spot {
  readonly words: string;
  readonly turn: number;
}

/** An old and a new outline on one drawing, laid out for a phone; all in pixels of it. */
export interface BeforeAfterLines {
  readonly wide: number;
  readonly high: number;
  /** Pixels for one millimetre of cloth. */
  readonly scale: number;
  readonly before: string;
  readonly after: string;
  readonly edges: readonly EdgeName[];
  /** Names of the edges that are numbered on the drawing. */
  readonly numbered: readonly { readonly number: number; readonly name: string }[];
  readonly labels: readonly Label[];
  /** Left end of the foot, where the scale is drawn. */
  readonly foot: Spot;
}

const WIDE = 358;
const HIGH = 430;
const RIM = 12;
/** Height of the letters: of an amount, of which way it goes and the place below it, of the name of an edge. */
const LETTERS = { amount: 28, where: 18, edge: 14 } as const;
/** How wide a letter is for its height, on the whole. */
const LETTER = 0.54;
/** Two lines of words need so much. */
const LABEL = 54;
const LEAD = 16;
const FOOT = 30;

/** How far a closed run of spots reaches to the left and right at a height; nothing where it does not reach it. */
export function reachAt(spots: readonly Spot[], y: number): readonly [number, number] | undefined {
  let reach: readonly [number, number] | undefined;
  spots.forEach((to, i) => {
    const from = spots.at(i - 1) ?? to;
    const [low, high] = from.y < to.y ? [from, to] : [to, from];
    if (y < low.y || y > high.y) return;
    const level = high.y - low.y;
    const found = level === 0 ? [low.x, high.x] : [low.x + ((high.x - low.x) * (y - low.y)) / level];
    const [least, most] = reach ?? [Infinity, -Infinity];
    reach = [Math.min(least, ...found), Math.max(most, ...found)];
  });
  return reach;
}

/** The spots all round an outline, in millimetres. */
export const spotsRound = (outline: Outline): readonly Spot[] =>
  drawEdges(outline).flatMap(({ spots }) => spots);

/** Heights so far apart that words fit between them, as near as can be to where they belong; in the order given. */
export function spread(heights: readonly number[], least: number, top: number, bottom: number): number[] {
  const put = [...heights];
  let free = top;
  put.forEach((y, i) => {
    put[i] = Math.max(y, free);
    free = (put[i] ?? y) + least;
  });
  let floor = bottom;
  for (let i = put.length - 1; i >= 0; i -= 1) {
    put[i] = Math.min(put[i] ?? floor, floor);
    floor = (put[i] ?? floor) - least;
  }
  return put;
}

const wideAs = (words: string, high: number): number => words.length * high * LETTER;

function edgeNames(outline: Outline, put: (s: Spot) => Spot, scale: number) {
  const runs = edgeRuns(outline);
  const inside = insideOf([...runs.values()].flat());
  const numbered: { number: number; name: string }[] = [];
  const edges = [...runs].flatMap(([edge, run], i): EdgeName[] => {
    const place = placeAt(run, 0.5, inside);
    const [first, last] = [run[0], run.at(-1)];
    if (!place || !first || !last) return [];
    const name = edge.replaceAll('-', ' ');
    const fits = wideAs(name, LETTERS.edge) <= toMm(distance(first, last)) * scale * 0.92;
    if (!fits) numbered.push({ number: i + 1, name });
    const degrees = (Math.atan2(place.way.y, place.way.x) * 180) / Math.PI;
    const turn = !fits ? 0 : degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
    const at = put({ x: toMm(place.at.x), y: toMm(place.at.y) });
    const away = LETTERS.edge * 0.85;
    // Letters stand on their base line, a third of their height below their middle.
    const [down, slant] = [LETTERS.edge * 0.34, (turn * Math.PI) / 180];
    return [
      {
        words: fits ? name : String(i + 1),
        turn: Math.round(turn),
        x: at.x + place.inward.x * away - Math.sin(slant) * down,
        y: at.y + place.inward.y * away + Math.cos(slant) * down,
      },
    ];
  });
  return { edges, numbered };
}

/** Lays out an old and a new outline on each other, at one scale, with what changes written beside its height. */
export function beforeAfterLines(
  before: Outline,
  after: Outline,
  changes: readonly ChangeAt[],
): BeforeAfterLines {
  const [old, anew] = [spotsRound(before), spotsRound(after)];
  const box: Box = boxRound([...old, ...anew]);
  const words = changes.flatMap((one) => [
    wideAs(one.size, LETTERS.amount) + wideAs(` ${one.way}`, LETTERS.where),
    wideAs(one.where, LETTERS.where),
  ]);
  const column = changes.length === 0 ? 0 : Math.max(...words) + LEAD;
  const scale = Math.min(
    (WIDE - RIM * 2 - column) / Math.max(1, box.right - box.left),
    HIGH / Math.max(1, box.bottom - box.top),
  );
  const right = RIM + (box.right - box.left) * scale;
  const drawn = Math.max((box.bottom - box.top) * scale, changes.length * LABEL);
  const put = ({ x, y }: Spot): Spot => ({
    x: RIM + (x - box.left) * scale,
    y: RIM + (y - box.top) * scale,
  });
  const placed = changes
    .map((change) => {
      const [y, to] = [toMm(change.y), toMm(change.to ?? change.y)];
      const reach = reachAt(anew, y) ?? [box.left, box.right];
      const beside = right + LEAD / 4;
      const across: readonly [Spot, Spot] =
        change.to === undefined
          ? [put({ x: reach[0], y }), put({ x: reach[1], y })]
          : [
              { x: beside, y: put({ x: 0, y }).y },
              { x: beside, y: put({ x: 0, y: to }).y },
            ];
      const from = change.to === undefined ? across[1] : { x: beside, y: (across[0].y + across[1].y) / 2 };
      return { change, across, from };
    })
    .sort((a, b) => a.from.y - b.from.y);
  const heights = spread(
    placed.map(({ from }) => from.y),
    LABEL,
    RIM + LABEL / 2,
    RIM + drawn - LABEL / 2,
  );
  return {
    wide: WIDE,
    high: RIM * 2 + drawn + FOOT,
    scale,
    before: `${pathThrough(old, put)}Z`,
    after: `${pathThrough(anew, put)}Z`,
    ...edgeNames(after, put, scale),
    labels: placed.map(({ change, across, from }, i) => {
      const y = heights[i] ?? from.y;
      const x = right + LEAD;
      const { size, way, where } = change;
      return { size, way, where, across, lead: [from, { x: x - 4, y }], x, y };
    }),
    foot: { x: RIM, y: RIM + drawn + FOOT - 6 },
  };
}
