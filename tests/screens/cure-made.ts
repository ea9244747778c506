import type { Cure, Cures } from '../../src/fitting/cure-types.ts';
import type { Entry } from '../../src/fitting/entry.ts';
import { inches, nm, zero } from '../../src/length/length.ts';
import type { Outfit } from '../../src/outfit/outfit.ts';
import type { Means } from '../../src/screens/try-on/cure-means.ts';
import type { Outline, Point } from '../../src/shape/outline.ts';

/** A cure for the demonstration shirt, made by hand: the page is tested on it, whatever the reckoning comes to. */

const by = inches(5, 8);

/** An outline moved out to the right from a third of the way on, as a front that is cut wider. */
const wider = (outline: Outline): Outline => {
  const far = (x: number): boolean => x > inches(4);
  const move = (p: Point): Point => (far(p.x) ? { x: nm(p.x + by), y: p.y } : p);
  return {
    start: move(outline.start),
    edges: outline.edges.map((edge) => ({
      ...edge,
      segments: edge.segments.map((one) =>
        one.kind === 'curve'
          ? { ...one, first: move(one.first), second: move(one.second), to: move(one.to) }
          : { ...one, to: move(one.to) },
      ),
    })),
  };
};

/** Something that can be seen, with one cause. */
export const surplus: Entry = {
  id: 'made-surplus',
  place: 'upper side',
  views: ['front'],
  seen: 'Surplus at the upper side',
  roles: ['centre-front'],
  asks: 'Pinch the surplus: how much?',
  causes: [
    {
      id: 'front-narrow',
      is: 'the centre fronts are too narrow',
      test: 'Unpin the front edge and let it stand open: the surplus goes.',
      change: 'Cut the centre fronts wider',
      measured: 'By the pinch',
      limits: 'More than 2 in asks for a new body.',
      wants: [],
      source: { kind: 'practice' },
    },
  ],
  often: 'often',
  source: { kind: 'practice' },
};

/** Widens a piece of the shirt. */
export function madeCure(outfit: Outfit, id: string, piece = 'centre-front', minutes = 200): Cure {
  const shirt = outfit.garments.find((one) => one.id === 'shirt')!;
  const before = shirt.pieces.find((one) => one.id === piece)!.outline;
  const after = wider(before);
  const alteration = {
    garment: 'shirt',
    piece,
    how: 'anew',
    edges: [],
    side: 'both',
    say: '5/8 in wider at the chest',
  } as const;
  return {
    changes: [
      {
        ...alteration,
        amounts: [
          { kind: 'width', level: 'chest', by },
          { kind: 'width', level: 'waist', by },
          { kind: 'width', level: 'hem', by: inches(1, 4) },
        ],
        before,
        after,
      },
    ],
    adds: [],
    taken: [],
    undoing: {
      alterations: [alteration],
      forced: [{ piece, because: 'its buttonholes are slit' }],
      opened: [
        {
          kind: 'join',
          id: 'panel',
          name: 'Panel seam',
          extent: { kind: 'along', edges: [{ piece, edge: 'panel', other: false }] },
          length: inches(17),
        },
        {
          kind: 'work',
          id: 'shirt-hem',
          name: 'Shirt hem',
          extent: { kind: 'crossing', joins: ['panel'] },
          length: inches(2),
        },
        { kind: 'join', id: 'neck', name: 'Neck seam', extent: { kind: 'whole' }, length: inches(8) },
      ],
      stays: [{ join: 'panel', trim: 'frill', on: ['side-front'] }],
      rework: {
        id,
        say: 'Centre front 5/8 in wider',
        undo: [
          {
            garment: 'shirt',
            of: { kind: 'join', id: 'panel' },
            action: 'open',
            say: 'Open the panel seam along the centre fronts',
            pieces: [piece],
            edges: [],
            times: 2,
            minutes: 30,
          },
          {
            garment: 'shirt',
            of: { kind: 'piece', id: piece },
            action: 'cut-anew',
            say: 'Cut the centre fronts again, 5/8 in wider at the chest',
            pieces: [piece],
            edges: [],
            times: 2,
            minutes: 20,
          },
        ],
        again: [{ step: 'shirt/panel/stitch', only: 'only along the centre front', minutes: minutes - 50 }],
      },
      minutes: { undo: 50, again: minutes - 50, total: minutes },
    },
    minutes,
    after: {
      ...outfit,
      garments: outfit.garments.map((garment) =>
        garment.id === 'shirt'
          ? {
              ...garment,
              pieces: garment.pieces.map((one) => (one.id === piece ? { ...one, outline: after } : one)),
            }
          : garment,
      ),
    },
  };
}

/** Means that find what they are told to. */
export const madeMeans = (find: (...given: Parameters<Means['cure']>) => Cures): Means => ({
  cure: find,
  supplies: () => ({
    cloth: [{ cloth: 'lawn', pieces: ['centre-front'], length: inches(30) }],
    thread: inches(36 * 12),
    beads: [{ name: 'bugle beads', count: 48 }],
  }),
  levels: (garment) =>
    new Map(
      garment.pieces.map(({ id }) => [
        id,
        new Map([
          ['chest', inches(8)],
          ['waist', inches(15)],
          ['hem', inches(19)],
        ]),
      ]),
    ),
  entry: (id) => (id === surplus.id ? surplus : undefined),
  own: () => new Map(),
});

/** No supplies at all. */
export const nothingToBuy = { cloth: [], thread: zero, beads: [] };
