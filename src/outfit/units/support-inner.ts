import type { Refusal } from '../../cloth/refusal.ts';
import { HORSEHAIR_LAP, sleeveSupport as supportInside } from '../../cloth/support.ts';
import { inBothRules } from '../../length/both-rules.ts';
import type { Length } from '../../length/length.ts';
import { good, type Result } from '../../length/result.ts';
import { lower } from '../lower.ts';
import { joinOf, pieceOf, stepOf } from './parts.ts';
import { eachOf } from './runs.ts';
import { edgeOf } from './sleeve-made.ts';
import { sleeveOutline } from './sleeve-shape.ts';
import { type SupportTold, supportCommon } from './support-strip.ts';
import type { Built } from './unit.ts';

/** An inner sleeve of net with rings of horsehair that hold the sleeve out and carry what it is laden with. */
export function supportInner(
  told: SupportTold & {
    readonly top: Length;
    readonly bottom: Length;
    readonly long: Length;
    readonly rings: number;
  },
): Result<Pick<Built, 'pieces' | 'works' | 'joins' | 'advice' | 'assumed'>, Refusal> {
  const { id, name, garment, sleeve, top, bottom, long, rings, allowance } = told;
  const common = supportCommon(told);
  const each = eachOf(sleeve.cut, sleeve.name);
  const called = lower(name);
  const beaded = garment.works.some((work) => work.kind === 'lattice-beads' && work.on === sleeve.id);
  const detached = !sleeve.outline.edges.some((edge) => edge.name === 'cap');
  const made = supportInside({ detached, beaded, top, bottom, length: long, allowance, rings });
  if (!made.ok) return made;
  return good({
    pieces: [pieceOf({ ...common.cut, name, outline: sleeveOutline(top, bottom, long, undefined) })],
    works: [
      {
        kind: 'own',
        id: id('rings'),
        name: `Rings of the ${called}`,
        on: id(),
        with: [],
        when: 'flat',
        finishes: [edgeOf(id(), 'lower')],
        steps: [
          stepOf(
            `Mark ${rings} lines across each ${called}, below the top at: ${made.value.rings.map((ring) => inBothRules(ring.at)).join(', ')}`,
            'mark',
            6,
          ),
          stepOf(
            `Stitch horsehair band along the lines, of these lengths: ${made.value.rings.map((ring) => inBothRules(ring.horsehair)).join(', ')}; leave its ends loose`,
            'machine',
            5 * rings,
          ),
          stepOf(
            `Bind the lower edge of each ${called} with soft tape, so that it does not scratch`,
            'machine',
            8,
          ),
        ],
      },
      {
        ...common.late,
        name: `Putting in the ${called}`,
        finishes: [edgeOf(id(), 'upper')],
        steps: [
          stepOf(
            `Lap the ends of each ring ${inBothRules(HORSEHAIR_LAP.value)} and sew them flat`,
            'hand',
            4 * rings,
          ),
          stepOf(
            `Slip the ${called} into ${each}, seam to seam, and sew its top to the allowance by hand`,
            'hand',
            20,
          ),
        ],
      },
    ],
    joins: [
      joinOf({
        id: id('seam'),
        name: `${name} seam`,
        this: [edgeOf(id(), 'front-seam')],
        to: [edgeOf(id(), 'back-seam')],
        depth: allowance,
      }),
    ],
    advice: made.value.advice,
    assumed: made.value.assumed,
  });
}
