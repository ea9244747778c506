import { useId, useRef } from 'preact/hooks';
import type { Field } from '../../fields/fields.ts';
import type { Marking } from '../../length/writing.ts';
import { Sign } from '../../ui/signs.tsx';
import { understood } from './entries.ts';

/** Goes on to the next field with the key that phones show for it. */
function onward(event: KeyboardEvent & { readonly currentTarget: HTMLInputElement }): void {
  if (event.key !== 'Enter' || event.isComposing) return;
  event.preventDefault();
  // A field that is folded away is not next.
  const inputs = [
    ...(event.currentTarget.form?.querySelectorAll<HTMLInputElement>('input.entry') ?? []),
  ].filter((one) => !one.closest('details:not([open])'));
  const next = inputs[inputs.indexOf(event.currentTarget) + 1];
  if (next) next.focus();
  else event.currentTarget.blur();
}

const hand = (field: Field): 'text' | 'numeric' | 'decimal' =>
  field.kind !== 'number' ? 'text' : field.whole ? 'numeric' : 'decimal';

/** More than this to choose from would be a long walk past buttons. */
const MOST_BUTTONS = 6;

/** One field of a reckoning with its label above and its fault below. */
export function FieldBox(props: {
  readonly name: string;
  readonly field: Field;
  readonly text: string;
  readonly fault: string | undefined;
  readonly marking: Marking;
  readonly onText: (text: string) => void;
}) {
  const { name, field, text, fault, marking, onText } = props;
  const id = useId();
  const came = useRef(false);
  const [meansId, readsId, faultId] = [`${id}-means`, `${id}-reads`, `${id}-fault`];
  const reads = field.kind === 'length' && fault === undefined ? understood(text, marking) : undefined;
  const told = [
    field.means === undefined ? undefined : meansId,
    reads === undefined ? undefined : readsId,
    fault === undefined ? undefined : faultId,
  ].filter((one) => one !== undefined);
  const described = told.length === 0 ? {} : { 'aria-describedby': told.join(' ') };
  const after = field.kind === 'length' ? marking.unit : field.kind === 'number' ? field.unit : undefined;
  const small = field.means !== undefined && (
    <p class="means" id={meansId}>
      {field.means}
    </p>
  );
  const wrong = fault !== undefined && (
    <p class="fault" id={faultId} data-part="fault">
      <Sign name="caution" />
      <span>{fault}</span>
    </p>
  );
  if (field.kind === 'choice' && field.options.length <= MOST_BUTTONS) {
    return (
      <fieldset class="field-box one-of" data-field={name} {...described}>
        <legend>{field.label}</legend>
        {small}
        <div class="options">
          {field.options.map(({ value, label }) => (
            <label key={value} class="option">
              <input
                type="radio"
                name={id}
                value={value}
                checked={text === value}
                onChange={() => onText(value)}
              />
              <span>{label}</span>
            </label>
          ))}
        </div>
        {wrong}
      </fieldset>
    );
  }
  return (
    <div class={field.kind === 'lines' ? 'field-box field-wide' : 'field-box'} data-field={name}>
      <label for={id}>{field.label}</label>
      {small}
      {field.kind === 'choice' ? (
        <select
          id={id}
          class="field pick"
          value={text}
          aria-invalid={fault !== undefined}
          {...described}
          onChange={(event) => onText(event.currentTarget.value)}
        >
          {field.options.map(({ value, label }) => (
            <option key={value} value={value}>
              {label}
            </option>
          ))}
        </select>
      ) : field.kind === 'lines' ? (
        <textarea
          id={id}
          class="field lines"
          rows={Math.min(10, Math.max(4, text.split('\n').length + 1))}
          value={text}
          autocomplete="off"
          spellcheck={false}
          aria-invalid={fault !== undefined}
          {...described}
          onInput={(event) => onText(event.currentTarget.value)}
        />
      ) : (
        <span class="entry-row">
          <input
            id={id}
            class="field entry"
            type="text"
            inputMode={hand(field)}
            value={text}
            autocomplete="off"
            autocapitalize="off"
            autocorrect="off"
            spellcheck={false}
            enterkeyhint="next"
            maxLength={80}
            aria-invalid={fault !== undefined}
            {...described}
            // What stands there is mostly replaced whole. Some browsers set the caret after the focus, at the click.
            onFocus={(event) => {
              came.current = true;
              event.currentTarget.select();
            }}
            onClick={(event) => {
              if (came.current) event.currentTarget.select();
              came.current = false;
            }}
            onKeyDown={onward}
            onInput={(event) => {
              came.current = false;
              onText(event.currentTarget.value);
            }}
          />
          {after !== undefined && <span class="entry-unit">{after}</span>}
        </span>
      )}
      {reads !== undefined && (
        <p class="means" id={readsId}>
          {reads}
        </p>
      )}
      {wrong}
    </div>
  );
}
