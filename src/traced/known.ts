import type { Run } from './path-lines.ts';

/** What a file written here says of a piece: enough to take it up again as it was. */
export interface Known {
  /** Id of the piece. */
  readonly piece: string;
  readonly cut: 'one' | 'pair' | 'fold';
  /** Names of its edges in order, each with how many stretches it has. */
  readonly edges: readonly { readonly name: string; readonly count: number }[];
  /** Degrees clockwise from the upright. */
  readonly grain: number;
}

const CUTS = ['one', 'pair', 'fold'] as const;

/** Reads `neck 2 shoulder 1`; nothing where the line has since been drawn anew, so that the counts no longer fit. */
export function knownOf(part: Element, run: Run): Known | undefined {
  const cut = CUTS.find((one) => one === part.getAttribute('data-cut'));
  const found = [
    ...(part.getAttribute('data-edges') ?? '')
      .slice(0, 20_000)
      .matchAll(/([a-z0-9][a-z0-9-]{0,63}) (\d{1,5})/g),
  ];
  const edges = found.map(([, name = '', count]) => ({ name, count: Number(count) }));
  const sum = edges.reduce((all, { count }) => all + count, 0);
  if (!cut || !run.closed || edges.some(({ count }) => count === 0) || sum !== run.segments.length)
    return undefined;
  const grain = Number(part.getAttribute('data-grain') ?? 0);
  return {
    piece: part.getAttribute('data-piece') ?? '',
    cut,
    edges,
    grain: Math.abs(grain) <= 180 ? grain : 0,
  };
}
