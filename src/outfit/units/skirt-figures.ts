import { geometry } from '../../cloth/source.ts';
import { add } from '../../length/length.ts';
import type { Garment, Wearer } from '../outfit.ts';
import { SKIRT_WAIST_EASE } from './body-figures.ts';
import { asked, usually } from './length-field.ts';
import { runOf } from './runs.ts';
import { sewnLength } from './sewn-length.ts';
import type { EdgesPlaced, PlaceAsked, Proposal } from './unit.ts';

/** What is asked of any skirt first. */
export const SKIRT = {
  waist: asked('Waist', '28 1/2', '725', 'Round the finished waist of the skirt.'),
  length: asked('Length', '28', '710', 'From the waist to the finished hem.'),
} as const;

/** What is asked of any skirt last. */
export const SKIRT_USUAL = {
  opens: {
    kind: 'choice',
    label: 'Opens',
    options: [
      { value: 'back', label: 'at the back, in a seam' },
      { value: 'front', label: 'all the way down the front' },
      { value: 'closed', label: 'nowhere' },
    ],
    start: 'back',
  },
  opening: usually('Length of the opening', '8', '200', 'Left open in the seam, below the waist.'),
  allowance: usually('Seam allowance', '1/2', '15'),
} as const;

/** A bodice that a skirt is sewn to. */
export const BODICE_PLACE = {
  to: {
    kind: 'edges',
    label: 'the edge it hangs from',
    means: 'The lower edge of a bodice, all round; left out, the skirt gets a band or a casing.',
    like: ['waist', 'hem'],
    optional: true,
    round: true,
  },
} as const satisfies Readonly<Record<string, PlaceAsked>>;

/** The waist of a skirt, from the edge it hangs from or from the wearer, and where it opens. */
export function skirtFigures(
  garment: Garment,
  measures: Wearer['measures'],
  to: EdgesPlaced | undefined,
): { readonly waist?: Proposal; readonly opens?: Proposal } {
  if (to) {
    const run = runOf(garment, to.chain);
    const behind = run.chain[0]?.piece.includes('back');
    return {
      waist: {
        value: sewnLength(garment, run.chain),
        because: 'As long as the edge it hangs from.',
        source: geometry,
      },
      opens: {
        value: run.ring ? 'closed' : behind ? 'back' : 'front',
        because: 'As what it hangs from.',
        source: geometry,
      },
    };
  }
  if (measures.waist === undefined) return {};
  return {
    waist: {
      value: add(measures.waist, SKIRT_WAIST_EASE.value),
      because: 'The waist, with 1/2 in (13 mm) of ease.',
      source: SKIRT_WAIST_EASE.source,
    },
  };
}
