import type { MeasureId } from '../../outfit/measures.ts';

/*
 * A plain figure of our own, 200 high and upright, and where the tape lies on it for each measure. Nothing is taken from a
 * table of proportions: it only has to show which place is meant.
 */

type Spot = readonly [x: number, y: number];
/** How the body is seen; `arm` is from the side with the elbow bent. */
export type View = 'front' | 'back' | 'side' | 'arm' | 'hand' | 'foot';

/** A line of the figure: through all these spots, smoothly, and back to the first where it is closed. */
export interface FigureLine {
  readonly spots: readonly Spot[];
  readonly closed?: true;
  readonly faint?: true;
}

/** Where the tape lies. */
export interface Tape {
  readonly view: View;
  /** The part of the figure that is shown: left, top and width; a quarter higher than wide. */
  readonly box: readonly [left: number, top: number, width: number];
  /** Round the body: the middle of the loop, half its width and height, and how far it is turned, in degrees. */
  readonly round?: readonly [x: number, y: number, wide: number, high: number, turn?: number];
  /** Along these spots. */
  readonly along?: readonly Spot[];
  /** Heights that the tape reaches to, drawn across from one x to the other. */
  readonly levels?: readonly (readonly [y: number, from: number, to: number])[];
  /** The place in a few words. */
  readonly at: string;
}

const HALF: readonly Spot[] = [
  ...([
    [4.5, 25],
    [5, 31],
    [10, 33.8],
    [19, 37],
    [22.5, 42],
    [24, 54],
    [25.5, 68],
    [28, 82],
    [30, 95],
  ] as const),
  ...([
    [31.8, 102],
    [30.5, 111],
    [28, 113],
    [26.4, 104],
    [26, 95],
    [22.3, 82],
    [20.5, 68],
    [18.6, 57],
    [17, 48],
  ] as const),
  ...([
    [15.8, 57],
    [13, 72],
    [14.6, 83],
    [17, 95],
    [17, 107],
    [14.8, 125],
    [12.4, 141],
    [13, 152],
  ] as const),
  ...([
    [10.4, 172],
    [8.6, 187],
    [9, 192],
    [12, 197],
    [5, 198],
    [3.6, 192],
    [4.2, 187],
    [3.4, 170],
  ] as const),
  ...([
    [2.6, 152],
    [3.8, 141],
    [1.6, 122],
    [0.4, 106],
  ] as const),
];
const mirrored = (spots: readonly Spot[]): Spot[] => spots.map(([x, y]) => [50 - x, y]);
const round = (x: number, y: number, wide: number, high: number): FigureLine => ({
  closed: true,
  spots: [0, 1, 2, 3, 4, 5, 6, 7].map((k) => {
    const turn = (k * Math.PI) / 4;
    return [x + wide * Math.cos(turn), y + high * Math.sin(turn)];
  }),
});
const upright: FigureLine = {
  spots: [...HALF.map(([x, y]): Spot => [50 + x, y]), ...mirrored(HALF.toReversed())],
};
const head = round(50, 14.5, 8.6, 11.5);
const profile: FigureLine = {
  closed: true,
  spots: [
    ...([
      [52.5, 26],
      [53, 31],
      [57.5, 40],
      [61, 51],
      [58.8, 62],
      [56.6, 73],
      [58.6, 84],
      [58.4, 96],
      [57, 110],
    ] as const),
    ...([
      [55.6, 126],
      [55, 139],
      [53.4, 146],
      [52.4, 160],
      [51, 186],
      [54, 191],
      [61, 194.5],
      [63, 197.5],
    ] as const),
    ...([
      [54, 198],
      [45, 198],
      [44, 193],
      [45.6, 186],
      [44.2, 172],
      [41.6, 155],
      [44.6, 142],
      [43.6, 128],
    ] as const),
    ...([
      [40.6, 110],
      [37, 96],
      [39.4, 84],
      [43.2, 72],
      [40.2, 60],
      [38.4, 46],
      [41.5, 35],
      [44.6, 29],
      [45, 25],
    ] as const),
  ],
};
const faceOn: FigureLine = { ...round(51, 14.5, 9.2, 11.5) };
const nose: FigureLine = {
  spots: [
    [59.6, 12],
    [62.4, 17.4],
    [59.6, 18.4],
  ],
};
const spine: FigureLine = {
  faint: true,
  spots: [
    [50, 30],
    [50, 92],
  ],
};
const blades: readonly FigureLine[] = [
  {
    faint: true,
    spots: [
      [41, 42],
      [44.5, 50],
      [42, 57],
    ],
  },
  {
    faint: true,
    spots: [
      [59, 42],
      [55.5, 50],
      [58, 57],
    ],
  },
];
const bentArm: FigureLine = {
  closed: true,
  spots: [
    ...([
      [49, 36],
      [45, 41],
      [43.6, 53],
      [43.4, 66],
      [46, 73.5],
      [53, 80],
      [61, 87],
      [66, 92],
      [70, 92.5],
    ] as const),
    ...([
      [69, 88],
      [64.4, 82.6],
      [57, 75],
      [51.4, 67],
      [52, 54],
      [53, 42],
    ] as const),
  ],
};

/** The figure as it is seen from each side. */
export const FIGURE: Readonly<Record<View, readonly FigureLine[]>> = {
  front: [
    upright,
    head,
    {
      faint: true,
      spots: [
        [46.6, 13],
        [47.4, 13],
      ],
    },
    {
      faint: true,
      spots: [
        [52.6, 13],
        [53.4, 13],
      ],
    },
    {
      faint: true,
      spots: [
        [48, 20],
        [50, 20.8],
        [52, 20],
      ],
    },
  ],
  back: [upright, head, spine, ...blades],
  side: [profile, faceOn, nose],
  arm: [profile, faceOn, nose, bentArm],
  hand: [
    {
      spots: [
        ...([
          [37, 125],
          [38, 92],
          [33, 78],
          [30, 62],
          [31, 40],
          [33, 22],
          [37, 16],
          [40, 22],
          [40.5, 40],
        ] as const),
        ...([
          [41, 20],
          [44.5, 12],
          [48.5, 19],
          [49, 39],
          [50, 18],
          [53.5, 11],
          [57, 19],
          [57.6, 40],
        ] as const),
        ...([
          [59.5, 24],
          [63, 19],
          [66, 26],
          [67.5, 46],
          [68.5, 62],
          [66, 78],
          [62, 92],
          [63, 125],
        ] as const),
      ],
    },
    {
      spots: [
        [34, 76],
        [43, 68],
        [50, 58],
        [55.5, 53],
        [57.5, 56.5],
        [53, 64],
        [46, 76],
      ],
    },
  ],
  foot: [
    {
      spots: [
        ...([
          [42, -5],
          [43, 30],
          [45, 48],
          [56, 60],
          [74, 69],
          [90, 77],
          [94, 84],
          [90, 90],
          [70, 91],
        ] as const),
        ...([
          [46, 88.5],
          [24, 91],
          [14, 86],
          [13, 76],
          [19, 58],
          [21.5, 34],
          [18, -5],
        ] as const),
      ],
    },
    { ...round(32, 52, 3.4, 3.4), faint: true },
  ],
};

const UPPER = [14, 18, 72] as const;
const NECK = [26, 6, 48] as const;
const SEAT = [8, 60, 84] as const;
const LEGS = [8, 98, 84] as const;
const ALL = [-32, -3, 164] as const;
const FOOT = [2, -8, 98] as const;
const HAND = [8, 6, 84] as const;

/** Where the tape lies for each measure. */
export const TAPES: Readonly<Record<MeasureId, Tape>> = {
  height: {
    view: 'front',
    box: ALL,
    along: [
      [4, 3],
      [4, 198],
    ],
    levels: [
      [3, 4, 50],
      [198, 4, 62],
    ],
    at: 'floor to top of the head',
  },
  neck: { view: 'front', box: NECK, round: [50, 32, 7.4, 2.6], at: 'base of the neck' },
  shoulder: {
    view: 'front',
    box: NECK,
    along: [
      [55.4, 31.6],
      [60, 33.6],
      [69, 36.8],
    ],
    at: 'neck to shoulder bone',
  },
  'across-back': {
    view: 'back',
    box: UPPER,
    along: [
      [33.2, 45],
      [50, 46.5],
      [66.8, 45],
    ],
    at: 'middle of the armholes',
  },
  chest: { view: 'front', box: UPPER, round: [50, 51.5, 17, 3.4], at: 'fullest part of the chest' },
  waist: { view: 'front', box: UPPER, round: [50, 72, 13.4, 2.9], at: 'the garment’s waist' },
  'back-waist': {
    view: 'back',
    box: UPPER,
    along: [
      [50, 31],
      [50, 72],
    ],
    levels: [[72, 37, 63]],
    at: 'neck bone to waist',
  },
  armhole: {
    view: 'front',
    box: [42, 14, 48],
    round: [68.2, 43, 3.4, 8, 14],
    at: 'where an armhole seam lies',
  },
  'upper-arm': {
    view: 'arm',
    box: [20, 18, 64],
    round: [47.8, 54, 4.7, 1.7],
    at: 'fullest part of the upper arm',
  },
  'arm-length': {
    view: 'arm',
    box: [20, 18, 64],
    along: [
      [49.5, 36.5],
      [45.4, 46],
      [44.8, 66],
      [48, 73.4],
      [62.6, 85],
    ],
    at: 'shoulder bone to wrist bone',
  },
  wrist: { view: 'hand', box: HAND, round: [50, 92, 12.4, 3.6], at: 'wrist bone' },
  hand: { view: 'hand', box: HAND, round: [49.2, 62, 20, 5.4, -6], at: 'widest part of the hand' },
  hip: { view: 'front', box: SEAT, round: [50, 96, 17.4, 3.4], at: 'fullest part of the seat' },
  'waist-to-crotch': {
    view: 'side',
    box: SEAT,
    along: [
      [74, 72.5],
      [74, 105],
    ],
    levels: [
      [72.5, 43, 74],
      [105, 39.6, 74],
    ],
    at: 'waist to crotch, upright',
  },
  rise: {
    view: 'side',
    box: SEAT,
    along: [
      [56.8, 73],
      [59.4, 86],
      [57, 99],
      [49, 105.4],
      [40.6, 103],
      [36.4, 95],
      [38.6, 85],
      [42.6, 73],
    ],
    at: 'waist to waist, between the legs',
  },
  'waist-to-floor': {
    view: 'side',
    box: ALL,
    along: [
      [50, 73],
      [48.4, 95],
      [49, 198],
    ],
    levels: [
      [73, 43, 57],
      [198, 30, 70],
    ],
    at: 'waist to floor, at the side',
  },
  thigh: { view: 'front', box: LEGS, round: [58.8, 112, 8.2, 2], at: 'just below the crotch' },
  knee: { view: 'front', box: LEGS, round: [58.1, 141, 4.6, 1.5], at: 'middle of the kneecap' },
  calf: { view: 'front', box: LEGS, round: [57.8, 152.5, 5.4, 1.7], at: 'fullest part of the calf' },
  ankle: { view: 'foot', box: FOOT, round: [32.2, 34, 11.4, 3.2], at: 'just above the bones' },
  'crotch-to-knee': {
    view: 'front',
    box: LEGS,
    along: [
      [50.6, 105],
      [52.2, 122],
      [54.2, 141],
    ],
    levels: [[141, 53, 64]],
    at: 'crotch to kneecap, inside the leg',
  },
  'knee-to-floor': {
    view: 'front',
    box: LEGS,
    along: [
      [72, 141],
      [72, 198],
    ],
    levels: [
      [141, 58, 72],
      [198, 52, 72],
    ],
    at: 'middle of the kneecap to the floor',
  },
  heel: { view: 'foot', box: FOOT, round: [30, 67, 25, 6, -53], at: 'heel and front crease' },
  'foot-length': {
    view: 'foot',
    box: FOOT,
    along: [
      [13, 99],
      [94, 99],
    ],
    at: 'heel to longest toe',
  },
  ball: { view: 'foot', box: FOOT, round: [71, 79.5, 4.6, 12.6, -6], at: 'widest part of the foot' },
};
