import { entryCalled } from '../../fitting/entries/all.ts';
import type { GateBasis, Seeable } from '../../fitting/gates-worth.ts';
import { likelyMisfits } from '../../fitting/misfits.ts';
import { costOfFindingLate, type LateCurve } from '../../order/undoing/late.ts';
import { prepareUndoing } from '../../order/undoing/undoing.ts';
import { ownMinutes } from '../../store/own-times.ts';
import type { Session } from '../session.ts';

/** What the page shows of finding out late, and what proposals are worked out from. */
export interface Late extends GateBasis {
  readonly curve: LateCurve;
  /** How many try-ons the chances are counted from; none: they are guessed. */
  readonly tried: number;
}

/** Works out what the likeliest misfits would cost along the running order; undefined where there is no order. */
export function reckonLate(session: Session): Late | undefined {
  const [outfit, running] = [session.outfit.peek(), session.running.peek()];
  const progress = session.progress.peek();
  if (!outfit || !running) return undefined;
  const { done, added, waived, reworks, seen } = progress;
  const tried = done.filter((id) => running.steps.get(id)?.action === 'fit').length;
  const misfits = outfit.garments.flatMap((garment) =>
    likelyMisfits(outfit, garment, seen, tried).map((misfit): Seeable => {
      const entry = entryCalled(misfit.id.slice(misfit.id.lastIndexOf('/') + 1));
      const seenAs = { seen: entry?.seen ?? misfit.name };
      return { ...misfit, ...seenAs, ...(entry?.needs ? { needs: entry.needs } : {}) };
    }),
  );
  const own = ownMinutes(progress);
  const curve = costOfFindingLate(prepareUndoing(outfit, running), misfits, own);
  return { outfit, running, standing: { done, added, waived, reworks }, misfits, curve, own, tried };
}
