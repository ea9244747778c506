import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { practice } from '../../cloth/source.ts';
import { inBothRules } from '../../length/both-rules.ts';
import { inches, type Length, longer, shorter, times, zero } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { edgeLengths } from '../../shape/measure.ts';
import { lookUp } from '../chains.ts';
import type { Chain, Garment, Join, Piece, Work } from '../outfit.ts';
import { holesOf } from '../piece-holes.ts';
import { bothHalves, edgeOn, layers } from './collar.ts';
import { joinOf } from './parts.ts';
import { type Run, runOf } from './runs.ts';
import { standOutline } from './stand-outline.ts';
import { stiffeningOf } from './stiffening.ts';
import type { EdgesPlaced, Proposal } from './unit.ts';

/** A band no higher than this stands under a chin. */
const HIGHEST = inches(4);

/** The top of a front band that is closed as far as the centre front, where there is one. */
const closedTop = (garment: Garment, piece: string): string | undefined => {
  const bands = garment.works.flatMap((work) =>
    work.kind === 'folded-band' && work.on === piece ? [work.id] : [],
  );
  return garment.works.find((work) => work.kind === 'own' && bands.some((band) => work.id === `${band}-top`))
    ?.name;
};

/** The edge across the top of the lap, beside the end of a neck run. */
function lapBeside(
  garment: Garment,
  run: Chain,
): { readonly chain: Chain; readonly length: Length } | undefined {
  const looked = lookUp(garment);
  const [first] = run;
  const last = run.at(-1);
  if (!first || !last || first.piece !== last.piece || first.other === last.other) return undefined;
  if (!looked.beside.get(`${first.piece}.${first.edge}`)?.includes('lap')) return undefined;
  const piece = looked.pieces.get(first.piece);
  const length = piece && edgeLengths(piece.outline).get('lap');
  if (length === undefined || length <= 0) return undefined;
  return {
    chain: [edgeOn(first.piece, 'lap', first.other), ...run, edgeOn(last.piece, 'lap', last.other)],
    length,
  };
}

/** Buttoned where the front has a lap, unless the top of its band is closed already. */
export function proposeClosing(
  garment: Garment,
  at: EdgesPlaced | undefined,
): Readonly<{ closing?: Proposal }> {
  const piece = at?.chain[0]?.piece;
  if (!at || piece === undefined || !lapBeside(garment, runOf(garment, at.chain).chain)) return {};
  const closing: Proposal =
    closedTop(garment, piece) === undefined
      ? { value: 'buttoned', because: 'The front has a lap', source: practice }
      : { value: 'meets', because: 'The front band is closed up to the centre front', source: practice };
  return { closing };
}

/** A standing band as it is put together; its layers are not yet sewn to each other. */
export interface StandMade {
  readonly outer: string;
  readonly inner: string;
  readonly pieces: readonly Piece[];
  readonly works: readonly Work[];
  /** The seam to the neck. */
  readonly neck: Join;
  /** Of its upper edge, from the centre back to the front. */
  readonly upper: Length;
}

/**
 * A standing band of two layers for a neck run. Refused: a height or rise that no neck takes; a band that is to be
 * buttoned where the front has no lap; a button too large for the band.
 */
export function standFor(told: {
  readonly id: (part: string) => string;
  readonly unit?: string;
  readonly name: string;
  readonly garment: Garment;
  readonly run: Run;
  readonly cloth: string;
  readonly allowance: Length;
  readonly height: Length;
  readonly values: {
    readonly closing: 'meets' | 'buttoned';
    readonly rise: Length;
    readonly diameter: Length;
    readonly thickness: Length;
    readonly top: 'left' | 'right';
    readonly stiffening: 'sewn' | 'fused' | 'none';
  };
  readonly marker: string;
}): Result<StandMade, Refusal> {
  const { id, unit, name, garment, run, cloth, allowance, height, values, marker } = told;
  const { closing, rise, diameter, thickness, top, stiffening } = values;
  if (height <= 0 || longer(height, HIGHEST)) {
    const cure = `Give up to ${inBothRules(HIGHEST)}.`;
    return bad(refusal('height', 'A band of this height does not stand round a neck.', cure));
  }
  const lap = closing === 'buttoned' ? lapBeside(garment, run.chain) : undefined;
  if (closing === 'buttoned' && !lap) {
    const cure = 'Give the front a lap beyond its centre line, or let the ends meet.';
    return bad(refusal('closing', 'There is no lap beside this neck edge to button it over.', cure));
  }
  const closed = lap && closedTop(garment, lap.chain[0]?.piece ?? '');
  if (closed !== undefined) {
    const cure = 'Leave the top of that band for the stand, or let the ends meet.';
    return bad(refusal('closing', `There is no room over the lap: its top is sewn up (${closed}).`, cure));
  }
  const half = times(run.length, 1 / 2);
  if (half <= 0) return bad(refusal('at.neck', 'This edge has no length.', 'Choose an edge with one.'));
  if (rise < 0 || longer(rise, times(half, 1 / 3))) {
    const cure = `Give from 0 to ${inBothRules(times(half, 1 / 3), 'down')}.`;
    return bad(refusal('rise', 'The band cannot curve up by this.', cure));
  }
  const [outer, inner] = [id('outer'), id('inner')];
  const pieces = layers({
    ids: [outer, inner],
    names: [`${name} outer layer`, `${name} inner layer`],
    cloth,
    ...(unit === undefined ? {} : { unit }),
    allowance,
    outline: standOutline({ half, lap: lap?.length ?? zero, height, rise }),
  });
  const [front] = pieces;
  const works: Work[] = [
    ...(front ? stiffeningOf(stiffening, front) : []),
    {
      kind: 'press-edge',
      id: id('turning'),
      name: `Turned-in edge of the ${name.toLowerCase()}`,
      on: inner,
      edge: 'neck',
      turn: allowance,
    },
  ];
  if (lap) {
    const level = times(height, 1 / 2);
    const hole: Extract<Work, { kind: 'buttonholes' }> = {
      kind: 'buttonholes',
      id: id('button'),
      name: `${name} button`,
      on: outer,
      through: [inner],
      along: 'front-end',
      count: 1,
      first: level,
      last: level,
      from: 'the neck edge',
      button: { diameter, thickness },
      direction: 'across',
      top,
      marker,
    };
    if (!shorter(diameter, height)) {
      const cure = 'Take a smaller button, or make the band higher.';
      return bad(refusal('diameter', 'The button is larger than the band is high.', cure));
    }
    const placed = holesOf(garment, hole);
    if (!placed.ok) return placed;
    works.push(hole);
  }
  const neck = joinOf({
    id: id('neck'),
    name: `${name} neck seam`,
    this: lap?.chain ?? run.chain,
    to: bothHalves(outer, 'neck'),
    seam: 'covered',
    cover: edgeOn(inner, 'neck'),
    depth: allowance,
    worked: run.worked,
  });
  const upper = front ? (edgeLengths(front.outline).get('upper') ?? half) : half;
  return good({ outer, inner, pieces, works, neck, upper });
}

/** The ends of a stand, and the seam of a fall to its outer layer, which the inner one is sewn over. */
export const fallOnStand = (told: {
  readonly id: (part: string) => string;
  readonly name: string;
  readonly under: string;
  readonly outer: string;
  readonly inner: string;
  readonly allowance: Length;
}): readonly Join[] => {
  const { id, name, under, outer, inner, allowance } = told;
  return [
    joinOf({
      id: id('stand-ends'),
      name: `${name} stand ends`,
      this: [edgeOn(outer, 'front-end')],
      to: [edgeOn(inner, 'front-end')],
      seam: 'ends',
      depth: allowance,
    }),
    joinOf({
      id: id('fall-seam'),
      name: `${name} fall seam`,
      this: bothHalves(under, 'neck'),
      to: bothHalves(outer, 'upper'),
      seam: 'covered',
      cover: edgeOn(inner, 'upper'),
      depth: allowance,
    }),
  ];
};
