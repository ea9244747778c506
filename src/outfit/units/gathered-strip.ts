import { type FrillGrain, type FrillKind, frillCut } from '../../cloth/frill-cut.ts';
import type { Refusal } from '../../cloth/refusal.ts';
import { type Length, times, zero } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import type { Cloth, Garment } from '../outfit.ts';
import { atPlace, type FrillTold, frillParts, tooFull } from './frill.ts';
import { seamToEdge } from './frill-seam.ts';
import { beyondReason } from './reason.ts';
import { runOf } from './runs.ts';
import type { Built, EdgesPlaced, Parts } from './unit.ts';

/** What a unit of one gathered strip was told in its fields, and what it is put on. */
interface Making {
  readonly values: {
    readonly depth: Length;
    readonly fullness: number;
    readonly allowance: Length;
    readonly marks: '4' | '8';
    readonly goes: 'open' | 'ring';
  };
  readonly at: { readonly edge: EdgesPlaced };
  readonly cloth: { readonly main: Cloth };
  readonly garment: Garment;
  readonly marker: string;
  readonly id: (part?: string) => string;
  readonly name: string;
}

/** Degrees of the grain from the depth of a strip. */
const GRAIN = { along: 90, across: 0, bias: 45 } as const;

/**
 * A strip gathered to an edge: its piece, what is done to it, and its seam. Refused at its field, its place or its cloth:
 * what cannot be gathered, hemmed edges, figures beyond reason.
 */
export function gatheredStrip(
  { values, at, cloth, garment, marker, id, name }: Making,
  {
    kind,
    grain,
    finish,
  }: { readonly kind: FrillKind; readonly grain: FrillGrain; readonly finish: FrillTold['finish'] },
): Result<Partial<Parts> & Pick<Built, 'advice' | 'assumed'>, Refusal> {
  const { depth, fullness, allowance, marks, goes } = values;
  const beyond = tooFull(fullness) ?? beyondReason({ depth }, allowance);
  if (beyond) return bad(beyond);
  const run = runOf(garment, at.edge.chain);
  const sewn = seamToEdge.join({ id, name, garment, run, allowance, goes, parts: [id()] });
  if (!sewn.ok) return sewn;
  const ring = goes === 'ring';
  const divide = marks === '4' ? 4 : 8;
  const made = atPlace(
    frillCut({
      place: run.length,
      // Folded, both long edges lie in the seam.
      depth: finish === 'folded' ? times(depth, 2) : depth,
      kind,
      fullness,
      grain,
      clothWidth: cloth.main.width,
      allowance,
      hem: finish === 'bound' ? zero : allowance,
      ring,
      parts: divide,
    }),
    'edge',
  );
  if (!made.ok) return made;
  const parts = frillParts({
    id,
    name,
    cloth: cloth.main.id,
    cut: run.cut,
    allowance,
    depth,
    made: made.value,
    divide,
    marker,
    finish,
    ends: ring ? 'sewn' : 'hem',
    grain: GRAIN[grain],
  });
  if (!parts.ok) return parts;
  const { advice, assumed } = made.value;
  return good({ ...parts.value, joins: sewn.value, advice, assumed });
}
