import { type Length, NM_PER_MM } from '../../length/length.ts';
import { FOLD, spell } from '../../outfit/chains.ts';
import type { Piece } from '../../outfit/outfit.ts';
import { insideOf, placeAt } from '../../paper/parallel-edge.ts';
import { edgeRuns } from '../../paper/piece-marks.ts';
import { pointOf } from '../../shape/flatten.ts';
import { boundingBox, distance, edgeLengths } from '../../shape/measure.ts';
import type { Point } from '../../shape/outline.ts';

/** An edge ready to be drawn and touched, in millimetres. */
export interface EdgeLine {
  /** As a file spells it: `other:front.neck`. */
  readonly ref: string;
  /** Its number round the outline, from 1. */
  readonly number: number;
  readonly name: string;
  readonly long: Length;
  readonly d: string;
  readonly label: {
    readonly x: number;
    readonly y: number;
    readonly turn: number;
    readonly words: string;
    /** How many letters the edge has room for. */
    readonly room: number;
  };
}

/** One side of a piece, drawn. */
export interface SideLines {
  readonly other: boolean;
  readonly d: string;
  readonly edges: readonly EdgeLine[];
  /** Where the words that say which side it is begin and end: below its middle. */
  readonly middle: { readonly x: number; readonly y: number };
}

/** A piece drawn for touching: once, or with its mirrored mate or other half beside it. */
export interface PieceLines {
  readonly view: readonly [left: number, top: number, wide: number, high: number];
  /** Height of the letters. */
  readonly letters: number;
  /** Drawn broader than it is, because it is so narrow that its edges would lie on each other. */
  readonly stretched: boolean;
  readonly sides: readonly SideLines[];
}

const round = (n: number): number => Math.round(n * 100) / 100;
const path = (run: readonly { readonly x: number; readonly y: number }[]): string =>
  run.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${round(x)} ${round(y)}`).join('');

/** Letters are this part of the larger side: about 15 px on a phone. */
const LETTER = 1 / 23;
/** No piece is drawn narrower than this part of its length. */
const THINNEST = 1 / 4;
/** How wide a letter is for its height, on the whole. */
const WIDE = 0.56;

/** Words of an edge name: `front seam`. */
export const saidName = (edge: string): string => edge.replaceAll('-', ' ');

/**
 * The edges of a piece as lines to touch, each with its name just inside it, or with its number where the edge is too
 * short for the name.
 * @param mate whether the mirrored mate, or the other half of a folded piece, is drawn too
 */
export function pieceLines(piece: Piece, mate: boolean): PieceLines {
  const lengths = edgeLengths(piece.outline);
  const drawn = edgeRuns(piece.outline);
  const whole = boundingBox([...drawn.values()].flat());
  const [wide, high] = [whole.right - whole.left, whole.bottom - whole.top];
  const least = Math.max(wide, high) * THINNEST;
  const [sx, sy] = [Math.max(1, least / Math.max(wide, 1)), Math.max(1, least / Math.max(high, 1))];
  const runs = new Map(
    [...drawn].map(([name, run]) => [name, run.map(({ x, y }) => pointOf(x * sx, y * sy))] as const),
  );
  const all = [...runs.values()].flat();
  const box = boundingBox(all);
  const mmOf = (length: number): number => length / NM_PER_MM;
  const [left, right, top, bottom] = [mmOf(box.left), mmOf(box.right), mmOf(box.top), mmOf(box.bottom)];
  const inside = insideOf(all);
  const gap = (right - left) / 6;
  const folded = piece.cut === 'fold';
  // A folded half is mirrored at its fold; a pair lies side by side.
  const across = (x: number): number => (folded ? -x : right + gap + (right - x));
  const [from, to] = !mate
    ? [left, right]
    : folded
      ? [Math.min(left, -right), Math.max(right, -left)]
      : [left, right + gap + right - left];
  const side = Math.max(to - from, bottom - top, 0.01);
  const letters = side * LETTER;
  const rim = letters * 0.9;
  const draw = (other: boolean): SideLines => {
    const at = (p: Point) => ({
      x: other ? across(p.x / NM_PER_MM) : p.x / NM_PER_MM,
      y: p.y / NM_PER_MM,
    });
    const edges = [...runs].flatMap(([name, run], i): EdgeLine[] => {
      const long = lengths.get(name);
      const place = placeAt(run, 0.5, inside);
      if (long === undefined || !place) return [];
      const flip = other ? -1 : 1;
      const [wx, wy] = [place.way.x * flip, place.way.y];
      const degrees = (Math.atan2(wy, wx) * 180) / Math.PI;
      const turn = degrees > 90 ? degrees - 180 : degrees <= -90 ? degrees + 180 : degrees;
      const said = saidName(name);
      // Letters stand straight: along a curve there is no more room than along its chord.
      const chord = distance(run[0] ?? place.at, run.at(-1) ?? place.at);
      const room = Math.floor((mmOf(chord) * 0.92) / (letters * WIDE));
      const fits = said.length <= room;
      // The middle of the letters lies this far inside the line, whichever way they are turned.
      const away = letters * 0.85;
      const middle = at(place.at);
      const up = fits ? turn : 0;
      const [x, y] = [middle.x + place.inward.x * flip * away, middle.y + place.inward.y * away];
      // Letters stand on their base line, a third of their height below their middle.
      const down = letters * 0.34;
      return [
        {
          ref: spell({ piece: piece.id, edge: name, other }),
          number: i + 1,
          name,
          long,
          d: path(run.map(at)),
          label: {
            x: round(x - Math.sin((up * Math.PI) / 180) * down),
            y: round(y + Math.cos((up * Math.PI) / 180) * down),
            turn: round(up),
            words: fits ? said : String(i + 1),
            room,
          },
        },
      ];
    });
    return {
      other,
      d: `${path([...runs.values()].flat().map(at))}Z`,
      edges: edges.filter((edge) => !other || edge.name !== FOLD || !folded),
      middle: { x: round((at(level(left)).x + at(level(right)).x) / 2), y: round(bottom + letters * 1.2) },
    };
  };
  const level = (x: number): Point => ({ x: x * NM_PER_MM, y: 0 }) as Point;
  return {
    view: [from - rim, top - rim, to - from + rim * 2, bottom - top + rim * (mate ? 2.6 : 2)].map(
      round,
    ) as unknown as PieceLines['view'],
    letters: round(letters),
    stretched: sx > 1 || sy > 1,
    sides: mate ? [draw(false), draw(true)] : [draw(false)],
  };
}
