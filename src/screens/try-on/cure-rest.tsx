import type { Cures } from '../../fitting/cure-types.ts';
import type { Seen } from '../../store/progress-types.ts';
import type { Means } from './cure-means.ts';
import { seenWords } from './cure-notes.ts';

/** What this cure does not do: what cannot be met, and what was not reckoned with, each with its reason. */
export function CureRest(props: {
  readonly cures: Cures;
  readonly notes: readonly Seen[];
  readonly means: Means;
  /** The page of a note, by the name of its deed. */
  readonly noteAt: (deed: string) => string;
}) {
  const { cures, notes, means, noteAt } = props;
  const lines = (of: Cures['unmet'], ask: string) => (
    <ul class="cure-list">
      {of.map(({ observation, why }) => {
        const note = notes.find(({ deed }) => deed === observation);
        return (
          <li key={observation}>
            <b>{seenWords(note, note && means.entry(note.entry))}</b>
            <p>{why}</p>
            {note && (
              <a class="plain" href={noteAt(observation)}>
                {ask}
              </a>
            )}
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
          {lines(cures.unmet, 'Look at it again')}
        </section>
      )}
      {cures.left.length > 0 && (
        <section data-part="cure-left">
          <h2>What was left out</h2>
          {lines(cures.left, 'Say more of it')}
        </section>
      )}
    </>
  );
}
