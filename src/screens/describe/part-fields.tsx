import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import type { Field } from '../../fields/fields.ts';
import { readEdge } from '../../outfit/chains.ts';
import { FieldBox } from '../reckoner/field.tsx';
import { MoreFields } from '../reckoner/more-fields.tsx';
import { Group, gapsIn, KindOptions, Run } from './asked-group.tsx';
import { Rows } from './asked-rows.tsx';
import { type Ask, type Asks, atOnce, choicesOf } from './asks.ts';
import { EdgePicker } from './edge-picker.tsx';
import { foldedWords, type InHand } from './folded-words.ts';
import { standing } from './stands.ts';
import { TextBox } from './text-box.tsx';

/** Everything that a form asks: what is asked at once, and folded below it what has a usual answer. */
export function PartFields({ asks, form }: { readonly asks: Asks; readonly form: InHand }) {
  const all = Object.entries(asks);
  const folded = all.filter(([, ask]) => !atOnce(ask));
  const box = ([name, ask]: readonly [string, Ask]) => (
    <AskBox key={name} name={name} ask={ask} form={form} />
  );
  const wrong = ([name]: readonly [string, Ask]): boolean =>
    [...form.faults.keys()].some((field) => field === name || field.startsWith(`${name}.`));
  return (
    <>
      {all.filter(([, ask]) => atOnce(ask)).map(box)}
      {folded.length > 0 && (
        <MoreFields words={foldedWords(folded, form)} atFault={folded.some(wrong)}>
          {folded.map(box)}
        </MoreFields>
      )}
    </>
  );
}

/** One thing asked, with its label above and its fault below. */
export function AskBox({
  name,
  ask,
  form,
}: {
  readonly name: string;
  readonly ask: Ask;
  readonly form: InHand;
}) {
  const { here } = form;
  const text = standing(here, name, ask, form.written, form.base);
  const onText = (now: string): void => form.write(name, now);
  const fault = form.faults.get(name);
  const asField = (field: Field) => (
    <FieldBox name={name} field={field} text={text} fault={fault} marking={here.marking} onText={onText} />
  );
  switch (ask.kind) {
    case 'length':
    case 'number':
    case 'choice':
      return asField(ask);
    case 'lengths':
      return asField({ ...told(ask), kind: 'lines', start: ask.start });
    case 'which':
      return asField({
        ...told(ask),
        kind: 'choice',
        options: [...(ask.optional ? [{ value: '', label: 'None' }] : []), ...choicesOf(here, ask.of)],
        start: '',
      });
    case 'words':
      return ask.lines ? (
        asField({ ...told(ask), kind: 'lines', start: { in: '', mm: '' } })
      ) : (
        <TextBox name={name} {...told(ask)} text={text} fault={fault} onText={onText} />
      );
    case 'kind':
      return (
        <Group name={name} ask={ask} fault={fault}>
          <KindOptions name={name} options={ask.options} chosen={text} onChoose={onText} />
        </Group>
      );
    case 'some': {
      const chosen = text.split(' ').filter(Boolean);
      return (
        <Group name={name} ask={ask} fault={fault}>
          <div class="options">
            {choicesOf(here, ask.of).map(({ value, label }) => (
              <label key={value} class="option">
                <input
                  type="checkbox"
                  checked={chosen.includes(value)}
                  onChange={() => onText(turned(chosen, value).join(' '))}
                />
                <span>{label}</span>
              </label>
            ))}
          </div>
        </Group>
      );
    }
    case 'edge':
    case 'run': {
      const picked = text.split(' ').filter(Boolean);
      const apart = ask.kind === 'run' && ask.apart === true;
      const single = ask.kind === 'edge' || ask.one === true;
      const only = (ref: string): boolean =>
        !(ask.kind === 'edge' && ref.startsWith('other:')) && readEdge(ref).edge !== 'fold';
      const pick = (ref: string): void =>
        onText((single ? (picked.includes(ref) ? [] : [ref]) : turned(picked, ref)).join(' '));
      return (
        <Group name={name} ask={ask} fault={!apart && gapsIn(picked, form).length > 0 ? undefined : fault}>
          <Run refs={picked} form={form} apart={apart} onText={onText} />
          <Folded
            open={picked.length === 0 && !ask.optional}
            words={picked.length === 0 ? 'Choose' : 'Choose others'}
          >
            <EdgePicker
              garment={here.garment}
              picked={picked}
              onPick={pick}
              only={only}
              marking={here.marking}
            />
          </Folded>
        </Group>
      );
    }
    case 'rows':
      return (
        <Rows
          {...{ name, ask, text, fault, form }}
          fields={(asks, inside) => <PartFields asks={asks} form={inside} />}
        />
      );
  }
}

/** Folded away from the start where something is chosen already; after that only by the maker's hand. */
function Folded(props: {
  readonly open: boolean;
  readonly words: string;
  readonly children: ComponentChildren;
}) {
  const open = useSignal(props.open);
  return (
    <details
      open={open.value}
      data-part="choose-edges"
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>{open.value ? 'On the drawing' : props.words}</summary>
      {open.value && props.children}
    </details>
  );
}

const told = ({ label, means }: Ask) => ({ label, ...(means === undefined ? {} : { means }) });

/** The list with one more, or without it where it was there. */
const turned = (list: readonly string[], one: string): readonly string[] =>
  list.includes(one) ? list.filter((other) => other !== one) : [...list, one];
