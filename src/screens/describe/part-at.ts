import type { PartList, PartOf } from '../../outfit/changing/parts.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import type { Session } from '../session.ts';

/** Where a part of a garment is described: its outfit, its garment, and the part, unless it is a new one. */
export interface PartAt<L extends PartList> {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly part: PartOf[L] | undefined;
}

/** What an address names, or in words that it is not there. */
export function partAt<L extends PartList>(
  session: Session,
  garment: string,
  list: L,
  id: string | undefined,
): PartAt<L> | string {
  const outfit = session.outfit.value;
  const found = outfit?.garments.find((one) => one.id === garment);
  if (!outfit || !found) return 'This garment is not in the outfit';
  const part = (found[list] as readonly PartOf[L][]).find((one) => one.id === id);
  if (id !== undefined && !part) return 'This part is not there any more';
  return { session, outfit, garment: found, part };
}
