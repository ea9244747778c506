import { entryCalled } from '../../fitting/entries/all.ts';
import type { GateBasis, Seeable } from '../../fitting/gates-worth.ts';
import { likelyMisfits } from '../../fitting/misfits.ts';
import { costOfFindingLate, type LateCurve, type Misfit } from '../../order/undoing/late.ts';
import { prepareUndoing } from '../../order/undoing/undoing.ts';
import { ownMinutes } from '../../store/own-times.ts';
import type { Session } from '../session.ts';

/** What the page shows of finding out late, and what proposals are worked out from. */
export interface Late extends GateBasis {
  readonly curve: LateCurve;
  /** How many try-ons the chances are counted from; none: they are guessed. */
  readonly tried: number;
}

/**
 * Works out what the likeliest misfits would cost along the running order, a garment at a time so that the page can be
 * touched meanwhile, and then tells it, or that it `failed`; nothing where there is no order. Returns what calls it off.
 */
export function reckonLate(session: Session, tell: (late: Late) => void, failed: () => void): () => void {
  const [outfit, running] = [session.outfit.peek(), session.running.peek()];
  const progress = session.progress.peek();
  if (!outfit || !running) return () => {};
  const { done, added, waived, reworks, seen } = progress;
  const fits = done.flatMap((id) => {
    const step = running.steps.get(id);
    return step?.of.kind === 'gate' && step.action === 'fit' ? [step.garment] : [];
  });
  const garments = [...outfit.garments];
  const misfits: Seeable[] = [];
  let timer: ReturnType<typeof setTimeout> | undefined;
  const work = (): void => {
    const garment = garments.shift();
    if (garment) {
      const tried = fits.filter((id) => id === garment.id).length;
      misfits.push(...likelyMisfits(garment, seen, tried).map(seeable));
      timer = setTimeout(next, 0);
      return;
    }
    const own = ownMinutes(progress);
    const curve = costOfFindingLate(prepareUndoing(outfit, running), misfits, own);
    tell({
      outfit,
      running,
      standing: { done, added, waived, reworks },
      misfits,
      curve,
      own,
      tried: fits.length,
    });
  };
  // A slip of the reckoning must not leave the page waiting for ever.
  const next = (): void => {
    try {
      work();
    } catch {
      failed();
    }
  };
  timer = setTimeout(next, 0);
  return () => clearTimeout(timer);
}

/** With what its entry says; the name of a misfit ends with that of its entry. */
function seeable(misfit: Misfit): Seeable {
  const entry = entryCalled(misfit.id.slice(misfit.id.lastIndexOf('/') + 1));
  return { ...misfit, seen: entry?.seen ?? misfit.name, ...(entry?.needs ? { needs: entry.needs } : {}) };
}
