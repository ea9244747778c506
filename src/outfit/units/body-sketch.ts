import { bend, type Sketch, type SketchLine, type SketchPen } from './sketch.ts';

type Spot = readonly [number, number];

/** A line and its mirror image, left and right of the middle of the sketch. */
export const both = (pen: SketchPen, points: readonly Spot[]): readonly SketchLine[] => [
  { pen, points },
  { pen, points: points.map(([x, y]) => [100 - x, y] as const) },
];

/** A body as it is worn, from the shoulders down to `foot`, its neck so deep, taken in at the waist by `waist`. */
export function torso(neck: number, foot: number, waist = 0): Sketch {
  const level = Math.min(foot, 66);
  const side: readonly Spot[] =
    waist === 0
      ? [
          [77, 42],
          [78, foot],
        ]
      : [
          ...bend([77, 42], [77, 50], [77 - waist, level - 8], [77 - waist, level]),
          ...bend([77 - waist, level], [77 - waist, level + 6], [78, foot - 4], [78, foot]).slice(
            foot > level ? 0 : 12,
          ),
        ];
  return [
    ...both('shape', [...bend([50, neck], [56, neck], [61, (neck + 12) / 2], [61, 10])]),
    ...both('shape', [
      [61, 10],
      [77, 17],
    ]),
    ...both('shape', bend([77, 17], [71, 28], [70, 40], [77, 42])),
    ...both('shape', waist > 0 && foot <= level ? side.slice(0, 13) : side),
    {
      pen: 'shape',
      points:
        waist > 0 && foot <= level
          ? [
              [23 + waist, foot],
              [77 - waist, foot],
            ]
          : [
              [22, foot],
              [78, foot],
            ],
    },
  ];
}
