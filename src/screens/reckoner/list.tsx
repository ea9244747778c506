import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { RECKONINGS, reckoningOf } from '../../reckon/all.ts';
import type { Reckoning } from '../../reckon/reckoning.ts';
import { SheetPicture } from '../../ui/sheet-drawing.tsx';
import { HouseNotice, HouseTrouble } from '../house.tsx';
import { writeHash } from '../route.ts';
import { recent } from './entries.ts';
import { beginSamples, samples, wantSample } from './pictures.ts';
import { grouped, search } from './search.ts';

/** How the list stood when it was left for one reckoning. */
let left: { readonly scrolled: number; readonly id: string; readonly query: string } | undefined;

/** All reckonings with their pictures, to choose one. */
export function ReckoningList({ unknown = false }: { readonly unknown?: boolean }) {
  const query = useSignal(left?.query ?? '');
  const room = useRef<HTMLElement>(null);
  useEffect(beginSamples, []);
  useLayoutEffect(() => {
    document.title = 'Reckoner · Slipbaste';
    const came = left;
    left = undefined;
    if (came) {
      // Back to where the maker was, and the keyboard with her.
      const link = room.current?.querySelector<HTMLElement>(
        `.chosen [data-reckoning="${CSS.escape(came.id)}"]`,
      );
      link?.focus({ preventScroll: true });
    }
    scrollTo(0, came?.scrolled ?? 0);
    return () => {
      document.title = 'Slipbaste';
    };
  }, []);
  const leave = (id: string): void => {
    left = { scrolled: scrollY, id, query: query.value };
  };
  const last = useMemo(() => recent().flatMap((id) => reckoningOf(id) ?? []), []);
  const searching = query.value.trim() !== '';
  // Without a search the names of the figures do not matter, and the list stays as it is while they come in.
  const found = searching
    ? search(RECKONINGS, query.value, (id) => samples.value.get(id)?.names ?? '')
    : RECKONINGS;
  return (
    <main class="page" data-part="reckonings" ref={room}>
      <nav class="choice" aria-label="Where to go">
        <a class="plain" href="#/">
          Outfits
        </a>
      </nav>
      <h1>Reckoner</h1>
      <HouseTrouble />
      {unknown && <p role="status">There is no reckoning of that name; choose one of these.</p>}
      <label class="search">
        <span>Look for</span>
        <input
          type="search"
          class="field"
          data-part="search"
          value={query.value}
          placeholder="tucks, frill, bias…"
          autocomplete="off"
          spellcheck={false}
          enterkeyhint="search"
          onInput={(event) => {
            query.value = event.currentTarget.value;
          }}
        />
      </label>
      <p class="unseen" role="status">
        {searching ? `${found.length} found` : ''}
      </p>
      <div class="chosen">
        {found.length === 0 && (
          <p>
            Nothing here goes by “{query.value.trim()}”. One plain word finds most, such as tuck, hole, frill
            or leg.
          </p>
        )}
        {searching ? (
          <Entries of={found} onLeave={leave} />
        ) : (
          <>
            {last.length > 0 && <Group name="Used last" of={last} onLeave={leave} />}
            {[...grouped(found)].map(([name, of]) => (
              <Group key={name} name={name} of={of} onLeave={leave} />
            ))}
          </>
        )}
      </div>
      <HouseNotice />
    </main>
  );
}

interface SomeEntries {
  readonly of: readonly Reckoning[];
  readonly onLeave: (id: string) => void;
}

function Group({ name, of, onLeave }: SomeEntries & { readonly name: string }) {
  return (
    <section>
      <h2>{name}</h2>
      <Entries of={of} onLeave={onLeave} />
    </section>
  );
}

function Entries({ of, onLeave }: SomeEntries) {
  return (
    <ul class="reckonings">
      {of.map(({ id, name, tells }) => (
        <li key={id}>
          <a
            class="reckoning-link"
            data-reckoning={id}
            href={writeHash({ screen: 'reckoner', reckoning: id })}
            onClick={() => onLeave(id)}
          >
            <Picture id={id} />
            <span class="reckoning-words">
              <b>{name}</b>
              <span>{tells}</span>
            </span>
          </a>
        </li>
      ))}
    </ul>
  );
}

/** The picture of a reckoning, drawn when its place comes into sight. */
function Picture({ id }: { readonly id: string }) {
  const seen = useSignal(false);
  const place = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const here = place.current;
    if (!here || typeof IntersectionObserver !== 'function') {
      seen.value = true;
      return undefined;
    }
    const watching = new IntersectionObserver(
      (sights) => {
        if (!sights.some((one) => one.isIntersecting)) return;
        watching.disconnect();
        wantSample(id);
        seen.value = true;
      },
      { rootMargin: '200px' },
    );
    watching.observe(here);
    return () => watching.disconnect();
  }, [id]);
  const drawing = seen.value ? samples.value.get(id)?.drawing : undefined;
  const picture = useMemo(() => drawing && <SheetPicture sheet={drawing} />, [drawing]);
  return (
    <span class="reckoning-picture" ref={place}>
      {picture}
    </span>
  );
}
