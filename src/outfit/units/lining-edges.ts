import type { Sourced } from '../../cloth/advice.ts';
import { practice } from '../../cloth/source.ts';
import { inches, type Length } from '../../length/length.ts';
import { edgeWords, listWords } from '../edge-words.ts';
import { lower } from '../lower.ts';
import type { EdgeRef, Work } from '../outfit.ts';
import { stepOf } from './parts.ts';

/** The lower edge of a lining hangs this much above that of what it lines. */
export const LINING_ABOVE_HEM: Sourced<Length> = { value: inches(3, 4), source: practice };

/** What hangs free below: a hem, the lower edge of a sleeve, an ankle. */
const HANGS = /(^|-)(hem|lower|ankle|outer)$/;

const inWords = (edges: readonly EdgeRef[]): string =>
  listWords([...new Set(edges.map(({ edge }) => `the ${edgeWords(edge)}`))]);

/** What finishes the edges that no seam of the lining takes: hemmed where they hang, else sewn down inside. */
export function liningEdges(told: {
  readonly id: (part: string) => string;
  readonly name: string;
  readonly loose: readonly EdgeRef[];
  /** What is lined; it is whole when the lining is sewn down in it. */
  readonly outside: readonly string[];
  readonly written: (length: Length) => string;
}): readonly Work[] {
  const { id, name, loose, outside, written } = told;
  const called = lower(name);
  const of = (
    part: string,
    edges: readonly EdgeRef[],
    more: Pick<Extract<Work, { kind: 'own' }>, 'steps' | 'name'>,
    also: readonly string[],
  ): readonly Work[] => {
    const [on, ...rest] = new Set(edges.map(({ piece }) => piece));
    return on === undefined
      ? []
      : [{ kind: 'own', id: id(part), on, with: [...rest, ...also], when: 'late', finishes: edges, ...more }];
  };
  const hanging = loose.filter(({ edge }) => HANGS.test(edge));
  const inside = loose.filter((ref) => !hanging.includes(ref));
  return [
    ...of(
      'lower-edge',
      hanging,
      {
        name: `Hem of the ${called}`,
        steps: [
          stepOf(
            `Turn ${inWords(hanging)} of the ${called} up twice, so that it ends ${written(LINING_ABOVE_HEM.value)} above the finished edge outside, and press`,
            'iron',
            8,
          ),
          stepOf(`Stitch the turned edge of the ${called}`, 'machine', 8),
        ],
      },
      [],
    ),
    ...of(
      'inside-edges',
      inside,
      {
        name: `Inside edges of the ${called}`,
        steps: [
          stepOf(
            `Turn ${inWords(inside)} of the ${called} in along the seam line, and pin it inside the garment`,
            'pin',
            8,
          ),
          stepOf(`Sew ${inWords(inside)} of the ${called} down inside by hand`, 'hand', 25),
        ],
      },
      outside,
    ),
  ];
}
