import { useId } from 'preact/hooks';
import { Sign } from '../../ui/signs.tsx';

/** One line of words, or a day, with its label above and its fault below. */
export function TextBox(props: {
  readonly name: string;
  readonly label: string;
  readonly means?: string;
  readonly kind?: 'text' | 'date';
  readonly text: string;
  readonly fault?: string | undefined;
  readonly onText: (text: string) => void;
}) {
  const { name, label, means, kind = 'text', text, fault, onText } = props;
  const id = useId();
  const told = [means === undefined ? '' : `${id}-means`, fault === undefined ? '' : `${id}-fault`]
    .filter(Boolean)
    .join(' ');
  const box = {
    id,
    class: 'field words',
    value: text,
    autocomplete: 'off',
    maxLength: 80,
    'aria-invalid': fault !== undefined,
    ...(told === '' ? {} : { 'aria-describedby': told }),
    onInput: (event: { readonly currentTarget: HTMLInputElement }) => onText(event.currentTarget.value),
  };
  return (
    <div class="field-box" data-field={name}>
      <label for={id}>{label}</label>
      {means !== undefined && (
        <p class="means" id={`${id}-means`}>
          {means}
        </p>
      )}
      {kind === 'date' ? (
        <input type="date" {...box} />
      ) : (
        <input type="text" {...box} onFocus={(event) => event.currentTarget.select()} />
      )}
      {fault !== undefined && (
        <p class="fault" id={`${id}-fault`} data-part="fault">
          <Sign name="caution" />
          <span>{fault}</span>
        </p>
      )}
    </div>
  );
}
