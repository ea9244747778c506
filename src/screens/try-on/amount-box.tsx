import { useSignal } from '@preact/signals';
import { useEffect, useId, useRef } from 'preact/hooks';
import { inches, type Length, mm, nm, toMm, zero } from '../../length/length.ts';
import { readLength } from '../../length/reading.ts';
import { asWritten, readSaid } from '../../length/spoken.ts';
import { type Marking, writeLength } from '../../length/writing.ts';
import { Sign } from '../../ui/signs.tsx';
import { fieldLength } from '../describe/filled.ts';
import { understood } from '../reckoner/entries.ts';
import { languageHeard, listen } from './speech.ts';

/** What a pinch of cloth mostly comes to, and the mark by which it is put right. */
const USUAL: Readonly<Record<Marking['unit'], { readonly mark: Length; readonly chips: readonly Length[] }>> =
  {
    in: {
      mark: inches(1, 8),
      chips: [inches(1, 4), inches(1, 2), inches(3, 4), inches(1), inches(3, 2), inches(2)],
    },
    mm: { mark: mm(1), chips: [5, 10, 15, 20, 30, 50].map(mm) },
  };

/** What the field takes: the words are those that a keyboard's own microphone writes. */
const MEANS: Readonly<Record<Marking['unit'], string>> = {
  in: 'Type it or dictate it: 5/8, or “five eighths”.',
  mm: 'Type it or dictate it: 16, or “sixteen millimetres”.',
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

/** How an amount was understood, where that is not plain from what is written; words never are. */
function readsAs(text: string, marking: Marking): string | undefined {
  const { amount } = readAmount(text, marking.unit);
  if (amount === undefined) return undefined;
  const plain = readLength(text, marking.unit).ok;
  return (
    understood(plain ? text : (asWritten(text) ?? text), marking) ??
    (plain ? undefined : `= ${writeLength(amount, marking).text}`)
  );
}

/** How much: typed, spoken, touched or stepped by a mark of the rule. */
export function AmountBox(props: {
  readonly label: string;
  readonly text: string;
  readonly fault: string | undefined;
  readonly marking: Marking;
  readonly onText: (text: string) => void;
}) {
  const { label, text, fault, marking, onText } = props;
  const id = useId();
  const hears = useSignal(false);
  const lang = useSignal<string | undefined>(undefined);
  const stop = useRef<(() => void) | undefined>(undefined);
  useEffect(() => {
    let here = true;
    void languageHeard().then((found) => {
      if (here) lang.value = found;
    });
    return () => {
      here = false;
      stop.current?.();
    };
  }, []);
  const { mark, chips } = USUAL[marking.unit];
  const now = readAmount(text, marking.unit).amount ?? zero;
  const put = (length: Length): void => onText(length > 0 ? fieldLength(length, marking.unit) : '');
  const step = (by: 1 | -1): void => put(nm(Math.max(0, (Math.round(now / mark) + by) * mark)));
  const reads = fault === undefined ? readsAs(text, marking) : undefined;
  const told = [`${id}-${reads === undefined ? 'means' : 'reads'}`, fault && `${id}-fault`]
    .filter(Boolean)
    .join(' ');
  const speak = (language: string): void => {
    if (hears.value) {
      stop.current?.();
      return;
    }
    hears.value = true;
    stop.current = listen(
      language,
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
          aria-describedby={told}
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
      {reads === undefined ? (
        <p class="means" id={`${id}-means`}>
          {MEANS[marking.unit]}
        </p>
      ) : (
        <p class="reads" id={`${id}-reads`} data-part="reads">
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
      {lang.value !== undefined && (
        <button
          type="button"
          class="plain"
          data-part="speak"
          aria-pressed={hears.value}
          onClick={() => speak(lang.peek() ?? 'en-GB')}
        >
          <Sign name="aloud" />
          {hears.value ? 'Listening…' : 'Say it'}
        </button>
      )}
    </div>
  );
}
