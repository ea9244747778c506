import type { Act, DeedId } from '../store/deed.ts';

/** A deed that is not in the ledger yet bears a name of its own, with this device; the ledger gives it another. */
export const UNKEPT = '~';

/** The deeds that an act names. */
const named = (act: Act): readonly DeedId[] => {
  if (act.kind === 'undone') return [act.deed];
  if (act.kind === 'let-be') return [act.seen];
  return act.kind === 'reworked' ? act.cures : [];
};

/** Does an act name a deed whose name in the ledger is still to come? */
export const namesUnkept = (act: Act): boolean => named(act).some((one) => one.startsWith(`${UNKEPT}-`));

/** An act that names deeds by the names that they have now. */
export const renamed = (act: Act, names: ReadonlyMap<DeedId, DeedId>): Act => {
  const now = (one: DeedId): DeedId => names.get(one) ?? one;
  if (!named(act).some((one) => names.has(one))) return act;
  if (act.kind === 'undone') return { ...act, deed: now(act.deed) };
  if (act.kind === 'let-be') return { ...act, seen: now(act.seen) };
  return act.kind === 'reworked' ? { ...act, cures: act.cures.map(now) } : act;
};
