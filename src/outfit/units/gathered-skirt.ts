import { refusal } from '../../cloth/refusal.ts';
import { times } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import type { Work } from '../outfit.ts';
import { rectangle } from './rectangle.ts';
import { bend, wave } from './sketch.ts';
import { skirtOf } from './skirt.ts';
import { BODICE_PLACE, SKIRT, SKIRT_USUAL, skirtFigures } from './skirt-figures.ts';
import { unit } from './unit.ts';

/** A skirt of straight cloth gathered to the waist. */
export const gatheredSkirt = unit({
  id: 'gathered-skirt',
  name: 'Gathered skirt',
  tells: 'Straight cloth gathered to a waist or a bodice.',
  group: 'Skirts and waist',
  fields: {
    ...SKIRT,
    fullness: {
      kind: 'number',
      label: 'Fullness',
      unit: 'times',
      start: '2.5',
      means: 'How many times as wide as the waist the cloth is.',
    },
    ...SKIRT_USUAL,
  },
  places: BODICE_PLACE,
  sketch: [
    {
      pen: 'shape',
      points: [
        [34, 12],
        [66, 12],
      ],
    },
    { pen: 'shape', points: bend([34, 12], [24, 30], [14, 60], [8, 86]) },
    { pen: 'shape', points: bend([66, 12], [76, 30], [86, 60], [92, 86]) },
    { pen: 'shape', points: wave([92, 87], [8, 87], 6, 3) },
    ...[38, 43, 48, 53, 58, 63].map((x) => ({
      pen: 'fullness' as const,
      points: bend([x, 13], [x, 24], [x + (x - 50) * 0.5, 34], [x + (x - 50) * 0.9, 46]),
    })),
  ],
  propose: ({ measures, at, garment }) => skirtFigures(garment, measures, at.to),
  build: ({ values, at, cloth, marker, garment, id, name, written }) => {
    const { waist, length, fullness } = values;
    if (waist <= 0) return bad(refusal('waist', 'The waist has no length.', 'Write a length above zero.'));
    if (length <= 0) return bad(refusal('length', 'The skirt has no length.', 'Write a length above zero.'));
    if (!(fullness >= 1 && fullness <= 10))
      return bad(refusal('fullness', 'This cannot be gathered so.', 'Write a number from 1 to 10.'));
    const quarter = times(waist, fullness / 4);
    const made = skirtOf({
      ...values,
      id,
      name,
      garment,
      cloth: cloth.main,
      to: at.to,
      written,
      quarter: (centre) => rectangle(quarter, length, ['waist', 'side', 'hem', centre]),
    });
    if (!made.ok) return made;
    const works =
      fullness === 1
        ? []
        : made.value.pieces.map(
            (piece): Work => ({
              kind: 'gather',
              id: `${piece.id}-gathers`,
              name: `Gathers of the ${lower(piece.name)}`,
              on: piece.id,
              edge: 'waist',
              fullness,
              divide: 4,
              marker,
            }),
          );
    return good({ ...made.value, works: [...made.value.works, ...works] });
  },
});
