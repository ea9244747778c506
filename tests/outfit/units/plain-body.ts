import type { Chain, Garment, Outfit } from '../../../src/outfit/outfit.ts';
import { demo } from '../demo-files.ts';

const one = (piece: string, edge: string): Chain => [{ piece, edge, other: false }];

/** The invented shirt as two fronts and a back, sewn at shoulder and side, with nothing done to its edges yet. */
export function plainBody(
  units: 'in' | 'mm' = 'mm',
  measures: Outfit['wearers'][number]['measures'] = {},
): Outfit {
  const shirt = demo('plain-shirt');
  const [garment] = shirt.garments;
  const { stopsAt: _, ...side } = garment!.joins.find(({ id }) => id === 'underarm')!;
  return {
    ...shirt,
    units,
    wearers: [{ id: 'somebody', name: 'Somebody', measures }],
    garments: [
      {
        ...garment!,
        id: 'garment',
        wearer: 'somebody',
        pieces: garment!.pieces.filter(({ id }) => id === 'front' || id === 'back'),
        works: [],
        joins: [
          ...garment!.joins.filter(({ id }) => id === 'shoulder'),
          { ...side, id: 'side', name: 'Side seam', this: one('front', 'side'), to: one('back', 'side') },
        ],
        gates: [],
      },
    ],
  };
}

/** The same with something of its garment changed. */
export function changed(outfit: Outfit, change: (garment: Garment) => Partial<Garment>): Outfit {
  const [garment] = outfit.garments;
  return { ...outfit, garments: [{ ...garment!, ...change(garment!) }] };
}

/** The neck edge, from one front round the back to the other. */
export const NECK = ['front.neck', 'back.neck', 'other:back.neck', 'other:front.neck'];
/** The lower edge, all of it. */
export const HEM = ['front.hem', 'back.hem', 'other:back.hem', 'other:front.hem'];
/** Both units of length, for tests that hold in each. */
export const RULES = ['in', 'mm'] as const;
