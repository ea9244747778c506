import { type Entries, type Fault, type Fields, readFields } from '../../fields/fields.ts';
import { type Length, nm, zero } from '../../length/length.ts';
import type { ReadingUnit } from '../../length/reading.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Outline, OutlineEdge, Point, Segment } from '../../shape/outline.ts';
import { FOLD } from '../chains.ts';
import { point, rectangle, straight } from '../units/rectangle.ts';
import { readCorners } from './own-corners.ts';

const length = (label: string, inch: string, mm: string, means?: string) =>
  ({ kind: 'length', label, start: { in: inch, mm }, ...(means === undefined ? {} : { means }) }) as const;

const CORNERS = {
  in: '0, 0 upper\n10, 0 right\n12, 16 lower\n-2, 16 left',
  mm: '0, 0 upper\n250, 0 right\n300, 400 lower\n-50, 400 left',
};

/** The plain shapes that a piece of the maker's own can begin as, and the figures that each is drawn from. */
export const OWN_SHAPES = {
  rectangle: {
    name: 'Rectangle',
    tells: 'A strip, a panel, a pocket.',
    fields: { wide: length('Width', '12', '300'), high: length('Height', '6', '150') },
  },
  half: {
    name: 'Half rectangle on the fold',
    tells: 'Half is drawn; the other half lies beyond the fold.',
    fields: {
      wide: length('Half width', '6', '150', 'From the fold to the side.'),
      high: length('Height', '6', '150'),
    },
  },
  'four-sided': {
    name: 'Four sides, two widths',
    tells: 'Wider at one end than at the other: a panel, a gore.',
    fields: {
      upper: length('Width above', '8', '200'),
      lower: length('Width below', '14', '360'),
      high: length('Height', '20', '500'),
    },
  },
  circle: {
    name: 'Part of a circle',
    tells: 'A skirt, a cape, a flounce: cut round a middle.',
    fields: {
      inner: length('Radius inside', '5', '120', 'From the middle to the inner seam line.'),
      deep: length('Depth', '16', '400', 'From the inner seam line to the outer edge.'),
      degrees: {
        kind: 'number',
        label: 'How much of a circle',
        means: '360 is a whole circle, slit once; 180 a half, 90 a quarter.',
        start: '90',
        unit: '°',
      },
    },
  },
  triangle: {
    name: 'Triangle',
    tells: 'A godet, a gusset.',
    fields: { wide: length('Width below', '8', '200'), high: length('Height', '12', '300') },
  },
  corners: {
    name: 'Corners you type',
    tells: 'Any shape with straight edges.',
    fields: {
      corners: {
        kind: 'lines',
        label: 'Corners',
        means:
          'One a line, in order round the piece: across, down, and the name of the edge that goes on from it.',
        start: CORNERS,
      },
    },
  },
} as const satisfies Readonly<
  Record<string, { readonly name: string; readonly tells: string; readonly fields: Fields }>
>;

/** Name of a plain shape. */
export type OwnShape = keyof typeof OWN_SHAPES;

/** Quarter turns are drawn by one curve each at most, which is true to a few hundredths of a millimetre in a metre. */
function arcTo(radius: number, from: number, to: number): readonly Segment[] {
  const parts = Math.max(1, Math.ceil(Math.abs(to - from) / 45));
  const step = ((to - from) / parts) * (Math.PI / 180);
  const handle = (4 / 3) * Math.tan(step / 4) * radius;
  return Array.from({ length: parts }, (_, i): Segment => {
    const [a, b] = [(from * Math.PI) / 180 + step * i, (from * Math.PI) / 180 + step * (i + 1)];
    const on = (angle: number, along: number): Point =>
      point(
        nm(Math.cos(angle) * radius - Math.sin(angle) * along),
        nm(Math.sin(angle) * radius + Math.cos(angle) * along),
      );
    return { kind: 'curve', first: on(a, handle), second: on(b, -handle), to: on(b, 0) };
  });
}

function circlePart(inner: Length, deep: Length, degrees: number): Outline {
  const [right, left] = [90 - degrees / 2, 90 + degrees / 2];
  const outer = inner + deep;
  const at = (radius: number, angle: number): Point =>
    arcTo(radius, angle, angle).at(-1)?.to ?? point(zero, zero);
  const start = at(inner, left);
  const around = (name: string, radius: number, from: number, to: number, end: Point): OutlineEdge => {
    const segments = arcTo(radius, from, to);
    return {
      name,
      segments: segments.map((one, i) => (i === segments.length - 1 ? { ...one, to: end } : one)),
    };
  };
  return {
    start,
    edges: [
      ...(inner > 0 ? [around('inner', inner, left, right, at(inner, right))] : []),
      straight('right-end', at(outer, right)),
      around('outer', outer, right, left, at(outer, left)),
      straight('left-end', start),
    ],
  };
}

const fault = (field: string, say: string): Result<never, readonly Fault[]> => bad([{ field, say }]);

/** Draws a plain shape; every fault stands at its field. */
export function ownOutline(
  shape: OwnShape,
  entries: Entries,
  unit: ReadingUnit,
): Result<Outline, readonly Fault[]> {
  const read = readFields<Fields>(OWN_SHAPES[shape].fields, entries, unit);
  if (!read.ok) return read;
  const faults: Fault[] = [];
  const value = (name: string): Length => {
    const found = read.value[name];
    return typeof found === 'number' ? nm(found) : zero;
  };
  for (const [name, field] of Object.entries<{ readonly kind: string }>(OWN_SHAPES[shape].fields)) {
    // Cut from the very middle a part of a circle has no inner edge.
    const least = name === 'inner' ? value(name) < 0 : value(name) <= 0;
    if (field.kind === 'length' && least)
      faults.push({ field: name, say: 'This must be more than nothing; write a length such as 4.' });
  }
  if (faults.length > 0) return bad(faults);
  switch (shape) {
    case 'rectangle':
      return good(rectangle(value('wide'), value('high'), ['upper', 'right', 'lower', 'left']));
    case 'half':
      return good(rectangle(value('wide'), value('high'), ['upper', 'side', 'lower', FOLD]));
    case 'four-sided': {
      const [upper, lower, high] = [value('upper'), value('lower'), value('high')];
      const half = (wide: Length, side: 1 | -1): Length => nm((wide / 2) * side);
      return good({
        start: point(half(upper, -1), zero),
        edges: [
          straight('upper', point(half(upper, 1), zero)),
          straight('right', point(half(lower, 1), high)),
          straight('lower', point(half(lower, -1), high)),
          straight('left', point(half(upper, -1), zero)),
        ],
      });
    }
    case 'triangle': {
      const half = nm(value('wide') / 2);
      return good({
        start: point(zero, zero),
        edges: [
          straight('right', point(half, value('high'))),
          straight('lower', point(nm(-half), value('high'))),
          straight('left', point(zero, zero)),
        ],
      });
    }
    case 'circle': {
      const degrees = Number(read.value.degrees);
      if (!(degrees >= 1 && degrees <= 360))
        return fault('degrees', 'Write a number from 1 to 360; 90 is a quarter of a circle.');
      return good(circlePart(value('inner'), value('deep'), degrees));
    }
    case 'corners': {
      const found = readCorners(String(read.value.corners), unit);
      return found.ok ? found : fault('corners', found.error);
    }
  }
}
