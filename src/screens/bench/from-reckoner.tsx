import { useSignal } from '@preact/signals';
import type { Act } from '../../store/deed.ts';
import type { Progress } from '../../store/progress-types.ts';
import { keep, recall } from '../../ui/safe-storage.ts';
import './from-reckoner.css';

type Put = Progress['reckoned'][number];

/** How many figures stand open; the others are one touch away. */
export const OPEN_FIGURES = 3;

/** What was put on the card of a step, the last put first. */
export const putOn = (progress: Pick<Progress, 'reckoned'>, step: string | undefined): readonly Put[] =>
  progress.reckoned.filter((one) => one.step === step).reverse();

/**
 * Lays out what stood in the fields of a reckoning where the reckoner looks for it when it opens. What the maker has
 * written there since can be taken back there.
 */
function layOut({ reckoning, unit, entries }: Put): void {
  const place = `reckoner.${reckoning}`;
  let before: unknown;
  try {
    before = JSON.parse(recall(place) ?? '{}');
  } catch {
    // What cannot be read cannot be taken back.
  }
  keep(place, JSON.stringify({ unit, entries, before }));
}

/**
 * Figures that the maker reckoned and put on this card.
 *
 * What others may hold on to: `[data-part="reckoned"]`, in it one `[data-reckoned]` a reckoning with its figures as
 * `dt` and `dd`, the button `[data-part="more-figures"]` where there are more than three, the link
 * `[data-part="reckon-again"]` and the button `[data-part="take-off"]`.
 */
export function FromReckoner(props: {
  readonly progress: Pick<Progress, 'reckoned'>;
  readonly step: string;
  readonly act: (...acts: readonly Act[]) => void;
}) {
  const all = putOn(props.progress, props.step);
  if (all.length === 0) return null;
  return (
    <section class="from-reckoner" data-part="reckoned" aria-label="From the reckoner">
      <p class="quiet">From the reckoner</p>
      {all.map((put) => (
        <OnCard key={put.deed} put={put} act={props.act} />
      ))}
    </section>
  );
}

function OnCard({ put, act }: { readonly put: Put; readonly act: (...acts: readonly Act[]) => void }) {
  const open = useSignal(false);
  const { deed, reckoning, title, figures } = put;
  const more = figures.length - OPEN_FIGURES;
  return (
    <article class="on-card" data-reckoned={reckoning}>
      <h2>{title}</h2>
      <dl>
        {(open.value ? figures : figures.slice(0, OPEN_FIGURES)).map(({ name, figure }, i) => (
          // Figures may bear the same name; their places do not change.
          <div key={i}>
            <dt>{name}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      <div class="choice">
        {more > 0 && (
          <button
            type="button"
            class="plain"
            data-part="more-figures"
            aria-expanded={open.value}
            onClick={() => {
              open.value = !open.value;
            }}
          >
            {open.value ? 'Only the first three' : `${more} more ${more === 1 ? 'figure' : 'figures'}`}
          </button>
        )}
        <a
          class="plain"
          data-part="reckon-again"
          href={`#/reckoner/${encodeURIComponent(reckoning)}`}
          // What stood in the fields stands there again when the reckoner opens.
          onClick={() => layOut(put)}
        >
          Reckon again<span class="unseen">: {title}</span>
        </a>
        <button
          type="button"
          class="plain"
          data-part="take-off"
          onClick={() => act({ kind: 'undone', deed })}
        >
          Take off the card<span class="unseen">: {title}</span>
        </button>
      </div>
    </article>
  );
}
