import type { Place, View } from '../../fitting/entry.ts';

/** Where a place is touched on the figure of src/screens/describe/body-lines.ts, and on which side its name stands. */
export interface PlaceSpot {
  readonly place: Place;
  readonly x: number;
  readonly y: number;
  readonly side: 'left' | 'right';
}

/** A spot with the height at which its name stands. */
export interface NamedSpot extends PlaceSpot {
  readonly row: number;
}

const spots = (
  side: PlaceSpot['side'],
  all: readonly (readonly [place: Place, x: number, y: number])[],
): PlaceSpot[] => all.map(([place, x, y]) => ({ place, x, y, side }));

/** The places of each view, each side from the top down. */
export const SPOTS: Readonly<Record<View, readonly PlaceSpot[]>> = {
  front: [
    ...spots('left', [
      ['neck', 46.5, 32],
      ['chest', 42, 50],
      ['front opening', 50, 61],
      ['hips', 35.5, 92],
      ['hem', 38, 113],
      ['crotch', 50, 106],
      ['thigh', 40.5, 120],
      ['calf', 42, 155],
    ]),
    ...spots('right', [
      ['shoulder', 64, 36.5],
      ['upper arm', 71, 52],
      ['upper side', 65, 58],
      ['elbow', 73.4, 70],
      ['waist', 60.5, 72],
      ['wrist', 78, 95],
      ['knee', 58, 141],
      ['ankle', 56.6, 187],
    ]),
  ],
  back: [
    ...spots('left', [
      ['neck', 46.5, 31],
      ['upper back', 42, 48],
      ['waist', 40, 72],
      ['hips', 35, 88],
      ['seat', 43, 98],
      ['hem', 38, 113],
      ['crotch', 50, 107],
      ['calf', 42, 155],
    ]),
    ...spots('right', [
      ['shoulder', 64, 36.5],
      ['upper arm', 71, 52],
      ['upper side', 65, 58],
      ['elbow', 73.4, 70],
      ['wrist', 78, 96],
      ['thigh', 59.5, 120],
      ['knee', 58, 141],
      ['ankle', 56.6, 187],
    ]),
  ],
  side: [
    ...spots('left', [
      ['upper back', 39.4, 46],
      ['shoulder', 47.5, 38],
      ['upper side', 41.4, 58],
      ['elbow', 46.4, 72],
      ['waist', 42.6, 77],
      ['seat', 38, 97],
      ['hem', 43, 114],
      ['calf', 42.6, 155],
    ]),
    ...spots('right', [
      ['neck', 52.4, 30],
      ['chest', 60, 50],
      ['upper arm', 50, 54],
      ['wrist', 66, 88.5],
      ['hips', 52, 97],
      ['crotch', 52, 108],
      ['thigh', 52, 123],
      ['knee', 51, 141],
      ['ankle', 48, 187],
    ]),
  ],
};

/** The part of the figure's plane that is shown: left, top, width and height. */
export const BOX = [-27.5, -4, 155, 208] as const;

/** How far apart two names stand at least, so that a finger finds each of them. */
const PITCH = 25.2;
const ROOM = 11.2;

/** Heights for names that would stand at these, in order: kept apart, within the drawing, and else as near as can be. */
export function spread(wanted: readonly number[]): readonly number[] {
  const [, top, , height] = BOX;
  const [first, last] = [top + ROOM, top + height - ROOM];
  const pitch = Math.min(PITCH, (last - first) / Math.max(1, wanted.length - 1));
  /** Names that stand close to each other, as one: how many, and the height at which the first would stand. */
  const groups: { count: number; at: number }[] = [];
  for (const y of wanted) {
    let group = { count: 1, at: y };
    for (
      let above = groups.at(-1);
      above && group.at < above.at + above.count * pitch;
      above = groups.at(-1)
    ) {
      groups.pop();
      const count = above.count + group.count;
      const at = (above.at * above.count + (group.at - above.count * pitch) * group.count) / count;
      group = { count, at };
    }
    group.at = Math.min(Math.max(group.at, first), last - (group.count - 1) * pitch);
    groups.push(group);
  }
  // What was held back at the foot may reach into what stands above it.
  const rows = groups.flatMap(({ count, at }) => Array.from({ length: count }, (_, i) => at + i * pitch));
  let foot = last;
  for (let i = rows.length - 1; i >= 0; i -= 1) {
    rows[i] = Math.min(rows[i] ?? foot, foot);
    foot = (rows[i] ?? foot) - pitch;
  }
  return rows;
}

/** The places of a view of which there is something to see, each with the row of its name. */
export function namedSpots(view: View, here: ReadonlySet<Place>): readonly NamedSpot[] {
  const shown = SPOTS[view].filter(({ place }) => here.has(place));
  return (['left', 'right'] as const).flatMap((side) => {
    const own = shown.filter((spot) => spot.side === side).toSorted((a, b) => a.y - b.y);
    const rows = spread(own.map(({ y }) => y));
    return own.map((spot, i) => ({ ...spot, row: rows[i] ?? spot.y }));
  });
}

/** How far from a spot a finger may be and still mean it. */
const REACH = 30;

/** The place nearest to where the figure was touched; none where that is off the body. */
export function nearestPlace(
  shown: readonly PlaceSpot[],
  at: { readonly x: number; readonly y: number },
): Place | undefined {
  let best: PlaceSpot | undefined;
  let least = REACH;
  for (const spot of shown) {
    const far = Math.hypot(spot.x - at.x, spot.y - at.y);
    if (far < least) [best, least] = [spot, far];
  }
  return best?.place;
}
