import { FUSING_DEGREES, FUSING_SECONDS } from '../../cloth/interfacing.ts';
import { lower } from '../lower.ts';
import type { Work } from '../outfit.ts';

/** How a layer is stiffened. */
export const STIFFENING = {
  stiffening: {
    kind: 'choice',
    label: 'Stiffening',
    options: [
      { value: 'sewn', label: 'sewn in, such as organza' },
      { value: 'fused', label: 'fused with the iron' },
      { value: 'none', label: 'none' },
    ],
    start: 'sewn',
    usual: true,
  },
} as const;

/** Minutes that a fused piece cools flat. */
const COOLS = 15;

/** The work that stiffens a piece, if any. */
export const stiffeningOf = (
  how: 'sewn' | 'fused' | 'none',
  piece: { readonly id: string; readonly name: string },
): readonly Work[] =>
  how === 'none'
    ? []
    : [
        {
          kind: 'interfacing',
          id: `${piece.id}-stiffening`,
          name: `Stiffening of the ${lower(piece.name)}`,
          on: piece.id,
          material: how === 'sewn' ? 'Sew-in interfacing' : 'Light woven fusible',
          ...(how === 'sewn'
            ? {}
            : {
                fuse: {
                  degrees: FUSING_DEGREES.value,
                  seconds: FUSING_SECONDS.value,
                  coolMinutes: COOLS,
                },
              }),
        },
      ];
