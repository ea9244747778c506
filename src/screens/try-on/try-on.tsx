/**
 * A try-on: what is seen at it, and what cures that. Read and touched with one hand while the garment is worn, or by
 * somebody beside it.
 *
 * What others may hold on to: `main[data-part="try-garments"]`; `main[data-part="try-on"]` with `[data-part="checks"]`,
 * the buttons of the views, `[data-place]` for each place, `li[data-note]` with `data-state`, the button
 * `[data-part="undo"]` and the link `[data-part="find-cure"]`; `main[data-part="seen-here"]` and
 * `main[data-part="all-seen"]` with one `a[data-entry]` an entry; `main[data-part="note"]` with `[data-field="amount"]`,
 * `[data-cause]`, `[data-part="photo"]` and the button `Note it`.
 */

import { entryCalled } from '../../fitting/entries/all.ts';
import type { Entry, Place, View } from '../../fitting/entry.ts';
import { NotThere } from '../describe/head.tsx';
import { later } from '../later.tsx';
import type { Session } from '../session.ts';
import { AllSeen, SeenHere } from './entry-list.tsx';
import { GarmentPage } from './garment-page.tsx';
import { GarmentsPage } from './garments-page.tsx';
import { NotePage } from './note-page.tsx';
import { noteCalled } from './notes.ts';
import '../reckoner/reckoner.css';
import '../describe/describe.css';
import './try-on.css';

const CurePage = later<{ readonly session: Session; readonly garment: string }>(async () => {
  const { CurePage: page } = await import('./cure.tsx');
  return { default: page };
});

const isView = (text: string | undefined): text is View =>
  text === 'front' || text === 'back' || text === 'side';

/**
 * The pages by their address: nothing for the garments; `<garment>` and under it `at/<view>/<place>` for what can be seen
 * there, `all`, `see/<entry>` to note it, `kept/<note>` to look at a note again (`kept/<note>/cure` from the cure and back to
 * it), and `cure`.
 */
export default function TryOn({
  session,
  at,
}: {
  readonly session: Session;
  readonly at: readonly string[];
}) {
  const outfit = session.outfit.value;
  if (!outfit) return <NotThere session={session} what="" />;
  const [id = outfit.garments.length === 1 ? outfit.garments[0]?.id : undefined, what, which = '', place] =
    at;
  if (id === undefined) return <GarmentsPage session={session} outfit={outfit} />;
  const garment = outfit.garments.find((one) => one.id === id);
  if (!garment) return <NotThere session={session} what="This garment is not in this outfit" />;
  const props = { session, outfit, garment };
  if (what === 'cure') return <CurePage session={session} garment={id} />;
  if (what === 'all') return <AllSeen {...props} />;
  if (what === 'at' && isView(which)) return <SeenHere {...props} view={which} place={place as Place} />;
  if (what === 'see' || what === 'kept') {
    const note = what === 'kept' ? noteCalled(session.progress.value, which) : undefined;
    const entry: Entry | undefined = entryCalled(note?.entry ?? which);
    return entry && (what === 'see' || note) ? (
      <NotePage key={at.join('/')} {...props} entry={entry} note={note} toCure={place === 'cure'} />
    ) : (
      <NotThere
        session={session}
        what={note ? 'This version does not know what was seen' : 'This is not in the list'}
      />
    );
  }
  return <GarmentPage key={id} {...props} />;
}
