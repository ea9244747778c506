import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Field } from '../../fields/fields.ts';
import { lower } from '../../outfit/lower.ts';
import { entryWords, type Written } from './entries.ts';

/** More empty fields than this are counted, not named. */
const MOST_NAMED = 4;

/** What stands in fields that are folded away, and which of them are empty. */
export function foldedWords(fields: readonly (readonly [string, Field])[], written: Written): string {
  const stands: string[] = [];
  const empty: string[] = [];
  for (const [name, field] of fields) {
    const words = entryWords(written, name, field).replace(/\s*\n\s*/g, ', ');
    if (words === '') empty.push(lower(field.label));
    else stands.push(`${lower(field.label)}${field.kind === 'choice' ? ':' : ''} ${words}`);
  }
  const also = stands.length === 0 ? [] : [`Also: ${stands.join('; ')}.`];
  if (empty.length === 0) return also.join('');
  const which = empty.length > MOST_NAMED ? `${empty.length} fields` : empty.join('; ');
  return [...also, `May stay empty: ${which}.`].join(' ');
}

/**
 * Fields that have a usual answer or may stay empty, folded away; the fold says what stands in them. It opens by itself
 * where one of them is at fault, and closes only by the maker's hand.
 */
export function MoreFields(props: {
  readonly words: string;
  readonly atFault: boolean;
  readonly children: ComponentChildren;
}) {
  const { words, atFault, children } = props;
  const open = useSignal(atFault);
  if (atFault && !open.peek()) open.value = true;
  return (
    <details
      class="more-fields"
      data-part="more-fields"
      open={open.value}
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>
        <span>{open.value ? 'Fold these away' : words}</span>
      </summary>
      <div class="fields">{children}</div>
    </details>
  );
}
