import { frillCut } from '../../cloth/frill-cut.ts';
import { FULLNESS } from '../../cloth/gathers.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, shorter, subtract, zero } from '../../length/length.ts';
import { bad, good } from '../../length/result.ts';
import { atPlace, FINISH_FIELD, FRILL_FIELDS, frillParts, MARKS_FIELD, tooFull } from './frill.ts';
import { beyondReason } from './reason.ts';
import { isGathered, runOf } from './runs.ts';
import { wave } from './sketch.ts';
import { unit } from './unit.ts';

/** The basting of a frill stays this far inside the seam. */
const LESS_DEEP = inches(1, 8);

/** A gathered frill between the two sides of a seam. */
export const insetFrill = unit({
  id: 'inset-frill',
  name: 'Inset frill',
  tells: 'A gathered frill caught in a seam that is there already.',
  group: 'Frills',
  places: {
    seam: {
      kind: 'seam',
      label: 'the seam it is set into',
      means: 'It is basted to one side of the seam, and the seam is then sewn deeper.',
      like: ['panel', 'panel-seam', 'yoke', 'shoulder', 'side'],
    },
  },
  fields: {
    ...FRILL_FIELDS,
    finish: { ...FINISH_FIELD, start: 'bound' },
    baste: {
      kind: 'length',
      usual: true,
      label: 'Depth of the basting',
      means: 'From the cut edge; less deep than the seam.',
      start: { in: '3/8', mm: '10' },
    },
    marks: MARKS_FIELD,
  },
  propose: ({ at }) => {
    const deep = at.seam?.join.depth;
    const baste = deep === undefined ? zero : subtract(deep, LESS_DEEP);
    return {
      fullness: { value: FULLNESS.value, because: 'A usual frill', source: FULLNESS.source },
      ...(baste > 0
        ? {
            baste: {
              value: baste,
              because: `${inBothRules(LESS_DEEP)} less than the seam, so that it never shows`,
              source: practice,
            },
          }
        : {}),
    };
  },
  build: ({ values, at, cloth, garment, marker, id, name }) => {
    const { join } = at.seam;
    const { depth, fullness, finish, baste, marks } = values;
    const full = tooFull(fullness);
    if (full) return bad(full);
    const beyond = beyondReason({ depth });
    if (beyond) return bad(beyond);
    if (!shorter(baste, join.depth) || baste <= 0) {
      const wrong =
        baste <= 0
          ? 'The basting has no depth.'
          : `The seam is sewn ${inBothRules(join.depth)} deep, so this basting would show.`;
      return bad(refusal('baste', wrong, 'Baste less deep than the seam, or sew the seam deeper.'));
    }
    // The side that is not gathered itself is as long as the finished seam.
    const basteTo = isGathered(garment, join.this) ? 'to' : 'this';
    const run = runOf(garment, join[basteTo]);
    const made = frillCut({
      place: run.length,
      depth,
      kind: 'usual',
      fullness,
      grain: 'along',
      clothWidth: cloth.main.width,
      allowance: join.depth,
      hem: finish === 'bound' ? zero : join.depth,
      ring: join.ring,
      parts: marks === '4' ? 4 : 8,
    });
    if (!made.ok && made.error.field === 'allowance') {
      const wrong = `The seam is only ${inBothRules(join.depth)} deep, and two gathering rows find no room.`;
      return bad(refusal('at.seam', wrong, made.error.cure.replace('Give an allowance of', 'Sew the seam')));
    }
    const cutting = atPlace(made, 'seam');
    if (!cutting.ok) return cutting;
    const parts = frillParts({
      id,
      name,
      cloth: cloth.main.id,
      cut: run.cut,
      allowance: join.depth,
      depth,
      made: cutting.value,
      divide: marks === '4' ? 4 : 8,
      marker,
      finish,
      ends: join.ring ? 'ring' : 'hem',
      grain: 90,
    });
    if (!parts.ok) return parts;
    const trim = { piece: id(), edge: 'seam', other: false };
    return good({
      ...parts.value,
      catches: [{ join: join.id, caught: { trim, basteTo, depth: baste } }],
      advice: cutting.value.advice,
      assumed: [...cutting.value.assumed, 'The frill is cut along the grain, in one strip.'],
    });
  },
  sketch: [
    {
      pen: 'faint',
      points: [
        [8, 8],
        [8, 92],
        [92, 92],
        [92, 8],
        [8, 8],
      ],
    },
    {
      pen: 'shape',
      points: [
        [40, 8],
        [40, 92],
      ],
    },
    {
      pen: 'stitch',
      points: [
        [37, 8],
        [37, 92],
      ],
    },
    { pen: 'shape', points: wave([70, 8], [70, 92], 6, 5) },
    {
      pen: 'shape',
      points: [
        [40, 8],
        [70, 8],
      ],
    },
    {
      pen: 'shape',
      points: [
        [40, 92],
        [70, 92],
      ],
    },
    ...Array.from({ length: 9 }, (_, i) => ({
      pen: 'fullness' as const,
      points: [
        [40, 14 + i * 9],
        [i % 2 === 0 ? 58 : 50, 12 + i * 9.4],
      ] as const,
    })),
  ],
});
