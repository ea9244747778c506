/**
 * The outfit as a whole: its garments, and for whom and of what they are made.
 *
 * What others may hold on to: `main[data-part="overview"]`; one `a[data-garment]` a garment; the button
 * `Add a garment` and its form `[data-part="add-garment"]`, which stands open while there is no garment; the links `About`, `Cloths and markers`, a link a wearer and
 * `Add a wearer`; the button `[data-part="save-description"]`; `[data-part="undo-bar"]` as on every page here.
 */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { addGarment } from '../../outfit/changing/garments.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { writeOutfitFile } from '../../outfit/writing.ts';
import { HouseNotice } from '../house.tsx';
import { dayWords } from '../outfits/outfit-list.ts';
import { fileName, offerFile } from '../paper/save-file.ts';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import type { PageProps } from './describe.tsx';
import { useDraft } from './drafts.ts';
import { Head, hashOf, NotThere } from './head.tsx';
import { LeftOut } from './left-out.tsx';
import { TextBox } from './text-box.tsx';
import { UndoBar } from './undo-bar.tsx';
import { WearerBox } from './wearer-box.tsx';
import { garmentWords } from './words.ts';

const today = (): string => new Date().toISOString().slice(0, 10);

/** The outfit: its garments, cloths, wearers. */
export function OverviewPage({ session }: PageProps) {
  const outfit = session.outfit.value;
  if (!outfit) return <NotThere session={session} what="" />;
  const steps = session.running.value?.steps.values() ?? [];
  const all = [...steps];
  return (
    <main class="page describe" data-part="overview">
      <Head session={session} up={[{ say: 'Outfits', href: '#/' }]} title={outfit.name} bench />
      <LeftOut session={session} />
      <p>
        {outfit.event.name}, {dayWords(outfit.event.date, today())}
      </p>
      <section>
        <h2>Garments</h2>
        <ul class="ways">
          {outfit.garments.map((garment) => (
            <li key={garment.id}>
              <a class="way" data-garment={garment.id} href={hashOf(session, 'garment', garment.id)}>
                <b>{garment.name}</b>
                <span>{garmentWords(garment, outfit, all)}</span>
              </a>
            </li>
          ))}
        </ul>
        <AddGarment session={session} outfit={outfit} />
      </section>
      <section>
        <h2>Made for, and made of</h2>
        <ul class="ways">
          {outfit.wearers.map((wearer) => (
            <li key={wearer.id}>
              <a class="way" href={hashOf(session, 'wearer', wearer.id)}>
                <b>{wearer.name}</b>
                <span>measures</span>
              </a>
            </li>
          ))}
          <li>
            <a class="way" href={hashOf(session, 'wearer')}>
              <b>Add a wearer</b>
              <span>measures, from which figures are proposed</span>
            </a>
          </li>
          <li>
            <a class="way" href={hashOf(session, 'cloths')}>
              <b>Cloths and markers</b>
              <span>{outfit.cloths.map(({ name }) => name).join(', ')}</span>
            </a>
          </li>
          <li>
            <a class="way" href={hashOf(session, 'about')}>
              <b>About</b>
              <span>name, occasion, day, inches or millimetres</span>
            </a>
          </li>
        </ul>
      </section>
      {outfit.garments.length > 0 && (
        <section>
          <h2>As a file</h2>
          <button
            type="button"
            class="plain"
            data-part="save-description"
            onClick={() =>
              offerFile(
                new File([writeOutfitFile(outfit)], fileName(outfit.name, 'json'), {
                  type: 'application/json',
                }),
              )
            }
          >
            Save the description
          </button>
          <p class="quiet">
            What the outfit is, to read or change by hand or to give to somebody. What you have sewn is in the
            copy on the outfits page.
          </p>
        </section>
      )}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}

function AddGarment({ session, outfit }: { readonly session: Session; readonly outfit: Outfit }) {
  const { written, write, clear } = useDraft(`${outfit.id}/add-garment`);
  const { name = '', wearer = outfit.wearers.length === 1 ? outfit.wearers[0]?.id : '' } = written.value;
  const fault = useSignal<string | undefined>(undefined);
  const form = useRef<HTMLFormElement>(null);
  const first = outfit.garments.length === 0;
  // Nothing else can be done with an empty outfit.
  const open = useSignal(first || name.trim() !== '');
  if (!open.value) {
    return (
      <button
        type="button"
        class="plain"
        onClick={() => {
          open.value = true;
          requestAnimationFrame(() => form.current?.querySelector('input')?.focus());
        }}
      >
        Add a garment
      </button>
    );
  }
  const add = (submitted: Event): void => {
    submitted.preventDefault();
    if (name.trim() === '') {
      fault.value = 'Give it a name, such as “Shirt”.';
      form.current?.querySelector('input')?.focus();
      return;
    }
    const made = addGarment(outfit, { name: name.trim(), ...(wearer ? { wearer } : {}) });
    ask(session, made.outfit, `added ${name.trim()}`, () => {
      clear();
      go({ screen: 'outfit', outfit: session.id, at: ['garment', made.garment] });
    });
  };
  return (
    <form ref={form} class="fields boxed" data-part="add-garment" aria-label="Add a garment" onSubmit={add}>
      <TextBox
        name="name"
        label="What it is"
        means="Shirt, waistcoat, petticoat."
        text={name}
        fault={name.trim() === '' ? fault.value : undefined}
        onText={(text) => write('name', text)}
      />
      <WearerBox wearers={outfit.wearers} wearer={wearer ?? ''} onWearer={(id) => write('wearer', id)} />
      <div class="choice field-wide">
        <button type="submit" class="main">
          Add it
        </button>
        {!first && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              clear();
              open.value = false;
            }}
          >
            Leave it
          </button>
        )}
      </div>
    </form>
  );
}
