import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { keepWearer, putWearer } from '../../outfit/changing/whole.ts';
import { MEASURES, type Measure } from '../../outfit/measures.ts';
import type { Outfit, Wearer } from '../../outfit/outfit.ts';
import { doubts } from '../../outfit/plausible.ts';
import { markingFor } from '../choices.ts';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import { useFilled } from './filled.ts';
import { MeasureBox } from './measure-box.tsx';
import { fromReckoner, measureTexts, readMeasures } from './measures-typed.ts';
import { TextBox } from './text-box.tsx';
import { so, unitFaultWords } from './words.ts';

const IDS = MEASURES.map(({ id }) => id);
const GROUPS: readonly Measure['group'][] = [...new Set(MEASURES.map(({ group }) => group))];

/** The name and the measures of a wearer, kept with one touch. */
export function MeasuresForm(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly wearer: Wearer;
}) {
  const { session, outfit, wearer } = props;
  const marking = markingFor(session.units.value);
  const { unit } = marking;
  const stands = { name: wearer.name, ...measureTexts(wearer.measures, unit) };
  const filled = useFilled(`${session.id}/wearer/${wearer.id}`, stands, unit, IDS);
  const { text, write, changed, clear } = filled;
  const form = useRef<HTMLFormElement>(null);
  /** The field in hand: half a figure is neither wrong nor doubted yet. */
  const inHand = useSignal('');
  const asked = useSignal(false);
  const hindered = useSignal('');

  const { measures, faults } = readMeasures(text, unit);
  const { [inHand.value as keyof typeof measures]: _, ...settled } = measures;
  const doubted = doubts(settled, marking);
  const offered = fromReckoner(measures, unit);
  const name = text('name').trim();
  const wrong = (field: string): string | undefined =>
    asked.value || inHand.value !== field ? faults.find((fault) => fault.field === field)?.say : undefined;

  const save = (anyway: boolean): void => {
    asked.value = true;
    const first = name === '' ? 'name' : faults[0]?.field;
    if (first !== undefined) {
      form.current?.querySelector<HTMLElement>(`[data-field="${first}"] input`)?.focus();
      return;
    }
    const after: Wearer = { id: wearer.id, name, measures };
    const made = anyway ? undefined : putWearer(outfit, after);
    hindered.value = made === undefined || made.ok ? '' : unitFaultWords(made.error);
    if (hindered.value !== '') return;
    const onlyName = changed.length === 1 && changed[0] === 'name';
    const now = made?.ok ? made.value : keepWearer(outfit, after);
    ask(session, now, onlyName ? `renamed ${wearer.name}` : `measured ${name}`, () => {
      asked.value = false;
      clear();
    });
  };

  return (
    <form
      ref={form}
      noValidate
      class="measuring-form"
      aria-label={`Measures of ${wearer.name}`}
      onSubmit={(event) => {
        event.preventDefault();
        save(false);
      }}
      onFocusIn={(event) => {
        const at = event.target instanceof HTMLInputElement ? event.target.closest('[data-field]') : null;
        inHand.value = at?.getAttribute('data-field') ?? '';
      }}
      onFocusOut={() => {
        inHand.value = '';
      }}
    >
      <TextBox
        name="name"
        label="Name"
        text={text('name')}
        fault={name === '' ? 'Give them a name, or a part: “the baker”.' : undefined}
        onText={(now) => write('name', now)}
      />
      <p>
        On the body, over what is worn below, without ease. Take what a garment asks for; the rest may stay
        empty.
      </p>
      {Object.keys(offered).length > 0 && (
        <div class="boxed told-box" data-part="from-reckoner">
          <p>
            Typed for a leg in the reckoner:{' '}
            {IDS.flatMap((id) => {
              const typed = offered[id];
              const label = MEASURES.find((one) => one.id === id)?.name.toLowerCase();
              return typed === undefined
                ? []
                : [`${label} ${/[a-z"”]/i.test(typed) ? typed : `${typed} ${unit}`}`];
            }).join(', ')}
            .
          </p>
          <div class="choice">
            <button
              type="button"
              class="plain"
              onClick={() => {
                for (const [id, typed] of Object.entries(offered)) write(id, typed);
              }}
            >
              Take these over
            </button>
          </div>
        </div>
      )}
      {GROUPS.map((group) => (
        <section key={group} aria-label={group}>
          <h2>{group}</h2>
          <ul class="measures">
            {MEASURES.filter((one) => one.group === group).map(({ id }) => (
              <MeasureBox
                key={id}
                id={id}
                text={text(id)}
                fault={wrong(id)}
                doubts={doubted.filter((doubt) => doubt.at === id)}
                marking={marking}
                onText={(now) => write(id, now)}
              />
            ))}
          </ul>
        </section>
      ))}
      <p class="quiet">
        What is said of unlikely measures compares with soldiers of one army, all grown up. Children, and
        anybody built otherwise, may be measured rightly and still be asked about.
      </p>
      <div class="keep-bar" data-part="keep-bar">
        {hindered.value !== '' && (
          <div class="fault" role="alert">
            <span>With these measures a part cannot be made. {hindered.value}</span>
          </div>
        )}
        {changed.length > 0 && (
          <p role="status">
            {faults.length > 0
              ? `${so(faults.length, 'measure')} cannot be read.`
              : `${so(changed.length, 'entry', 'entries')} not kept in the outfit yet.`}
          </p>
        )}
        <button type="submit" class={changed.length > 0 ? 'main' : 'plain'}>
          Keep the measures
        </button>
        {hindered.value !== '' && (
          <button type="button" class="plain" onClick={() => save(true)}>
            Keep them, and leave the garments as they are
          </button>
        )}
      </div>
    </form>
  );
}
