import { useSignal } from '@preact/signals';
import { useEffect, useMemo } from 'preact/hooks';
import type { Cures } from '../../fitting/cure-types.ts';
import type { Seen } from '../../store/progress-types.ts';
import { markingFor } from '../choices.ts';
import type { Session } from '../session.ts';
import type { Means } from './cure-means.ts';
import { observationOf, openNotes, reworkName } from './cure-notes.ts';

/** What came of reckoning, and the notes that were reckoned with. */
export type Reckoned =
  | { readonly state: 'reckoning' }
  | { readonly state: 'failed' }
  | { readonly state: 'found'; readonly cures: Cures; readonly notes: readonly Seen[] };

/** Runs something once what is on the screen has been drawn; returns what calls it off. */
function onceDrawn(work: () => void): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const frame = requestAnimationFrame(() => {
    timer = setTimeout(work, 0);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(timer);
  };
}

/**
 * What can be done about the open notes of a garment. It is reckoned after the page has been drawn, since it may take a
 * tenth of a second, and anew whenever notes, description or what is done change.
 */
export function useCures(session: Session, garment: string, means: Means): Reckoned {
  const marking = markingFor(session.units.value);
  const [outfit, running, progress] = [session.outfit.value, session.running.value, session.progress.value];
  const notes = useMemo(() => openNotes(progress, garment), [progress.seen, garment]);
  const basis = useMemo(
    () => outfit && running && { outfit, running, notes, garment },
    [outfit, running, notes, garment, marking.unit],
  );
  const found = useSignal<{ readonly of: unknown; readonly reckoned: Reckoned } | undefined>(undefined);
  useEffect(() => {
    if (!basis || basis.notes.length === 0) return undefined;
    return onceDrawn(() => {
      const { done, reworks } = session.progress.peek();
      try {
        const cures = means.cure(basis.outfit, garment, basis.running, notes.map(observationOf), {
          done,
          own: means.own(session.progress.peek()),
          id: reworkName(notes, reworks),
          marking,
        });
        found.value = { of: basis, reckoned: { state: 'found', cures, notes } };
      } catch {
        // A slip of the reckoning must not take the page away.
        found.value = { of: basis, reckoned: { state: 'failed' } };
      }
    });
  }, [basis, means]);
  return found.value?.of === basis && found.value ? found.value.reckoned : { state: 'reckoning' };
}
