/**
 * Who wears it: a list of wearers, or one of them with their measures.
 *
 * What others may hold on to: `main[data-part="wearers"]` with the form `[data-part="add-wearer"]`;
 * `main[data-part="wearer"]` with one `li[data-measure]` a measure, `[data-part="doubt"]`, `[data-part="from-reckoner"]`,
 * and the buttons `Keep the measures`, `Copy as another wearer` and `Remove this wearer`.
 */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { freshId } from '../../outfit/changing/new-outfit.ts';
import { keepWearer, removeWearer } from '../../outfit/changing/whole.ts';
import type { Outfit, Wearer } from '../../outfit/outfit.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { HouseNotice } from '../house.tsx';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import type { PageProps } from './describe.tsx';
import { useDraft } from './drafts.ts';
import { Head, hashOf, NotThere } from './head.tsx';
import { MeasuresForm } from './measures-form.tsx';
import { TextBox } from './text-box.tsx';
import { UndoBar } from './undo-bar.tsx';
import { so } from './words.ts';
import './wearer.css';

/** A wearer and their measures. */
export function WearerPage({ session, wearer }: PageProps & { readonly wearer: string | undefined }) {
  const outfit = session.outfit.value;
  if (!outfit) return <NotThere session={session} what="" />;
  if (wearer === undefined) return <Wearers session={session} outfit={outfit} />;
  const found = outfit.wearers.find(({ id }) => id === wearer);
  if (!found) return <NotThere session={session} what="This wearer is not in this outfit" />;
  return <OneWearer session={session} outfit={outfit} wearer={found} />;
}

interface Shown {
  readonly session: Session;
  readonly outfit: Outfit;
}

/** Puts a wearer in and goes to their page. */
function put({ session, outfit }: Shown, wearer: Omit<Wearer, 'id'>, say: string, then?: () => void): void {
  const taken = outfit.wearers.map(({ id }) => id);
  const id = freshId(taken, wearer.name);
  ask(session, keepWearer(outfit, { id, ...wearer }), say, () => {
    then?.();
    go({ screen: 'outfit', outfit: session.id, at: ['wearer', id] });
  });
}

function Wearers({ session, outfit }: Shown) {
  const { written, write, clear } = useDraft(`${session.id}/add-wearer`);
  const fault = useSignal<string | undefined>(undefined);
  const form = useRef<HTMLFormElement>(null);
  const name = written.value.name ?? '';
  return (
    <main class="page describe" data-part="wearers">
      <Head session={session} up={[{ say: outfit.name, href: hashOf(session) }]} title="Who wears it" />
      {outfit.wearers.length === 0 && (
        <p>From the measures of a wearer the figures of bodices, sleeves, collars and legs are proposed.</p>
      )}
      <ul class="ways">
        {outfit.wearers.map((one) => (
          <li key={one.id}>
            <a class="way" href={hashOf(session, 'wearer', one.id)}>
              <b>{one.name}</b>
              <span>{so(Object.keys(one.measures).length, 'measure')}</span>
            </a>
          </li>
        ))}
      </ul>
      <form
        ref={form}
        class="fields boxed"
        data-part="add-wearer"
        aria-label="Add a wearer"
        onSubmit={(event) => {
          event.preventDefault();
          if (name.trim() === '') {
            fault.value = 'Give them a name, or a part: “the baker”.';
            form.current?.querySelector('input')?.focus();
            return;
          }
          put({ session, outfit }, { name: name.trim(), measures: {} }, `added ${name.trim()}`, clear);
        }}
      >
        <TextBox
          name="name"
          label="Name"
          means="The wearer’s, or that of the part."
          text={name}
          fault={name.trim() === '' ? fault.value : undefined}
          onText={(text) => write('name', text)}
        />
        <div class="choice field-wide">
          <button type="submit" class={outfit.wearers.length === 0 ? 'main' : 'plain'}>
            Add a wearer
          </button>
        </div>
      </form>
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}

function OneWearer({ session, outfit, wearer }: Shown & { readonly wearer: Wearer }) {
  const leaving = useSignal(false);
  const theirs = outfit.garments.filter((garment) => garment.wearer === wearer.id);
  const up = [
    { say: outfit.name, href: hashOf(session) },
    ...(outfit.wearers.length > 1 ? [{ say: 'All wearers', href: hashOf(session, 'wearer') }] : []),
  ];
  return (
    <main class="page describe measuring" data-part="wearer">
      <Head session={session} up={up} title={wearer.name} />
      <MeasuresForm session={session} outfit={outfit} wearer={wearer} />
      <section>
        <h2>Garments</h2>
        {theirs.length === 0 && (
          <p class="quiet">No garment is for {wearer.name} yet. Each garment’s page says who wears it.</p>
        )}
        <ul class="ways">
          {theirs.map(({ id, name }) => (
            <li key={id}>
              <a class="way" href={hashOf(session, 'garment', id)}>
                <b>{name}</b>
              </a>
            </li>
          ))}
        </ul>
      </section>
      <section class="choice">
        <button
          type="button"
          class="plain"
          onClick={() =>
            put(
              { session, outfit },
              { name: `${wearer.name}, copy`, measures: wearer.measures },
              `copied ${wearer.name}`,
            )
          }
        >
          Copy as another wearer
        </button>
        <a class="plain" href={hashOf(session, 'wearer')}>
          Add a wearer
        </a>
        <button
          type="button"
          class="plain"
          onClick={() => {
            leaving.value = true;
          }}
        >
          Remove this wearer
        </button>
      </section>
      {leaving.value && (
        <Sheet
          title={`Remove ${wearer.name}?`}
          onClose={() => {
            leaving.value = false;
          }}
        >
          <div class="asks" data-part="remove-wearer">
            <p>
              {theirs.length === 0
                ? 'No garment is for them.'
                : `${theirs.map(({ name }) => name).join(', ')}: the figures stay as they are, for nobody in particular.`}
            </p>
            <p class="quiet">One touch of undo brings all of it back.</p>
            <div class="choice">
              <button
                type="button"
                class="main"
                onClick={() => {
                  leaving.value = false;
                  ask(session, removeWearer(outfit, wearer.id), `removed ${wearer.name}`, () =>
                    go({ screen: 'outfit', outfit: session.id, at: ['wearer'] }),
                  );
                }}
              >
                Remove
              </button>
              <button
                type="button"
                class="plain"
                onClick={() => {
                  leaving.value = false;
                }}
              >
                Leave as it is
              </button>
            </div>
          </div>
        </Sheet>
      )}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
