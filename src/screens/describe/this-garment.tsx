import { useSignal } from '@preact/signals';
import {
  duplicateGarment,
  removeGarment,
  renameGarment,
  setGarmentWearer,
} from '../../outfit/changing/garments.ts';
import type { Garment, Outfit } from '../../outfit/outfit.ts';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { ask, problem } from './change.ts';
import { useDraft } from './drafts.ts';
import { partsOf } from './garment-parts.ts';
import { TakeOffSheet } from './take-off.tsx';
import { TextBox } from './text-box.tsx';
import { WearerBox } from './wearer-box.tsx';
import { unitFaultWords } from './words.ts';

interface Props {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
}

/** Folded away at the foot of a garment: its name, its wearer, another like it, and taking it off. */
export function ThisGarment(props: Props) {
  const { session, outfit, garment } = props;
  const taking = useSignal(false);
  return (
    <details class="this-garment" data-part="this-garment">
      <summary>Name, wearer, another like it</summary>
      <div class="asks">
        <Rename {...props} />
        <WearerBox
          wearers={outfit.wearers}
          wearer={garment.wearer ?? ''}
          onWearer={(wearer) => {
            const made = setGarmentWearer(outfit, garment.id, wearer || undefined);
            if (made.ok) ask(session, made.value, `gave ${garment.name} another wearer`);
            else problem.value = unitFaultWords(made.error);
          }}
        />
        <Another {...props} />
        <button
          type="button"
          class="plain"
          onClick={() => {
            taking.value = true;
          }}
        >
          Take {garment.name} out of the outfit
        </button>
      </div>
      {taking.value && (
        <TakeOffSheet
          name={garment.name}
          also={partsOf(garment)}
          onTake={() =>
            ask(session, removeGarment(outfit, garment.id), `took out ${garment.name}`, () =>
              go({ screen: 'outfit', outfit: session.id, at: [] }),
            )
          }
          onClose={() => {
            taking.value = false;
          }}
        />
      )}
    </details>
  );
}

function Rename({ session, outfit, garment }: Props) {
  const { written, write, clear } = useDraft(`${outfit.id}/garment/${garment.id}/rename`);
  const name = written.value.name ?? garment.name;
  const differs = name.trim() !== garment.name;
  return (
    <form
      class="boxed"
      aria-label="Name"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        if (name.trim() === '') return;
        ask(session, renameGarment(outfit, garment.id, name.trim()), `renamed ${garment.name}`, clear);
      }}
    >
      <TextBox
        name="rename"
        label="Its name"
        text={name}
        fault={name.trim() === '' ? 'Give it a name, such as “Shirt”.' : undefined}
        onText={(text) => write('name', text)}
      />
      {differs && (
        <button type="submit" class="plain">
          Rename it
        </button>
      )}
    </form>
  );
}

function Another({ session, outfit, garment }: Props) {
  const { written, write, clear } = useDraft(`${outfit.id}/garment/${garment.id}/another`);
  const other = outfit.wearers.find(({ id }) => id !== garment.wearer)?.id ?? '';
  const { wearer = other } = written.value;
  const forWhom = outfit.wearers.find(({ id }) => id === wearer)?.name;
  const { name = forWhom === undefined ? `${garment.name}, another` : `${garment.name} for ${forWhom}` } =
    written.value;
  return (
    <form
      class="boxed"
      data-part="another"
      aria-label="Another like it"
      onSubmit={(submitted) => {
        submitted.preventDefault();
        if (name.trim() === '') return;
        const told = { name: name.trim(), ...(wearer === '' ? {} : { wearer }) };
        const made = duplicateGarment(outfit, garment.id, told);
        if (!made.ok) {
          problem.value = unitFaultWords(made.error);
          return;
        }
        ask(session, made.value.outfit, `made another ${garment.name}`, () => {
          clear();
          go({ screen: 'outfit', outfit: session.id, at: ['garment', made.value.garment] });
        });
      }}
    >
      <h3>Another like it</h3>
      <p class="quiet">The same parts; figures that are proposed follow the other measures.</p>
      <TextBox
        name="another"
        label="Name of the other"
        text={name}
        fault={name.trim() === '' ? 'Give it a name, such as “Shirt for the understudy”.' : undefined}
        onText={(text) => write('name', text)}
      />
      <WearerBox wearers={outfit.wearers} wearer={wearer} onWearer={(id) => write('wearer', id)} />
      <button type="submit" class="plain">
        Make another
      </button>
    </form>
  );
}
