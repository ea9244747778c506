/**
 * A ready-made part being put on, or changed: where it goes, its figures, and what comes of them.
 *
 * What others may hold on to: `main[data-part="unit"]` with `data-unit`; every field as `[data-field]`: its name,
 * `at.<place>`, `cloth.<name>`, `name`; `[data-part="fault"]` in it; `[data-part="outcome"]` with the drawing;
 * `[data-part="misfit"]`; the button `Put it on` or `Change it`; `Back to the proposed figures`.
 */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { askedFirst, type Field } from '../../fields/fields.ts';
import type { UnitsMade } from '../../outfit/changing/units.ts';
import type { Garment, Outfit, UnitUse } from '../../outfit/outfit.ts';
import { unitCalled } from '../../outfit/units/all.ts';
import type { Unit } from '../../outfit/units/unit.ts';
import { HouseNotice } from '../house.tsx';
import { FieldBox } from '../reckoner/field.tsx';
import { foldedWords, MoreFields } from '../reckoner/more-fields.tsx';
import { go } from '../route.ts';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import { ClothBoxes } from './cloth-boxes.tsx';
import type { PartProps } from './describe.tsx';
import { justPut } from './garment-page.tsx';
import { Head, hashOf, NotThere } from './head.tsx';
import { PlaceBox } from './place-box.tsx';
import { SketchPicture } from './sketch-picture.tsx';
import { TextBox } from './text-box.tsx';
import { UndoBar } from './undo-bar.tsx';
import { proposalText, type UnitForm, useUnitForm } from './unit-form.ts';
import { Misfits, UnitOutcome } from './unit-outcome.tsx';
import { unitFaultWords } from './words.ts';

/** A unit being put on, or changed. */
export function UnitPage(
  props: PartProps & { readonly unit: string | undefined; readonly edge?: string | undefined },
) {
  const { session, garment: id, part } = props;
  const outfit = session.outfit.value;
  const garment = outfit?.garments.find((one) => one.id === id);
  if (!outfit || !garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const use = part === undefined ? undefined : garment.units.find((one) => one.id === part);
  const unit = unitCalled(use?.unit ?? props.unit ?? '');
  if (!unit) return <NotThere session={session} what="This version has no such ready-made part" />;
  return (
    <OneUnit session={session} outfit={outfit} garment={garment} unit={unit} use={use} edge={props.edge} />
  );
}

/** A field as it stands in this form: beneath it what is proposed, and why. */
function withReason(form: UnitForm, name: string, field: Field): Field {
  const proposal = form.proposed[name];
  if (!proposal) return field;
  const because = proposal.because.replace(/\.?$/, '.');
  const text = proposalText(proposal, field, form.marking);
  const mine = (form.putting.entries[name] ?? text).trim() !== text;
  const instead = mine ? `Proposed: ${text}. ${because}` : because;
  return { ...field, means: field.means === undefined ? instead : `${field.means} ${instead}` };
}

function OneUnit(props: {
  readonly session: Session;
  readonly outfit: Outfit;
  readonly garment: Garment;
  readonly unit: Unit;
  readonly use: UnitUse | undefined;
  readonly edge: string | undefined;
}) {
  const { session, outfit, garment, unit, use, edge } = props;
  const form = useUnitForm(outfit, garment, unit, use, edge);
  const { putting, marking, faults, made, put } = form;
  const root = useRef<HTMLFormElement>(null);
  const good = useRef<UnitsMade | undefined>(undefined);
  const pressed = useSignal(false);
  if (made.ok) good.current = made.value;
  const nameless = putting.name.trim() === '' ? 'Give the part a name, such as its own.' : undefined;

  const handIn = (): void => {
    pressed.value = true;
    if (!made.ok || nameless !== undefined) {
      const at = nameless === undefined ? [...faults.keys()][0] : 'name';
      const box = root.current?.querySelector<HTMLElement>(`[data-field="${CSS.escape(at ?? '')}"]`);
      box?.scrollIntoView?.({ block: 'center' });
      box?.querySelector<HTMLElement>('input, select, textarea, button')?.focus({ preventScroll: true });
      return;
    }
    const { outfit: after, unit: id } = made.value;
    const name = putting.name.trim();
    ask(session, after, `${use ? 'changed' : 'put on'} ${name}`, () => {
      form.clear();
      justPut.value = { garment: garment.id, unit: id, how: use ? 'Changed' : 'New' };
      go({ screen: 'outfit', outfit: session.id, at: ['garment', garment.id] });
    });
  };

  const all = Object.entries(unit.fields);
  // What stands against it and has no field of its own.
  const adrift = [...faults].filter(([field]) => !(field in unit.fields) && !/^(at|cloth)\./.test(field));
  const asked = all.filter(([, field]) => askedFirst(field));
  const folded = all.filter(([, field]) => !askedFirst(field));
  const box = ([name, field]: readonly [string, Field]) => (
    <FieldBox
      key={name}
      name={name}
      field={withReason(form, name, field)}
      text={form.text(name, field)}
      fault={faults.get(name)}
      marking={marking}
      onText={(text) => put({ entries: { ...putting.entries, [name]: text } })}
    />
  );
  const stands = Object.fromEntries(folded.map(([name, field]) => [name, form.text(name, field)]));
  return (
    <main class="page describe" data-part="unit" data-unit={unit.id}>
      <Head
        session={session}
        up={
          use
            ? [{ say: garment.name, href: hashOf(session, 'garment', garment.id) }]
            : [
                { say: garment.name, href: hashOf(session, 'garment', garment.id) },
                { say: 'Other parts', href: hashOf(session, 'garment', garment.id, 'add') },
              ]
        }
        title={use?.name ?? unit.name}
      />
      <div class="unit-head">
        <SketchPicture sketch={unit.sketch} />
        <p>{unit.tells}</p>
      </div>
      <div class="unit-work">
        <form
          ref={root}
          class="fields"
          aria-label="What it is to be"
          noValidate
          onSubmit={(submitted) => {
            submitted.preventDefault();
            handIn();
          }}
        >
          {Object.entries(unit.places).map(([name, place]) => (
            <PlaceBox
              key={name}
              name={name}
              asked={place}
              garment={form.garment}
              picked={putting.at[name] ?? []}
              fault={faults.get(`at.${name}`)}
              marking={marking}
              onPick={(at) => put({ at: { ...putting.at, [name]: at } })}
            />
          ))}
          {asked.map(box)}
          <ClothBoxes
            outfit={outfit}
            unit={unit}
            chosen={putting.cloths}
            faults={faults}
            marking={marking}
            onCloth={(name, cloth) => put({ cloths: { ...putting.cloths, [name]: cloth } })}
          />
          {folded.length > 0 && (
            <MoreFields
              words={foldedWords(folded, { unit: marking.unit, entries: stands })}
              atFault={folded.some(([name]) => faults.has(name))}
            >
              {folded.map(box)}
            </MoreFields>
          )}
          <TextBox
            name="name"
            label="Name of the part"
            text={putting.name}
            fault={pressed.value ? nameless : undefined}
            onText={(name) => put({ name })}
          />
          {form.touched && (
            <div class="choice again">
              <button type="button" class="plain" data-part="as-proposed" onClick={form.clear}>
                {use ? 'Back to what it was' : 'Back to the proposed figures'}
              </button>
            </div>
          )}
          <div class="put-on field-wide">
            {form.others.length > 0 && (
              <p class="fault" data-part="others">
                <span>With this, another part cannot be made. {unitFaultWords(form.others)}</span>
              </p>
            )}
            {adrift.map(([field, say]) => (
              <p class="fault" key={field} data-part="fault">
                <span>{say}</span>
              </p>
            ))}
            {pressed.value && faults.size > adrift.length && (
              <p class="fault" role="alert">
                <span>{[...faults.values()][0]}</span>
              </p>
            )}
            {made.ok && <Misfits made={made.value} garment={garment.id} marking={marking} />}
            <button type="submit" class="main big">
              {use ? 'Change it' : 'Put it on'}
            </button>
          </div>
        </form>
        {good.current && (
          <UnitOutcome made={good.current} garment={garment.id} marking={marking} stale={!made.ok} />
        )}
      </div>
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
