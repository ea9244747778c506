import type { Cures } from '../../fitting/cure-types.ts';
import type { Seen } from '../../store/progress-types.ts';
import type { Means } from './cure-means.ts';
import { seenWords } from './cure-notes.ts';

/** What this cure does not do: what cannot be met, and what was not reckoned with, each with its reason. */
export function CureRest(props: {
  readonly cures: Cures;
  readonly notes: readonly Seen[];
  readonly means: Means;
  /** Where notes are made and changed. */
  readonly back: string;
}) {
  const { cures, notes, means, back } = props;
  const lines = (of: Cures['unmet']) => (
    <ul class="cure-list">
      {of.map(({ observation, why }) => {
        const note = notes.find(({ deed }) => deed === observation);
        return (
          <li key={observation}>
            <b>{seenWords(note, note && means.entry(note.entry))}</b>: {why}
          </li>
        );
      })}
    </ul>
  );
  return (
    <>
      {cures.unmet.length > 0 && (
        <section data-part="cure-unmet">
          <h2>What this cannot put right</h2>
          {lines(cures.unmet)}
        </section>
      )}
      {cures.left.length > 0 && (
        <section data-part="cure-left">
          <h2>What was left out</h2>
          {lines(cures.left)}
          <a class="plain" href={back}>
            Say more of what you saw
          </a>
        </section>
      )}
    </>
  );
}
