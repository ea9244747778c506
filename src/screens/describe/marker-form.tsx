import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import type { ChoiceField } from '../../fields/fields.ts';
import { freshId } from '../../outfit/changing/new-outfit.ts';
import { putMarker } from '../../outfit/changing/whole.ts';
import type { Marker, Outfit } from '../../outfit/outfit.ts';
import { FieldBox } from '../reckoner/field.tsx';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import { useFilled } from './filled.ts';
import { TextBox } from './text-box.tsx';

/** How a marker’s marks go away, in plain words. */
export const GOES: Readonly<Record<Marker['kind'], string>> = {
  chalk: 'brushes off, as chalk does',
  thread: 'is pulled out, as thread tacks are',
  'heat-fading': 'goes under the iron',
  'air-fading': 'fades by itself within days',
  'water-fading': 'goes with water',
};
const KINDS: readonly Marker['kind'][] = ['chalk', 'thread', 'heat-fading', 'air-fading', 'water-fading'];
const KIND: ChoiceField = {
  kind: 'choice',
  label: 'How its mark goes away',
  means: 'Marks that heat, air or water take are put on again in time.',
  options: KINDS.map((value) => ({ value, label: GOES[value] })),
  start: 'chalk',
};

/** A marker, added or changed. */
export function MarkerForm(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly marker: Marker | undefined;
  readonly onClose: () => void;
}) {
  const { session, outfit, marker, onClose } = props;
  const stands = { name: marker?.name ?? '', kind: marker?.kind ?? KIND.start };
  const { text, write, clear } = useFilled(`${session.id}/marker/${marker?.id ?? ''}`, stands, 'mm', []);
  const form = useRef<HTMLFormElement>(null);
  const asked = useSignal(false);
  const name = text('name').trim();
  const close = (): void => {
    clear();
    onClose();
  };
  return (
    <form
      ref={form}
      noValidate
      class="fields boxed"
      data-part="marker-form"
      aria-label={marker ? marker.name : 'Another marker'}
      onSubmit={(event) => {
        event.preventDefault();
        asked.value = true;
        if (name === '') {
          form.current?.querySelector('input')?.focus();
          return;
        }
        const id =
          marker?.id ??
          freshId(
            outfit.markers.map((one) => one.id),
            name,
          );
        const kind = KINDS.find((one) => one === text('kind')) ?? 'chalk';
        ask(session, putMarker(outfit, { id, name, kind }), `${marker ? 'changed' : 'added'} ${name}`, close);
      }}
    >
      <TextBox
        name="name"
        label="Name"
        means="As you speak of it: “blue pen”."
        text={text('name')}
        fault={asked.value && name === '' ? 'Give it a name.' : undefined}
        onText={(now) => write('name', now)}
      />
      <FieldBox
        name="kind"
        field={KIND}
        text={text('kind')}
        fault={undefined}
        marking={{ unit: 'mm', step: 1 }}
        onText={(now) => write('kind', now)}
      />
      <div class="choice field-wide">
        <button type="submit" class="main">
          {marker ? 'Keep this marker' : 'Add this marker'}
        </button>
        <button type="button" class="plain" onClick={close}>
          {marker ? 'Leave it as it was' : 'Leave it'}
        </button>
      </div>
    </form>
  );
}
