import { useMemo } from 'preact/hooks';
import { entryCalled } from '../../fitting/entries/all.ts';
import type { Place, View } from '../../fitting/entry.ts';
import { entriesFor } from '../../fitting/here.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { Sign } from '../../ui/signs.tsx';
import { useDraft } from '../describe/drafts.ts';
import { focusOn } from '../describe/focus-on.ts';
import { Head, hashOf } from '../describe/head.tsx';
import { begun } from '../describe/words.ts';
import { HouseNotice } from '../house.tsx';
import type { Session } from '../session.ts';
import { BodyMap } from './body-map.tsx';
import { Checks } from './checks.tsx';
import { openNotes } from './cure-notes.ts';
import { NoteList } from './note-list.tsx';
import { canBeReckoned, lastHere, takeBack, tryHash } from './notes.ts';

const VIEWS: readonly View[] = ['front', 'back', 'side'];

/** What every page about a garment that is tried on is handed. */
export interface TriedProps {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
}

/** Ways up from a page: to the garment, and past it where there are several. */
export const upFrom = ({ session, outfit }: TriedProps): readonly { say: string; href: string }[] =>
  outfit.garments.length > 1
    ? [{ say: 'All garments', href: tryHash(session) }]
    : [{ say: outfit.name, href: hashOf(session) }];

/** A garment that is tried on: what to look at first, the body to touch, and what was seen so far. */
export function GarmentPage(props: TriedProps) {
  const { session, garment } = props;
  const chosen = useDraft(`${session.id}/try/${garment.id}/ view`);
  const entries = useMemo(() => entriesFor(garment), [garment]);
  const has = (one: View): boolean => entries.some(({ views }) => views.includes(one));
  const view = VIEWS.find((one) => one === chosen.written.value.view) ?? VIEWS.find(has) ?? 'front';
  const here = new Set(entries.flatMap(({ place, views }) => (views.includes(view) ? [place] : [])));
  const open = openNotes(session.progress.value, garment.id);
  const noted = new Map<Place, number>();
  for (const note of open) {
    const place = entryCalled(note.entry)?.place;
    if (place !== undefined) noted.set(place, (noted.get(place) ?? 0) + 1);
  }
  return (
    <main class="page try" data-part="try-on">
      <Head session={session} up={upFrom(props)} title={`${garment.name}, tried on`} bench />
      {entries.length === 0 ? (
        <p>
          There is nothing to see on it yet. Once its pieces are described, the places to look at stand here.
        </p>
      ) : (
        <>
          <Checks session={session} garment={garment} />
          <section aria-label="Where do you see something?">
            <h2>Where do you see something?</h2>
            <div class="views">
              {VIEWS.filter(has).map((one) => (
                <button
                  key={one}
                  type="button"
                  class="plain"
                  aria-pressed={one === view}
                  onClick={() => chosen.write('view', one)}
                >
                  {begun(one)}
                </button>
              ))}
            </div>
            <BodyMap
              view={view}
              here={here}
              noted={noted}
              onPlace={(place) => {
                location.hash = tryHash(session, garment.id, 'at', view, place);
              }}
            />
            <a class="plain" href={tryHash(session, garment.id, 'all')} data-part="to-all">
              All that can be seen
            </a>
          </section>
        </>
      )}
      <NoteList session={session} garment={garment} />
      <HouseNotice />
      <Foot {...props} />
    </main>
  );
}

/** What comes next stays under the thumb: taking back the last note, and the cure. */
function Foot({ session, garment }: TriedProps) {
  const progress = session.progress.value;
  const last = lastHere(progress);
  const ready = openNotes(progress, garment.id).filter((note) =>
    canBeReckoned(note, entryCalled(note.entry)),
  );
  if (!last && ready.length === 0) return null;
  return (
    <div class="try-foot">
      {last && (
        <button
          type="button"
          class="plain"
          data-part="undo"
          onClick={() => {
            void takeBack(session);
            focusOn();
          }}
        >
          <Sign name="undo" />
          <span>
            Undo: <b>{last.say}</b>
          </span>
        </button>
      )}
      {ready.length > 0 && (
        <a class="main" href={tryHash(session, garment.id, 'cure')} data-part="find-cure">
          <span>Find the cure</span>
          <small>{ready.length === 1 ? 'for 1 note' : `for ${ready.length} notes`}</small>
        </a>
      )}
    </div>
  );
}
