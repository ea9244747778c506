import { advise } from '../../cloth/advice.ts';
import { refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { bad, good } from '../../length/result.ts';
import { lower } from '../lower.ts';
import type { OwnStep } from '../outfit.ts';
import { asked, usually } from './length-field.ts';
import { ovalOutline } from './oval-outline.ts';
import { pieceOf, stepOf } from './parts.ts';
import { eachOf } from './runs.ts';
import { sizesFit } from './sizes-fit.ts';
import type { SketchLine } from './sketch.ts';
import { curve, line } from './sketch-lines.ts';
import { edgeOf } from './sleeve-made.ts';
import { unit } from './unit.ts';

/** How the backing goes when the stitching is done. */
const AWAY = {
  tear: [
    stepOf(
      'Tear the backing away from the wrong side, a little at a time, a thumb on the stitches so that they are not pulled',
      'hand',
      10,
    ),
  ],
  wash: [
    stepOf('Wash the backing out in water as its leaflet says, and lay the piece flat to dry', 'hand', 10, {
      wets: true,
      rest: 240,
    }),
  ],
  cut: [
    stepOf(
      'Trim the backing close to the stitching on the wrong side, the blades flat, the mesh held away from them',
      'cut',
      12,
      { final: true },
    ),
  ],
} as const satisfies Readonly<Record<string, readonly OwnStep[]>>;

/** Motifs of cloth stitched on a piece of mesh, over a backing that keeps the mesh from stretching meanwhile. */
export const appliqueOnMesh = unit({
  id: 'applique-on-mesh',
  name: 'Appliqué on mesh',
  tells: 'Cloth motifs stitched on a mesh piece, over a backing.',
  group: 'Decoration',
  places: {
    piece: {
      kind: 'piece',
      label: 'the mesh piece',
      like: ['sleeve', 'head', 'back', 'front'],
    },
  },
  cloths: { main: { label: 'Cloth of the motifs' } },
  fields: {
    motifs: { kind: 'number', label: 'Motifs', whole: true, start: '3', means: 'On each piece.' },
    wide: asked('Motif, width', '3', '75', 'The size of your drawing, finished.'),
    high: asked('Motif, height', '4', '100'),
    backing: {
      kind: 'choice',
      label: 'Backing',
      options: [
        { value: 'tear', label: 'torn away' },
        { value: 'wash', label: 'washed out' },
        { value: 'cut', label: 'organza, trimmed' },
      ],
      start: 'tear',
    },
    mesh: {
      kind: 'choice',
      label: 'Mesh behind the motifs',
      usual: true,
      options: [
        { value: 'kept', label: 'kept' },
        { value: 'cut', label: 'cut away' },
      ],
      start: 'kept',
    },
    spare: usually('Cloth round a motif', '3/8', '10', 'Trimmed away after the first stitching.'),
  },
  sketch: [
    ...[8, 20, 32, 44, 56, 68, 80, 92].flatMap((k): readonly SketchLine[] => [
      line('faint', k, 4, k, 96),
      line('faint', 4, k, 96, k),
    ]),
    curve('shape', 84, 12, 70, 6, 14, 24, 26, 76),
    curve('shape', 84, 12, 96, 34, 76, 88, 26, 76),
    curve('stitch', 78, 18, 66, 14, 22, 30, 32, 70),
    curve('stitch', 78, 18, 88, 36, 70, 80, 32, 70),
    curve('shape', 76, 22, 60, 40, 40, 58, 14, 90),
    curve('fullness', 62, 37, 62, 30, 58, 26, 54, 24),
    curve('fullness', 62, 37, 70, 38, 74, 42, 76, 46),
    curve('fullness', 46, 53, 44, 46, 40, 42, 36, 40),
    curve('fullness', 46, 53, 54, 54, 58, 58, 60, 62),
  ],
  build: ({ values, at, cloth, id, name }) => {
    const wrong = sizesFit(values, ['wide', 'high', 'spare']);
    if (wrong) return bad(wrong);
    const { motifs, wide, high, backing, mesh, spare } = values;
    const { piece } = at.piece;
    if (!(Number.isInteger(motifs) && motifs >= 1 && motifs <= 100))
      return bad(refusal('motifs', 'This is not a number of motifs.', 'Give a whole number from 1 to 100.'));
    const on = eachOf(piece.cut, piece.name);
    const many = motifs === 1 ? 'the motif' : `the ${motifs} motifs`;
    const sides = piece.cut === 'pair' ? 2 : 1;
    const all = motifs * sides;
    const more = all - sides;
    const steps: readonly OwnStep[] = [
      // The cutting card knows one of each side.
      ...(more > 0
        ? [
            stepOf(
              `Cut ${more} more of the motif${sides === 2 ? ', half of them turned over' : ''}: ${all} in all`,
              'cut',
              2 * more,
            ),
          ]
        : []),
      stepOf(`Mark on ${on} where ${many} will lie`, 'mark', 3 + 2 * motifs),
      stepOf(
        `Lay the backing under ${on}, larger than the motif by a hand all round, and baste it to the mesh, which must not be stretched`,
        'hand',
        4 + 4 * motifs,
      ),
      stepOf(
        `Lay ${many} on ${on} and baste each round, ${inBothRules(spare)} of cloth beyond its line`,
        'hand',
        5 * motifs,
      ),
      stepOf(`Stitch round ${many} on the line with a short straight stitch`, 'machine', 5 * motifs),
      stepOf(
        'Trim the cloth beyond the stitching close to it, the blades flat on the mesh and never under it',
        'cut',
        6 * motifs,
        { final: true },
      ),
      stepOf(
        `Stitch round ${many} again with a narrow, close zigzag that covers the cut edge`,
        'machine',
        8 * motifs,
      ),
      stepOf('Take the basting out', 'hand', 2 * motifs),
      ...AWAY[backing],
      ...(mesh === 'cut'
        ? [
            stepOf(
              'Turn it over, lift the mesh off the cloth behind each motif and cut it away inside the stitching with blunt-nosed scissors, feeling for the cloth below at every cut',
              'cut',
              6 * motifs,
              { final: true },
            ),
          ]
        : []),
    ];
    const outline = ovalOutline(wide, high);
    return good({
      pieces: [
        pieceOf({
          id: id(),
          name: `Motif of the ${lower(name)}`,
          cloth: cloth.main.id,
          cut: piece.cut === 'pair' ? 'pair' : 'one',
          allowance: spare,
          outline,
        }),
      ],
      works: [
        {
          kind: 'own',
          id: id('work'),
          name,
          on: piece.id,
          with: [id()],
          when: 'flat',
          finishes: outline.edges.map((edge) => edgeOf(id(), edge.name)),
          steps,
        },
      ],
      advice: [
        advise(
          `Cut ${all} motifs${sides === 2 ? `, ${motifs} of them turned over` : ''}, and try the ${lower(name)} on a scrap of the same mesh and backing first.`,
          practice,
        ),
      ],
      assumed: ['The pattern of the motif is an oval of your size: draw your own motif in it.'],
    });
  },
});
