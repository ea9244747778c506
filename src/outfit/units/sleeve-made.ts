import { elasticCut } from '../../cloth/elastic.ts';
import { CASING_ROOM } from '../../cloth/sleeve-room.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { add, type Length } from '../../length/length.ts';
import { lower } from '../lower.ts';
import type { EdgeRef, Garment, Gate, Join, Work } from '../outfit.ts';
import { joinOf, stepOf } from './parts.ts';
import { detachedTry, setInTry } from './sleeve-try.ts';
import type { EdgesPlaced } from './unit.ts';

/** An edge of a piece on its own side. */
export const edgeOf = (piece: string, edge: string): EdgeRef => ({ piece, edge, other: false });

/** How deep the cloth is turned for an elastic of a width. */
export const casingFor = (elastic: Length): Length => add(elastic, CASING_ROOM.value);

/** A sleeve whose pieces are drafted, and what is still to be said of it. */
export interface SleeveMade {
  readonly id: (part?: string) => string;
  readonly name: string;
  readonly garment: Garment;
  readonly allowance: Length;
  /** Its pieces from the top down; all have the edges `front-seam` and `back-seam`. */
  readonly pieces: readonly string[];
  /** The edge that is set in or held: `cap` or `upper`. */
  readonly top: string;
  readonly armhole: EdgesPlaced | undefined;
  readonly setting: 'round' | 'flat';
  readonly held: 'armhole' | 'elastic' | 'head';
  readonly ends: 'hem' | 'elastic' | 'cuff' | 'band';
  readonly elastic: Length;
  /** The arm on the body, where an elastic holds the sleeve above and below. */
  readonly body?: { readonly above: Length; readonly below: Length };
  readonly hem: Length;
  readonly opening: Length;
  /** Ids of the seams between its pieces that are tacked with it for a try-on. */
  readonly between?: readonly string[];
  /** True where the cap is gathered into its armhole. */
  readonly gathered: boolean;
}

/** An opening at the foot of a seam: its allowances clipped above it and turned in while the piece lies flat. */
export const openingWork = (told: {
  readonly id: (part?: string) => string;
  readonly on: string;
  readonly of: string;
  /** Which edges: `long`, `inner`. */
  readonly edges: string;
  readonly long: Length;
  readonly turned: string;
}): Work => ({
  kind: 'own',
  id: told.id('opening'),
  name: `Opening of the ${told.of}`,
  on: told.on,
  with: [],
  when: 'flat',
  steps: [
    stepOf(
      `On both ${told.edges} edges of each ${told.of}, clip the seam allowance ${inBothRules(told.long)} above the lower edge, nearly to the seam line`,
      'cut',
      4,
      { final: true },
    ),
    stepOf(`Turn the allowances below the clips in ${told.turned}, for the opening`, 'machine', 8),
  ],
});

/** Where a seam ends short of an opening. */
export const aboveOpening = (long: Length): string =>
  `the opening, ${inBothRules(long)} above the lower edge`;

/** What stands below it: the lower edge of its last piece, hemmed, cased or opened for a cuff. */
function lowerWorks({ id, name, pieces, ends, elastic, body, hem, opening }: SleeveMade): readonly Work[] {
  const on = pieces.at(-1) ?? id();
  const along = [edgeOf(on, 'lower')];
  if (ends === 'hem')
    return [
      {
        kind: 'hem',
        id: id('hem'),
        name: `${name} hem`,
        on,
        along,
        ring: true,
        turn: hem,
        by: 'hand',
        hang: 0,
      },
    ];
  if (ends === 'elastic')
    return [
      {
        kind: 'casing',
        id: id('lower-casing'),
        name: `Lower casing of the ${lower(name)}`,
        on,
        along,
        ring: true,
        turn: casingFor(elastic),
        elastic,
        ...(body && { cut: elasticCut(body.below) }),
      },
    ];
  if (ends === 'band' || opening <= 0) return [];
  return [
    openingWork({ id, on, of: lower(name), edges: 'long', long: opening, turned: 'twice and stitch them' }),
  ];
}

/** The joins, works and try-on that any sleeve has, besides what makes its fullness. */
export function sleeveParts(made: SleeveMade): {
  readonly works: readonly Work[];
  readonly joins: readonly Join[];
  readonly gates: readonly Gate[];
} {
  const { id, name, allowance, pieces, top, armhole, setting, held, ends, opening } = made;
  const flat = setting === 'flat' && armhole !== undefined;
  const called = lower(name);
  const works: Work[] = [...lowerWorks(made)];
  const joins: Join[] = [];
  if (armhole) {
    joins.push(
      joinOf({
        id: id('armhole'),
        name: `Armhole seam of the ${called}`,
        this: armhole.chain,
        to: [edgeOf(id(), top)],
        depth: allowance,
        ring: !flat,
        worked: flat ? 'flat' : 'round',
        tacked: !flat,
        finish: 'overlock',
      }),
    );
  }
  joins.push(
    joinOf({
      id: id('seam'),
      name: `${name} seam`,
      this: pieces.map((piece) => edgeOf(piece, 'front-seam')),
      to: pieces.map((piece) => edgeOf(piece, 'back-seam')),
      depth: allowance,
      closes: true,
      tacked: flat || (!armhole && ends === 'band'),
      finish: 'overlock',
      ...(ends === 'cuff' && opening > 0 ? { stopsAt: aboveOpening(opening) } : {}),
    }),
  );
  if (held === 'elastic' && !armhole) {
    works.push({
      kind: 'casing',
      id: id('upper-casing'),
      name: `Upper casing of the ${called}`,
      on: id(),
      along: [edgeOf(id(), top)],
      ring: true,
      turn: casingFor(made.elastic),
      elastic: made.elastic,
      ...(made.body && { cut: elasticCut(made.body.above) }),
    });
  }
  return { works, joins, gates: [armhole ? setInTry(made, armhole) : detachedTry(made)] };
}

/** An edge of a sleeve that is gathered; marked in eighths where it is very full. */
export const gatherOf = (
  { id, name, marker }: Pick<SleeveMade, 'id' | 'name'> & { readonly marker: string },
  edge: string,
  fullness: number,
): Work => ({
  kind: 'gather',
  id: id(edge === 'lower' ? 'lower-gathers' : 'gathers'),
  name: `${edge === 'lower' ? 'Lower gathers' : 'Gathers'} of the ${lower(name)}`,
  on: id(),
  edge,
  fullness,
  divide: fullness > 2 ? 8 : 4,
  marker,
});

/** Ease that is worked into a plain cap before it is set in. */
export const easeWork = ({ id, name }: Pick<SleeveMade, 'id' | 'name'>, ease: Length): readonly Work[] =>
  ease <= 0
    ? []
    : [
        {
          kind: 'own',
          id: id('ease'),
          name: `Ease of the ${lower(name)}`,
          on: id(),
          with: [],
          when: 'flat',
          steps: [
            stepOf(
              `Sew a row of long stitches over the upper half of each cap, in the allowance, and ease in ${inBothRules(ease)} without a pucker`,
              'machine',
              6,
            ),
          ],
        },
      ];
