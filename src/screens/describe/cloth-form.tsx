import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type Fault, type Field, type LengthField, readFields } from '../../fields/fields.ts';
import { longer } from '../../length/length.ts';
import { freshId } from '../../outfit/changing/new-outfit.ts';
import { putCloth } from '../../outfit/changing/whole.ts';
import type { Cloth, Outfit } from '../../outfit/outfit.ts';
import { markingFor } from '../choices.ts';
import { FieldBox } from '../reckoner/field.tsx';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import { fieldLength, useFilled } from './filled.ts';
import { gaugeOf, percentOf } from './gauge.ts';
import { TextBox } from './text-box.tsx';
import { unitFaultWords } from './words.ts';

const length = (label: string, means: string, inch: string, metric: string) =>
  ({ kind: 'length', label, means, start: { in: inch, mm: metric } }) as const satisfies LengthField;

const FIELDS = {
  width: length('Width', 'From selvedge to selvedge.', '54', '1400'),
  rest: length('Marked off', 'On the cloth at rest, to see how it stretches.', '4', '100'),
  across: length(
    'Goes to, across',
    'From selvedge to selvedge; 4 in that go to 7 in stretch 75 %.',
    '4',
    '100',
  ),
  along: length(
    'Goes to, along',
    'Along the selvedge. The same as marked off where it does not give.',
    '4',
    '100',
  ),
  iron: {
    kind: 'choice',
    label: 'Iron, by its label',
    options: [
      { value: '110', label: '1 dot: 110 °C' },
      { value: '150', label: '2 dots: 150 °C' },
      { value: '200', label: '3 dots: 200 °C' },
      { value: '0', label: 'crossed out: none' },
    ],
    start: '200',
  },
  oneWay: {
    kind: 'choice',
    label: 'Must it lie all one way?',
    means: 'It has a nap, or a design with an up.',
    options: [
      { value: 'no', label: 'either way' },
      { value: 'yes', label: 'all one way' },
    ],
    start: 'no',
  },
} as const satisfies Readonly<Record<string, Field>>;
type Name = keyof typeof FIELDS;
const LENGTHS: readonly Name[] = ['width', 'rest', 'across', 'along'];

const WORDS = [
  ['name', 'Name', 'As you speak of it: “black stretch velvet”.'],
  ['fibre', 'Fibre', 'Cotton, silk, polyamide and elastane.'],
  ['thread', 'Thread', 'The colour that sews it.'],
  ['needle', 'Needle', 'As its packet says: 70/10.'],
] as const;
const NEEDED: Readonly<Record<string, string>> = {
  name: 'Give it a name.',
  fibre: 'Say what it is made of; the iron depends on it.',
  thread: 'Say which thread sews it.',
  needle: 'Say which needle, as its packet says: 70/10.',
};
/** No cloth goes to five times its length. */
const MOST_STRETCH = 400;

const IRONS = [0, 110, 150, 200] as const;

/** A cloth, added or changed. */
export function ClothForm(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly cloth: Cloth | undefined;
  readonly onClose: () => void;
}) {
  const { session, outfit, cloth, onClose } = props;
  const marking = markingFor(session.units.value);
  const { unit } = marking;
  const gauge = gaugeOf(cloth?.stretch ?? { across: 0, along: 0 }, unit);
  const stands: Record<string, string> = {
    name: cloth?.name ?? '',
    fibre: cloth?.fibre ?? '',
    thread: cloth?.thread ?? '',
    needle: cloth?.needle ?? '',
    width: cloth ? fieldLength(cloth.width, unit) : FIELDS.width.start[unit],
    rest: fieldLength(gauge.rest, unit),
    across: fieldLength(gauge.across, unit),
    along: fieldLength(gauge.along, unit),
    iron: String(cloth?.iron ?? FIELDS.iron.start),
    oneWay: cloth?.oneWay ? 'yes' : 'no',
  };
  const { text, write, clear } = useFilled(`${session.id}/cloth/${cloth?.id ?? ''}`, stands, unit, LENGTHS);
  const form = useRef<HTMLFormElement>(null);
  const asked = useSignal(false);
  const hindered = useSignal('');

  const read = readFields(
    FIELDS,
    Object.fromEntries(Object.keys(FIELDS).map((name) => [name, text(name)])),
    unit,
  );
  const faults: Fault[] = [
    ...WORDS.flatMap(([name]) =>
      text(name).trim() === '' ? [{ field: name, say: NEEDED[name] ?? '' }] : [],
    ),
    ...(read.ok ? [] : read.error),
  ];
  const stretch = { across: 0, along: 0 };
  if (read.ok) {
    const { rest, width } = read.value;
    if (width <= 0) faults.push({ field: 'width', say: 'A cloth is wider than nothing.' });
    if (rest <= 0) faults.push({ field: 'rest', say: 'Mark off more than nothing, such as 4 in or 100 mm.' });
    for (const way of ['across', 'along'] as const) {
      const to = read.value[way];
      if (rest <= 0) continue;
      stretch[way] = percentOf(rest, to);
      if (longer(rest, to)) faults.push({ field: way, say: 'Stretched, it is at least as long as at rest.' });
      else if (stretch[way] > MOST_STRETCH)
        faults.push({ field: way, say: 'No cloth goes to more than five times its length.' });
    }
  }
  const faultAt = (name: string, early: boolean): string | undefined =>
    asked.value || early ? faults.find(({ field }) => field === name)?.say : undefined;

  const save = (event: Event): void => {
    event.preventDefault();
    asked.value = true;
    if (!read.ok || faults.length > 0) {
      form.current?.querySelector<HTMLElement>(`[data-field="${faults[0]?.field}"] input`)?.focus();
      return;
    }
    const name = text('name').trim();
    const { width, iron, oneWay } = read.value;
    const now: Cloth = {
      id:
        cloth?.id ??
        freshId(
          outfit.cloths.map(({ id }) => id),
          name,
        ),
      name,
      width,
      fibre: text('fibre').trim(),
      // A figure finer than its gauge stays as it is where nothing was changed about it.
      stretch: {
        across:
          text('across') === stands.across && text('rest') === stands.rest
            ? (cloth?.stretch.across ?? stretch.across)
            : stretch.across,
        along:
          text('along') === stands.along && text('rest') === stands.rest
            ? (cloth?.stretch.along ?? stretch.along)
            : stretch.along,
      },
      iron: IRONS.find((one) => String(one) === iron) ?? 0,
      oneWay: oneWay === 'yes',
      thread: text('thread').trim(),
      needle: text('needle').trim(),
    };
    const made = putCloth(outfit, now);
    hindered.value = made.ok ? '' : unitFaultWords(made.error);
    if (!made.ok) return;
    ask(session, made.value, cloth ? `changed ${name}` : `added ${name}`, () => {
      clear();
      onClose();
    });
  };

  const field = (name: Name) => (
    <FieldBox
      key={name}
      name={name}
      field={FIELDS[name]}
      text={text(name)}
      fault={faultAt(name, true)}
      marking={marking}
      onText={(now) => write(name, now)}
    />
  );
  return (
    <form
      ref={form}
      noValidate
      class="fields boxed"
      data-part="cloth-form"
      aria-label={cloth ? cloth.name : 'Another cloth'}
      onSubmit={save}
    >
      {WORDS.map(([name, label, means]) => (
        <TextBox
          key={name}
          {...{ name, label, means }}
          text={text(name)}
          fault={faultAt(name, false)}
          onText={(now) => write(name, now)}
        />
      ))}
      {(['width', 'iron', 'oneWay', 'rest', 'across', 'along'] as const).map(field)}
      {read.ok && (
        <p class="field-wide" role="status" data-part="stretch">
          {stretch.across === 0 && stretch.along === 0
            ? 'It does not stretch.'
            : `It stretches ${stretch.across} % across and ${stretch.along} % along.`}
        </p>
      )}
      {hindered.value !== '' && (
        <p class="fault field-wide" role="alert">
          <span>With this cloth a part cannot be made. {hindered.value}</span>
        </p>
      )}
      <div class="choice field-wide">
        <button type="submit" class="main">
          {cloth ? 'Keep this cloth' : 'Add this cloth'}
        </button>
        <button
          type="button"
          class="plain"
          onClick={() => {
            clear();
            onClose();
          }}
        >
          {cloth ? 'Leave it as it was' : 'Leave it'}
        </button>
      </div>
    </form>
  );
}
