import type { Outfit } from '../../outfit/outfit.ts';
import { Head, hashOf } from '../describe/head.tsx';
import { HouseNotice } from '../house.tsx';
import type { Session } from '../session.ts';
import { openNotes } from './cure-notes.ts';
import { NoteList } from './note-list.tsx';
import { tryHash } from './notes.ts';

/** Which garment is tried on, and what was seen so far. */
export function GarmentsPage({ session, outfit }: { readonly session: Session; readonly outfit: Outfit }) {
  const progress = session.progress.value;
  return (
    <main class="page try" data-part="try-garments">
      <Head
        session={session}
        up={[{ say: outfit.name, href: hashOf(session) }]}
        title="Which garment is tried on?"
        bench
      />
      {outfit.garments.length === 0 && <p>There is no garment in this outfit yet.</p>}
      <ul class="ways">
        {outfit.garments.map(({ id, name }) => {
          const open = openNotes(progress, id).length;
          return (
            <li key={id}>
              <a class="way" href={tryHash(session, id)} data-garment={id}>
                <b>{name}</b>
                <span>{open === 0 ? 'nothing open' : `${open} noted, still open`}</span>
              </a>
            </li>
          );
        })}
      </ul>
      {outfit.garments.map((garment) => (
        <NoteList key={garment.id} session={session} garment={garment} named />
      ))}
      <HouseNotice />
    </main>
  );
}
