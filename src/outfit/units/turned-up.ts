import { type Refusal, refusal } from '../../cloth/refusal.ts';
import { edgeName } from '../chains.ts';
import type { Chain, Garment } from '../outfit.ts';

/** What is wrong with putting something on an edge that is hemmed or cased already; nothing where it is free of both. */
export function turnedUp(garment: Garment, chain: Chain, place: string): Refusal | undefined {
  const names = new Set(chain.map(edgeName));
  const hemmed = garment.works.find(
    (work) =>
      (work.kind === 'hem' || work.kind === 'casing') && work.along.some((ref) => names.has(edgeName(ref))),
  );
  return (
    hemmed &&
    refusal(
      `at.${place}`,
      `This edge is turned up already (${hemmed.name}).`,
      `Take ${hemmed.name} out first, or choose another edge.`,
    )
  );
}
