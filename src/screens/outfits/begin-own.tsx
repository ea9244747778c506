import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { freshId, newOutfit } from '../../outfit/changing/new-outfit.ts';
import { writeOutfit } from '../../outfit/writing.ts';
import { useDraft } from '../describe/drafts.ts';
import { TextBox } from '../describe/text-box.tsx';
import { FieldBox } from '../reckoner/field.tsx';
import { ruleInUse } from '../reckoner/rule.ts';
import { go } from '../route.ts';
import { begin, ledger } from '../workroom.ts';
import '../reckoner/reckoner.css';
import '../describe/describe.css';

/** Under which the form is kept until it is handed in. */
export const OWN = 'own';

/** What the occasion is called where the maker gave it no name. */
const OCCASION = 'The day it is worn';

/** The form that begins an outfit of the maker's own, and then opens its description. */
export default function BeginOwn() {
  const { written, write, clear } = useDraft(OWN);
  const asked = useSignal(false);
  const refused = useSignal('');
  const form = useRef<HTMLFormElement>(null);
  const { name = '', event = '', date = '', units = ruleInUse().unit } = written.value;
  const unit = units === 'in' ? 'in' : 'mm';
  const faults = new Map<string, string>();
  if (name.trim() === '') faults.set('name', 'Give the outfit a name, such as “The lamplighter”.');
  if (date === '') faults.set('date', 'Choose the day by which it must be ready; you can change it later.');
  useEffect(() => form.current?.querySelector('input')?.focus(), []);

  const handIn = async (): Promise<void> => {
    asked.value = true;
    if (faults.size > 0) {
      form.current?.querySelector<HTMLElement>(`[data-field="${[...faults.keys()][0]}"] input`)?.focus();
      return;
    }
    try {
      const there = await (await ledger()).outfits();
      const id = freshId(
        there.map((entry) => entry.outfit),
        name,
      );
      const told = { id, name: name.trim(), date, event: event.trim() || OCCASION, units: unit } as const;
      await begin(id, writeOutfit(newOutfit(told)));
      clear();
      go({ screen: 'outfit', outfit: id, at: [] });
    } catch (error) {
      refused.value = error instanceof Error ? error.message : String(error);
    }
  };
  const fault = (field: string): string | undefined => (asked.value ? faults.get(field) : undefined);
  return (
    <form
      ref={form}
      class="own-outfit"
      data-part="begin-own"
      aria-label="Your own outfit"
      noValidate
      onSubmit={(submitted) => {
        submitted.preventDefault();
        void handIn();
      }}
    >
      <h2>Your own outfit</h2>
      <TextBox
        name="name"
        label="Its name"
        text={name}
        fault={fault('name')}
        onText={(text) => write('name', text)}
      />
      <TextBox
        name="event"
        label="What it is for"
        means="A first night, a wedding, a parade; may stay empty."
        text={event}
        onText={(text) => write('event', text)}
      />
      <TextBox
        name="date"
        label="Ready by"
        kind="date"
        text={date}
        fault={fault('date')}
        onText={(text) => write('date', text)}
      />
      <FieldBox
        name="units"
        field={{
          kind: 'choice',
          label: 'Measured in',
          options: [
            { value: 'in', label: 'inches' },
            { value: 'mm', label: 'millimetres' },
          ],
          start: 'in',
        }}
        text={unit}
        fault={undefined}
        marking={unit === 'in' ? { unit, per: 16 } : { unit, step: 0.5 }}
        onText={(text) => write('units', text)}
      />
      <button type="submit" class="main big">
        Begin it
      </button>
      <p role="alert">{refused.value}</p>
    </form>
  );
}
