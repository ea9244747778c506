import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { type PartList, removePart, takeReady } from '../../outfit/changing/parts.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { unitCalled } from '../../outfit/units/all.ts';
import { Sign } from '../../ui/signs.tsx';
import { HouseNotice } from '../house.tsx';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { OfferBefore } from './begun-before.tsx';
import { ask, problem } from './change.ts';
import { focusOn } from './focus-on.ts';
import { Head, hashOf } from './head.tsx';
import { TakeOffSheet } from './take-off.tsx';
import { UndoBar } from './undo-bar.tsx';
import type { PartForm } from './use-part.ts';
import { unitFaultWords } from './words.ts';

/** Goes to the page of a garment. */
export const toGarment = (session: Session, garment: Garment): void =>
  go({ screen: 'outfit', outfit: session.id, at: ['garment', garment.id] });

/** The page of one part: head, form with its button, where it came from, how to take it out. */
export function PartFrame<L extends PartList>(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  /** `piece`, `work`, `join`, `try-on`. */
  readonly kind: string;
  readonly title: string;
  readonly part: { readonly id: string; readonly name: string } | undefined;
  readonly form: PartForm<L>;
  /** On the button: `Put it on`; undefined while there is nothing that could be handed in. */
  readonly word: string | undefined;
  readonly onSave: () => void;
  /** Shown above the form. */
  readonly above?: ComponentChildren;
  readonly children: ComponentChildren;
}) {
  const { session, outfit, garment, kind, title, part, form, word, onSave, above, children } = props;
  const root = useRef<HTMLFormElement>(null);
  const pressed = useSignal(0);
  useEffect(() => {
    if (pressed.value === 0) return;
    const fault = root.current?.querySelector<HTMLElement>('.fault');
    const box = fault?.closest<HTMLElement>('[data-field]') ?? fault;
    box?.scrollIntoView?.({ block: 'center' });
    box?.querySelector<HTMLElement>('input, textarea, select, button')?.focus({ preventScroll: true });
  }, [pressed.value]);
  const asItWas = (): void => {
    form.clear();
    focusOn('[data-part="keep"]');
  };
  const press = (): void => {
    onSave();
    pressed.value += 1;
  };
  return (
    <main class="page describe part-page" data-part={kind}>
      <Head
        session={session}
        up={[{ say: garment.name, href: hashOf(session, 'garment', garment.id) }]}
        title={title}
      />
      {part && <Origin session={session} outfit={outfit} garment={garment} part={part} />}
      {form.before && (
        <OfferBefore
          before={form.before}
          garment={garment}
          onTaken={() => root.current?.closest('main')?.querySelector('h1')?.focus({ preventScroll: true })}
        />
      )}
      {above}
      <form
        ref={root}
        class="fields"
        aria-label={title}
        onSubmit={(event) => {
          event.preventDefault();
          press();
        }}
      >
        {children}
        <div class={form.touched ? 'field-wide hand-in put-on' : 'field-wide hand-in'}>
          {form.general.map((say) => (
            <p key={say} class="fault" role="alert" data-part="fault">
              <Sign name="caution" />
              <span>{say}</span>
            </p>
          ))}
          <div class="choice">
            {word !== undefined && (
              <button type="submit" class="main" data-part="keep">
                {word}
              </button>
            )}
            {form.touched && (
              <button type="button" class="plain" data-part="as-it-was" onClick={asItWas}>
                {part ? 'As it was' : 'Start again'}
              </button>
            )}
          </div>
        </div>
      </form>
      {part && <TakeOut session={session} outfit={outfit} garment={garment} part={part} clear={form.clear} />}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}

/** Which ready-made unit brought a part, and the way back to it. */
function Origin(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly part: { readonly id: string; readonly name: string };
}) {
  const { session, outfit, garment, part } = props;
  const use = garment.units.find(({ brought }) => brought.includes(part.id));
  if (!use) return <p class="quiet">Your own.</p>;
  const own = use.own.includes(part.id);
  const known = unitCalled(use.unit) !== undefined;
  const link = <a href={hashOf(session, 'garment', garment.id, 'unit', use.id)}>{use.name}</a>;
  const back = (): void => {
    const made = takeReady(outfit, garment.id, part.id);
    if (made.ok) ask(session, made.value, `took the ready-made ${part.name} again`, focusOn);
    else problem.value = unitFaultWords(made.error);
  };
  return (
    <div class="origin" data-part="origin">
      <p>
        {own ? 'Changed by hand, your own; first brought by ' : 'Brought by '}
        {known ? link : use.name}.{' '}
        <span class="quiet">
          {own
            ? 'It is left alone when that is changed.'
            : 'Changed here it becomes your own, and is left alone when that is changed.'}
        </span>
      </p>
      {own && known && (
        <button type="button" class="plain" data-part="take-ready" onClick={back}>
          Take the ready-made one again
        </button>
      )}
    </div>
  );
}

function TakeOut(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly part: { readonly id: string; readonly name: string };
  readonly clear: () => void;
}) {
  const { session, outfit, garment, part, clear } = props;
  const taking = useSignal<ReturnType<typeof removePart> | undefined>(undefined);
  return (
    <section>
      <div class="choice">
        <button
          type="button"
          class="plain"
          data-part="take-out"
          onClick={() => {
            taking.value = removePart(outfit, garment.id, part.id);
          }}
        >
          Take it out
        </button>
      </div>
      {taking.value && (
        <TakeOffSheet
          name={part.name}
          way="out"
          also={taking.value.also}
          onTake={() => {
            const after = removePart(outfit, garment.id, part.id).outfit;
            ask(session, after, `took out ${part.name}`, () => {
              clear();
              toGarment(session, garment);
            });
          }}
          onClose={() => {
            taking.value = undefined;
          }}
        />
      )}
    </section>
  );
}
