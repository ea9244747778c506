import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { geometry, practice } from '../../cloth/source.ts';
import type { Length } from '../../length/length.ts';
import { bad, good, type Result } from '../../length/result.ts';
import { edgeName } from '../chains.ts';
import type { Garment, Join } from '../outfit.ts';
import { joinOf } from './parts.ts';
import { type Run, runOf } from './runs.ts';
import type { EdgesPlaced, Proposal } from './unit.ts';

/** Fields of what is sewn along an edge and may go all the way round. */
export const GOES_FIELD = {
  goes: {
    kind: 'choice',
    usual: true,
    label: 'Runs',
    options: [
      { value: 'open', label: 'from end to end' },
      { value: 'ring', label: 'all the way round' },
    ],
    start: 'open',
  },
  allowance: {
    kind: 'length',
    usual: true,
    label: 'Seam allowance',
    start: { in: '1/2', mm: '12' },
  },
} as const;

function propose(
  garment: Garment,
  at: EdgesPlaced | undefined,
): Partial<Record<'goes' | 'allowance', Proposal>> {
  const [piece] = at?.pieces ?? [];
  if (!at || !piece) return {};
  return {
    ...(runOf(garment, at.chain).ring
      ? { goes: { value: 'ring', because: 'Its seams close this edge into a ring', source: geometry } }
      : {}),
    ...(piece.allowance > 0
      ? {
          allowance: {
            value: piece.allowance,
            because: `As the ${piece.name.toLowerCase()} has it`,
            source: practice,
          },
        }
      : {}),
  };
}

/**
 * The seam that sews a trim of one or more parts, end to end, to an edge; in the round, its ends too. Refused, at the
 * place: an edge that is hemmed; a ring of an edge that no seams close.
 */
function join(told: {
  readonly id: (part?: string) => string;
  readonly name: string;
  readonly garment: Garment;
  readonly run: Run;
  readonly allowance: Length;
  readonly goes: 'open' | 'ring';
  /** Pieces of the trim in order along the edge, each with `seam`, `front-end` and `back-end`. */
  readonly parts: readonly string[];
}): Result<readonly Join[], Refusal> {
  const { id, name, garment, run, allowance, goes, parts } = told;
  const names = new Set(run.chain.map(edgeName));
  const hemmed = garment.works.find(
    (work) =>
      (work.kind === 'hem' || work.kind === 'casing') && work.along.some((ref) => names.has(edgeName(ref))),
  );
  if (hemmed) {
    const cure = `Take ${hemmed.name} out first, or choose another edge.`;
    return bad(refusal('at.edge', `This edge is turned up already (${hemmed.name}).`, cure));
  }
  if (goes === 'ring' && !run.ring) {
    const cure = 'Sew the seam that closes it first, or let it go from end to end.';
    return bad(refusal('goes', 'No seam closes this edge into a ring.', cure));
  }
  const ring = goes === 'ring';
  const taken = garment.joins.some((one) => [...one.this, ...one.to].some((ref) => names.has(edgeName(ref))));
  const ends = parts.flatMap((piece, i) => {
    const next = parts[i + 1] ?? (ring ? parts[0] : undefined);
    if (next === undefined) return [];
    return [
      joinOf({
        id: id(parts.length === 1 ? 'ends' : `ends-${i + 1}`),
        name: parts.length === 1 ? `${name} ends` : `${name} ends ${i + 1}`,
        this: [{ piece, edge: 'front-end', other: false }],
        to: [{ piece: next, edge: 'back-end', other: false }],
        depth: allowance,
        finish: 'overlock',
      }),
    ];
  });
  return good([
    ...ends,
    joinOf({
      id: id('seam'),
      name: `${name} seam`,
      this: run.chain,
      to: parts.map((piece) => ({ piece, edge: 'seam', other: false })),
      // Over a seam that is there already it can only be laid.
      seam: taken ? 'laid-on' : 'plain',
      depth: allowance,
      ring,
      worked: run.worked,
      finish: taken ? 'none' : 'overlock',
    }),
  ]);
}

/** What is sewn along an edge: what is proposed for it from the edge, and its seam. */
export const seamToEdge = { propose, join };
