/**
 * What an outfit is made of and marked with.
 *
 * What others may hold on to: `main[data-part="cloths"]`; one `li[data-cloth]` a cloth and one `li[data-marker]` a marker,
 * with the buttons `Change` and `Remove`; `Add a cloth`, `Add a marker`; the forms `[data-part="cloth-form"]` and
 * `[data-part="marker-form"]`; `[data-part="in-use"]` says why one cannot be taken out.
 */
import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Result } from '../../length/result.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { removeCloth, removeMarker } from '../../outfit/changing/whole.ts';
import type { Cloth, Outfit } from '../../outfit/outfit.ts';
import { type Problem, writeProblem } from '../../outfit/problem.ts';
import { Sign } from '../../ui/signs.tsx';
import { markingFor } from '../choices.ts';
import { HouseNotice } from '../house.tsx';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import { ClothForm } from './cloth-form.tsx';
import type { PageProps } from './describe.tsx';
import { recallDraft } from './drafts.ts';
import { focusOn } from './focus-on.ts';
import { Head, hashOf, NotThere } from './head.tsx';
import { IronLabel } from './iron-label.tsx';
import { GOES, MarkerForm } from './marker-form.tsx';
import { UndoBar } from './undo-bar.tsx';
import { begun } from './words.ts';
import './wearer.css';

/** A cloth in one line. */
function clothWords({ fibre, width, stretch, oneWay, thread, needle }: Cloth, marking: Marking): string {
  const gives =
    stretch.across === 0 && stretch.along === 0
      ? 'does not stretch'
      : `stretches ${stretch.across} % across, ${stretch.along} % along`;
  return begun(
    [
      fibre,
      `${writeLength(width, marking).text} wide`,
      gives,
      ...(oneWay ? ['all one way'] : []),
      `thread ${thread}`,
      `needle ${needle}`,
    ].join(', '),
  );
}

/** Cloths and markers. */
export function ClothsPage({ session }: PageProps) {
  const outfit = session.outfit.value;
  return outfit ? <Cloths session={session} outfit={outfit} /> : <NotThere session={session} what="" />;
}

function Cloths({ session, outfit }: { readonly session: Session; readonly outfit: Outfit }) {
  const inWork = (kind: string, id: string): boolean =>
    Object.keys(recallDraft(`${session.id}/${kind}/${id}`)).length > 0;
  const cloth = useSignal(['', ...outfit.cloths.map(({ id }) => id)].find((id) => inWork('cloth', id)));
  const marker = useSignal(['', ...outfit.markers.map(({ id }) => id)].find((id) => inWork('marker', id)));
  const open = (kind: 'cloth' | 'marker', id: string | undefined): void => {
    const of = kind === 'cloth' ? cloth : marker;
    const was = of.peek();
    of.value = id;
    focusOn(
      id !== undefined
        ? `[data-part="${kind}-form"]`
        : was
          ? `[data-${kind}="${was}"] button`
          : `[data-part="add-${kind}"]`,
    );
  };
  const refused = useSignal<{ readonly id: string; readonly say: string } | undefined>(undefined);
  const marking = markingFor(session.units.value);
  const remove = (id: string, name: string, made: Result<Outfit, readonly Problem[]>): void => {
    refused.value = made.ok ? undefined : { id, say: made.error.map(writeProblem).join('. ') };
    if (made.ok) ask(session, made.value, `removed ${name}`);
  };
  const row = (id: string, name: string, words: ComponentChildren, change: () => void, take: () => void) => (
    <>
      <b>{name}</b>
      {words}
      {refused.value?.id === id && (
        <p class="fault" role="alert" data-part="in-use">
          <Sign name="caution" />
          <span>{refused.value.say}</span>
        </p>
      )}
      <div class="choice">
        <button type="button" class="plain" onClick={change}>
          Change<span class="unseen"> {name}</span>
        </button>
        <button type="button" class="plain" onClick={take}>
          Remove<span class="unseen"> {name}</span>
        </button>
      </div>
    </>
  );
  return (
    <main class="page describe" data-part="cloths">
      <Head session={session} up={[{ say: outfit.name, href: hashOf(session) }]} title="Cloths and markers" />
      <section>
        <h2>Cloths</h2>
        <ul class="told">
          {outfit.cloths.map((one) => (
            <li key={one.id} class="boxed told-row" data-cloth={one.id}>
              {cloth.value === one.id ? (
                <ClothForm
                  {...{ session, outfit }}
                  cloth={one}
                  onClose={() => {
                    open('cloth', undefined);
                  }}
                />
              ) : (
                row(
                  `cloth ${one.id}`,
                  one.name,
                  <p class="with-label">
                    <IronLabel iron={one.iron} />
                    <span>{clothWords(one, marking)}</span>
                  </p>,
                  () => {
                    open('cloth', one.id);
                  },
                  () => remove(`cloth ${one.id}`, one.name, removeCloth(outfit, one.id)),
                )
              )}
            </li>
          ))}
        </ul>
        {cloth.value === '' ? (
          <ClothForm
            {...{ session, outfit }}
            cloth={undefined}
            onClose={() => {
              open('cloth', undefined);
            }}
          />
        ) : (
          <button
            type="button"
            class="plain"
            data-part="add-cloth"
            onClick={() => {
              open('cloth', '');
            }}
          >
            Add a cloth
          </button>
        )}
      </section>
      <section>
        <h2>Markers</h2>
        <ul class="told">
          {outfit.markers.map((one) => (
            <li key={one.id} class="boxed told-row" data-marker={one.id}>
              {marker.value === one.id ? (
                <MarkerForm
                  {...{ session, outfit }}
                  marker={one}
                  onClose={() => {
                    open('marker', undefined);
                  }}
                />
              ) : (
                row(
                  `marker ${one.id}`,
                  one.name,
                  <p>{begun(GOES[one.kind])}</p>,
                  () => {
                    open('marker', one.id);
                  },
                  () => remove(`marker ${one.id}`, one.name, removeMarker(outfit, one.id)),
                )
              )}
            </li>
          ))}
        </ul>
        {marker.value === '' ? (
          <MarkerForm
            {...{ session, outfit }}
            marker={undefined}
            onClose={() => {
              open('marker', undefined);
            }}
          />
        ) : (
          <button
            type="button"
            class="plain"
            data-part="add-marker"
            onClick={() => {
              open('marker', '');
            }}
          >
            Add a marker
          </button>
        )}
      </section>
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
