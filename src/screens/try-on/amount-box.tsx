import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import { inches, type Length, mm, nm, toMm, zero } from '../../length/length.ts';
import { readLength } from '../../length/reading.ts';
import { asWritten, readSaid } from '../../length/spoken.ts';
import type { Marking } from '../../length/writing.ts';
import { Sign } from '../../ui/signs.tsx';
import { fieldLength } from '../describe/filled.ts';
import { understood } from '../reckoner/entries.ts';
import { canListen, listen } from './speech.ts';

/** What a pinch of cloth mostly comes to, and the mark by which it is put right. */
const USUAL: Readonly<Record<Marking['unit'], { readonly mark: Length; readonly chips: readonly Length[] }>> =
  {
    in: {
      mark: inches(1, 8),
      chips: [inches(1, 4), inches(1, 2), inches(3, 4), inches(1), inches(3, 2), inches(2)],
    },
    mm: { mark: mm(1), chips: [5, 10, 15, 20, 30, 50].map(mm) },
  };

/** Nobody pins more than this away. */
const MOST = mm(3_000);

/** The amount in a field: none where it is empty, or what is wrong with it. */
export function readAmount(
  text: string,
  unit: Marking['unit'],
): { readonly amount?: Length; readonly fault?: string } {
  if (text.trim() === '') return {};
  const read = readSaid(text, unit);
  if (!read.ok) return { fault: read.error };
  if (read.value <= 0)
    return { fault: 'An amount is more than nothing; leave it empty where it was not measured.' };
  return toMm(read.value) > toMm(MOST)
    ? { fault: 'That is more than a garment has; write a length such as 5/8 in or 16 mm.' }
    : { amount: read.value };
}

/** How much: typed, spoken, touched or stepped by a mark of the rule. */
export function AmountBox(props: {
  readonly label: string;
  readonly means: string | undefined;
  readonly text: string;
  readonly fault: string | undefined;
  readonly marking: Marking;
  readonly onText: (text: string) => void;
}) {
  const { label, means, text, fault, marking, onText } = props;
  const id = useId();
  const hears = useSignal(false);
  const stop = useRef<(() => void) | undefined>(undefined);
  useEffect(() => () => stop.current?.(), []);
  const { mark, chips } = USUAL[marking.unit];
  const now = readAmount(text, marking.unit).amount ?? zero;
  const put = (length: Length): void => onText(length > 0 ? fieldLength(length, marking.unit) : '');
  const step = (by: 1 | -1): void => put(nm(Math.max(0, (Math.round(now / mark) + by) * mark)));
  const reads = fault === undefined ? understood(asWritten(text) ?? text, marking) : undefined;
  const told = [means && `${id}-means`, reads && `${id}-reads`, fault && `${id}-fault`]
    .filter(Boolean)
    .join(' ');
  const speak = (): void => {
    if (hears.value) {
      stop.current?.();
      return;
    }
    hears.value = true;
    stop.current = listen(
      (readings) => {
        // The likeliest of what was heard that is a length; else what was heard, to be put right by hand.
        const said = readings.find((one) => readSaid(one, marking.unit).ok) ?? readings[0];
        if (said !== undefined) onText(asWritten(said) ?? said);
      },
      () => {
        hears.value = false;
      },
    );
  };
  return (
    <div class="field-box amount-box" data-field="amount">
      <label for={id}>{label}</label>
      {means !== undefined && (
        <p class="means" id={`${id}-means`}>
          {means}
        </p>
      )}
      <div class="amount-row">
        <button
          type="button"
          class="plain"
          data-part="less"
          aria-label="A mark less"
          onClick={() => step(-1)}
        >
          −
        </button>
        <input
          id={id}
          class="field entry"
          type="text"
          inputMode="text"
          value={text}
          autocomplete="off"
          autocapitalize="off"
          spellcheck={false}
          enterkeyhint="done"
          maxLength={80}
          aria-invalid={fault !== undefined}
          {...(told === '' ? {} : { 'aria-describedby': told })}
          onInput={(event) => onText(event.currentTarget.value)}
          onBlur={() => {
            const said = readLength(text, marking.unit).ok ? undefined : asWritten(text);
            if (said !== undefined) onText(said);
          }}
        />
        <span class="entry-unit">{marking.unit}</span>
        <button type="button" class="plain" data-part="more" aria-label="A mark more" onClick={() => step(1)}>
          +
        </button>
      </div>
      {reads !== undefined && (
        <p class="means" id={`${id}-reads`}>
          {reads}
        </p>
      )}
      {fault !== undefined && (
        <p class="fault" id={`${id}-fault`} data-part="fault">
          <Sign name="caution" />
          <span>{fault}</span>
        </p>
      )}
      {/* biome-ignore lint/a11y/useSemanticElements: a fieldset would want a legend that says the label again */}
      <div class="chips" role="group" aria-label="Amounts">
        {chips.map((length) => (
          <button
            key={length}
            type="button"
            class="plain"
            data-amount={fieldLength(length, marking.unit)}
            aria-pressed={now === length}
            onClick={() => put(length)}
          >
            {fieldLength(length, marking.unit)}
            <span class="unseen"> {marking.unit}</span>
          </button>
        ))}
      </div>
      {canListen() && (
        <div class="spoken">
          <button type="button" class="plain" data-part="speak" aria-pressed={hears.value} onClick={speak}>
            <Sign name="aloud" />
            {hears.value ? 'Listening…' : 'Say it'}
          </button>
          <p class="means">The browser listens. Some send what they hear elsewhere to be read.</p>
        </div>
      )}
    </div>
  );
}
