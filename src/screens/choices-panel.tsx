import { type Signal, useSignal } from '@preact/signals';
import { useEffect, useId } from 'preact/hooks';
import { canBuzz, clicked } from '../ui/feedback.ts';
import { type KeyMeaning, keyName, writeKey } from '../ui/keys.ts';
import { buzz, ground, sound, taught, units } from './choices.ts';

function OneOf<T extends string>(props: {
  readonly name: string;
  readonly of: Signal<T>;
  readonly choices: readonly (readonly [T, string])[];
}) {
  const id = useId();
  return (
    <fieldset class="one-of" aria-labelledby={id}>
      <h3 id={id}>{props.name}</h3>
      <div class="choice">
        {props.choices.map(([value, label]) => (
          <button
            key={value}
            type="button"
            class="plain"
            aria-pressed={props.of.value === value}
            onClick={() => {
              props.of.value = value;
            }}
          >
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

function Switch(props: { readonly name: string; readonly of: Signal<boolean> }) {
  return (
    <button
      type="button"
      class="plain"
      aria-pressed={props.of.value}
      onClick={() => {
        props.of.value = !props.of.value;
        clicked({ sound: sound.value, buzz: buzz.value });
      }}
    >
      {props.name}: {props.of.value ? 'on' : 'off'}
    </button>
  );
}

/** The maker's small choices: ground, rule, click and buzz. */
export function ChoicesPanel() {
  return (
    <>
      <OneOf
        name="Ground"
        of={ground}
        choices={[
          ['auto', 'As the device'],
          ['paper', 'Light paper'],
          ['cloth', 'Dark cloth'],
        ]}
      />
      <OneOf
        name="Rule"
        of={units}
        choices={[
          ['outfit', 'As the outfit'],
          ['in', 'Inches'],
          ['mm', 'Millimetres'],
        ]}
      />
      <h3>At each touch</h3>
      <div class="choice">
        <Switch name="Click" of={sound} />
        {canBuzz() && <Switch name="Buzz" of={buzz} />}
      </div>
    </>
  );
}

/** Teaching a pedal or remote: the next key pressed is learned. */
export function KeysPanel() {
  const learning = useSignal<KeyMeaning | undefined>(undefined);
  useEffect(() => {
    const meaning = learning.value;
    if (meaning === undefined) return undefined;
    const learn = (event: KeyboardEvent): void => {
      if (event.repeat) return;
      event.preventDefault();
      event.stopPropagation();
      if (event.key !== 'Escape') taught.value = { ...taught.value, [meaning]: keyName(event) };
      learning.value = undefined;
    };
    document.addEventListener('keydown', learn, true);
    return () => document.removeEventListener('keydown', learn, true);
  }, [learning.value]);
  const teach = (meaning: KeyMeaning, name: string) => {
    const known = taught.value[meaning];
    return (
      <button
        type="button"
        class="plain"
        onClick={() => {
          learning.value = meaning;
        }}
      >
        {learning.value === meaning
          ? 'Press the pedal or key now'
          : `Teach a key for ${name}${known === undefined ? '' : ` (now ${writeKey(known)})`}`}
      </button>
    );
  };
  return (
    <section>
      <h3>Pedal and keys</h3>
      <p>
        Space, Enter, arrow right or down and page down work the pad. Arrow left or up, page up and backspace
        undo.
      </p>
      <div class="choice">
        {teach('pad', 'the pad')}
        {teach('undo', 'undo')}
        {(taught.value.pad ?? taught.value.undo) !== undefined && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              taught.value = {};
            }}
          >
            Forget taught keys
          </button>
        )}
      </div>
    </section>
  );
}
