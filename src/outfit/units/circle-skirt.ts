import { circleFrill } from '../../cloth/circles.ts';
import { add, type Length, zero } from '../../length/length.ts';
import { good } from '../../length/result.ts';
import { pointOf } from '../../shape/flatten.ts';
import type { Outline, Point, Segment } from '../../shape/outline.ts';
import { lower } from '../lower.ts';
import type { Work } from '../outfit.ts';
import { straight } from './rectangle.ts';
import { bend } from './sketch.ts';
import { skirtOf } from './skirt.ts';
import { BODICE_PLACE, SKIRT, SKIRT_USUAL, skirtFigures } from './skirt-figures.ts';
import { unit } from './unit.ts';

/** A place on a circle round the datum, so many radians round from straight down. */
const on = (radius: Length, angle: number): Point =>
  pointOf(radius * Math.sin(angle), radius * Math.cos(angle));

/** Part of a circle round the datum, in curves short enough to be true to a thread's breadth. */
function arc(radius: Length, from: number, to: number): readonly Segment[] {
  const parts = Math.max(1, Math.ceil(Math.abs(to - from) / (Math.PI / 8)));
  const step = (to - from) / parts;
  const handle = radius * (4 / 3) * Math.tan(step / 4);
  return Array.from({ length: parts }, (_, i): Segment => {
    const [a, b] = [from + i * step, from + (i + 1) * step];
    const [start, end] = [on(radius, a), on(radius, b)];
    return {
      kind: 'curve',
      first: pointOf(start.x + handle * Math.cos(a), start.y - handle * Math.sin(a)),
      second: pointOf(end.x - handle * Math.cos(b), end.y + handle * Math.sin(b)),
      to: end,
    };
  });
}

/** A quarter of a skirt cut from a ring: its centre straight down, its side so many radians round. */
const quarterOf = (inside: Length, outside: Length, angle: number, centre: string): Outline => ({
  start: pointOf(0, inside),
  edges: [
    { name: 'waist', segments: arc(inside, 0, angle) },
    straight('side', on(outside, angle)),
    { name: 'hem', segments: arc(outside, angle, 0) },
    straight(centre, pointOf(0, inside)),
  ],
});

/** A skirt cut from a circle or part of one. */
export const circleSkirt = unit({
  id: 'circle-skirt',
  name: 'Circle skirt',
  tells: 'Cut from a whole circle, a half or a quarter; smooth at the waist, full at the hem.',
  group: 'Skirts and waist',
  fields: {
    circles: {
      kind: 'choice',
      label: 'Cut from',
      options: [
        { value: '1', label: 'a whole circle' },
        { value: '0.5', label: 'half a circle' },
        { value: '0.25', label: 'a quarter of a circle' },
      ],
      start: '1',
    },
    ...SKIRT,
    ...SKIRT_USUAL,
  },
  places: BODICE_PLACE,
  sketch: [
    { pen: 'shape', points: bend([36, 14], [42, 18], [58, 18], [64, 14]) },
    { pen: 'shape', points: bend([36, 14], [34, 34], [16, 56], [4, 70]) },
    { pen: 'shape', points: bend([64, 14], [66, 34], [84, 56], [96, 70]) },
    {
      pen: 'shape',
      points: [
        ...bend([4, 70], [8, 84], [22, 86], [27, 76]),
        ...bend([27, 76], [32, 88], [44, 88], [50, 78]),
        ...bend([50, 78], [56, 88], [68, 88], [73, 76]),
        ...bend([73, 76], [78, 86], [92, 84], [96, 70]),
      ],
    },
    { pen: 'fold', points: bend([44, 18], [42, 40], [32, 58], [27, 76]) },
    { pen: 'fold', points: bend([50, 18], [50, 40], [50, 58], [50, 78]) },
    { pen: 'fold', points: bend([56, 18], [58, 40], [68, 58], [73, 76]) },
  ],
  blame: { seam: 'waist', depth: 'length' },
  propose: ({ measures, at, garment }) => skirtFigures(garment, measures, at.to),
  build: ({ values, at, cloth, garment, id, name, written }) => {
    const circles = Number(values.circles);
    const { waist, length, allowance } = values;
    const ring = circleFrill({ seam: waist, depth: length, circles, allowance, hem: zero });
    if (!ring.ok) return ring;
    const { radius } = ring.value;
    const made = skirtOf({
      ...values,
      id,
      name,
      garment,
      cloth: cloth.main,
      to: at.to,
      written,
      quarter: (centre) => quarterOf(radius, add(radius, length), (circles * Math.PI) / 2, centre),
    });
    if (!made.ok) return made;
    const works = made.value.pieces.map(
      (piece): Work => ({
        kind: 'stay-stitch',
        id: `${piece.id}-waist-stay`,
        name: `Waist stay of the ${lower(piece.name)}`,
        on: piece.id,
        edge: 'waist',
      }),
    );
    return good({ ...made.value, works: [...made.value.works, ...works] });
  },
});
