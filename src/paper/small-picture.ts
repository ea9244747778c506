import { type Length, mm, nm } from '../length/length.ts';
import { type Box, boundingBox } from '../shape/measure.ts';
import type { Point } from '../shape/outline.ts';
import { type Ink, inkLine, inkWords, type Page, reachOf } from './ink.ts';
import type { Stroke } from './pattern-sheet.ts';
import type { Grid } from './tiles.ts';

const at = (x: number, y: number): Point => ({ x: nm(x), y: nm(y) });
const NUMBER: Length = mm(3);

/** Points of a line as far as a small drawing can show them. */
function coarser(points: readonly Point[], apart: number): readonly Point[] {
  const kept: Point[] = [];
  for (const [i, p] of points.entries()) {
    const last = kept.at(-1);
    if (!last || i === points.length - 1 || Math.hypot(p.x - last.x, p.y - last.y) >= apart) kept.push(p);
  }
  return kept;
}

const SHOWN: ReadonlySet<string> = new Set<Stroke>(['cut', 'seam', 'body', 'fold', 'grain']);

/** Corners of a box, clockwise from the left upper one. */
export const cornersOf = ({ left, top, right, bottom }: Box): readonly Point[] => [
  { x: left, y: top },
  { x: right, y: top },
  { x: right, y: bottom },
  { x: left, y: bottom },
];

/** A small drawing of a whole sheet with its tiles, each with the number of its page; and how high it is. */
export function mapInk(
  ink: readonly Ink[],
  grid: Grid,
  pages: readonly number[],
  left: number,
  top: number,
  room: { readonly wide: number; readonly high: number },
): { readonly ink: readonly Ink[]; readonly high: number } {
  const all = boundingBox([...ink.flatMap(reachOf), ...grid.tiles.flatMap(({ area }) => cornersOf(area))]);
  const scale = Math.min(room.wide / (all.right - all.left), room.high / (all.bottom - all.top));
  const put = (p: Point): Point => at(left + (p.x - all.left) * scale, top + (p.y - all.top) * scale);
  const made: Ink[] = [];
  for (const one of ink) {
    if (one.kind !== 'line' || !SHOWN.has(one.pen)) continue;
    made.push(inkLine('sign', coarser(one.points, mm(0.4) / scale).map(put), one.closed));
  }
  for (const [i, { area }] of grid.tiles.entries()) {
    made.push(inkLine('frame', cornersOf(area).map(put), true));
    const middle = put(at((area.left + area.right) / 2, (area.top + area.bottom) / 2));
    made.push(
      inkWords(String(pages[i] ?? ''), at(middle.x, middle.y + mm(1.2)), NUMBER, {
        from: 'middle',
        bold: true,
      }),
    );
  }
  return { ink: made, high: (all.bottom - all.top) * scale };
}

/** A laid page, small: what stands in its windows, without words; and how high it is. */
export function pageInk(page: Page, wide: Length): { readonly ink: readonly Ink[]; readonly high: Length } {
  const scale = wide / page.wide;
  const put = (p: Point): Point => at(p.x * scale, p.y * scale);
  const ink: Ink[] = [];
  for (const one of page.windows.flatMap((window) => window.ink)) {
    if (one.kind === 'line')
      ink.push(inkLine('sign', coarser(one.points, mm(0.4) / scale).map(put), one.closed));
  }
  return { ink, high: nm(page.high * scale) };
}
