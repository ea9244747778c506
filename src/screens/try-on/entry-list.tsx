import { useMemo } from 'preact/hooks';
import type { Entry, Place, View } from '../../fitting/entry.ts';
import { entriesFor } from '../../fitting/here.ts';
import { useDraft } from '../describe/drafts.ts';
import { Head } from '../describe/head.tsx';
import { begun } from '../describe/words.ts';
import type { TriedProps } from './garment-page.tsx';
import { lookFor, tryHash } from './notes.ts';

const back = ({ session, garment }: TriedProps) => [
  { say: garment.name, href: tryHash(session, garment.id) },
];

function Entries({ session, garment, of }: TriedProps & { readonly of: readonly Entry[] }) {
  return (
    <ul class="ways entries">
      {of.map(({ id, seen }) => (
        <li key={id}>
          <a class="way" href={tryHash(session, garment.id, 'see', id)} data-entry={id}>
            <b>{seen}</b>
          </a>
        </li>
      ))}
    </ul>
  );
}

/** What can be seen at a place from one side; what shows from another side stands below it. */
export function SeenHere(props: TriedProps & { readonly view: View; readonly place: Place }) {
  const { session, garment, view, place } = props;
  const all = useMemo(() => entriesFor(garment, place), [garment, place]);
  const here = all.filter(({ views }) => views.includes(view));
  const elsewhere = all.filter(({ views }) => !views.includes(view));
  return (
    <main class="page try" data-part="seen-here">
      <Head session={session} up={back(props)} title={`${begun(place)}, ${view}`} />
      {all.length === 0 && <p>Nothing is known here that could be seen at this place.</p>}
      {here.length > 0 && <p>What do you see?</p>}
      <Entries {...props} of={here} />
      {elsewhere.length > 0 && (
        <section>
          <h2>There from another side</h2>
          <Entries {...props} of={elsewhere} />
        </section>
      )}
      <a class="plain" href={tryHash(session, garment.id, 'all')} data-part="to-all">
        Something else
      </a>
    </main>
  );
}

/** All that can be seen on the garment, by place, with a box to look for words. */
export function AllSeen(props: TriedProps) {
  const { session, garment } = props;
  const looked = useDraft(`${session.id}/try/${garment.id}/ search`);
  const query = looked.written.value.query ?? '';
  const all = useMemo(() => entriesFor(garment), [garment]);
  const found = lookFor(all, query);
  const places = [...new Set(found.map(({ place }) => place))];
  return (
    <main class="page try" data-part="all-seen">
      <Head session={session} up={back(props)} title="All that can be seen" />
      <label class="search">
        <span>Look for</span>
        <input
          type="search"
          class="field"
          data-part="search"
          value={query}
          placeholder="folds, tight, tucks…"
          autocomplete="off"
          enterkeyhint="search"
          onInput={(event) => looked.write('query', event.currentTarget.value)}
        />
      </label>
      <p role="status" class={found.length > 0 ? 'unseen' : ''}>
        {query.trim() !== '' &&
          (found.length > 0
            ? `${found.length} found`
            : `Nothing goes by “${query.trim()}” here. One plain word finds most, such as tight or folds.`)}
      </p>
      {places.map((place) => (
        <section key={place}>
          <h2>{begun(place)}</h2>
          <Entries {...props} of={found.filter((entry) => entry.place === place)} />
        </section>
      ))}
    </main>
  );
}
