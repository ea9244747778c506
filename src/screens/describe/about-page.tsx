/**
 * What the outfit is called, for when, and in which measures it is described.
 *
 * What others may hold on to: `main[data-part="about"]`, its fields `name`, `event`, `date`, `units`, `about`, and the
 * button `Keep this`.
 */
import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { setAbout } from '../../outfit/changing/whole.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { HouseNotice } from '../house.tsx';
import { FieldBox } from '../reckoner/field.tsx';
import type { Session } from '../session.ts';
import { ask } from './change.ts';
import type { PageProps } from './describe.tsx';
import { useFilled } from './filled.ts';
import { Head, hashOf, NotThere } from './head.tsx';
import { TextBox } from './text-box.tsx';
import { UndoBar } from './undo-bar.tsx';
import './wearer.css';

const PLAIN = { unit: 'mm', step: 1 } as const;
/** Longest account of an outfit that a file may hold. */
const LONGEST = 2000;

/** Name, day and measuring system of the outfit. */
export function AboutPage({ session }: PageProps) {
  const outfit = session.outfit.value;
  return outfit ? <About session={session} outfit={outfit} /> : <NotThere session={session} what="" />;
}

function About({ session, outfit }: { readonly session: Session; readonly outfit: Outfit }) {
  const stands = {
    name: outfit.name,
    event: outfit.event.name,
    date: outfit.event.date,
    units: outfit.units,
    about: outfit.about,
  };
  const { text, write, changed, clear } = useFilled(`${session.id}/about`, stands, 'mm', []);
  const form = useRef<HTMLFormElement>(null);
  const asked = useSignal(false);
  const faults: Readonly<Record<string, string | undefined>> = {
    name: text('name').trim() === '' ? 'Give the outfit a name, such as “The lamplighter”.' : undefined,
    event: text('event').trim() === '' ? 'Say what it is for, such as “First night”.' : undefined,
    date: text('date') === '' ? 'Choose the day by which it must be ready.' : undefined,
    about: text('about').length > LONGEST ? `Keep this under ${LONGEST} letters.` : undefined,
  };
  const fault = (name: string): string | undefined => (asked.value ? faults[name] : undefined);
  const save = (event: Event): void => {
    event.preventDefault();
    asked.value = true;
    const first = Object.keys(faults).find((name) => faults[name] !== undefined);
    if (first !== undefined) {
      form.current?.querySelector<HTMLElement>(`[data-field="${first}"] .field`)?.focus();
      return;
    }
    const now = setAbout(outfit, {
      name: text('name').trim(),
      about: text('about').trim(),
      event: { name: text('event').trim(), date: text('date') },
      units: text('units') === 'in' ? 'in' : 'mm',
    });
    ask(session, now, 'changed what the outfit is', () => {
      asked.value = false;
      clear();
    });
  };
  const box = (name: string, label: string, means?: string) => (
    <TextBox
      name={name}
      label={label}
      {...(means === undefined ? {} : { means })}
      text={text(name)}
      fault={fault(name)}
      onText={(now) => write(name, now)}
    />
  );
  return (
    <main class="page describe" data-part="about">
      <Head session={session} up={[{ say: outfit.name, href: hashOf(session) }]} title="About the outfit" />
      <form ref={form} class="fields" noValidate aria-label="About the outfit" onSubmit={save}>
        {box('name', 'Name')}
        {box('event', 'Occasion', 'What it is made for.')}
        <TextBox
          name="date"
          label="Day"
          means="When it must be ready."
          kind="date"
          text={text('date')}
          fault={fault('date')}
          onText={(now) => write('date', now)}
        />
        <FieldBox
          name="units"
          field={{
            kind: 'choice',
            label: 'Measured in',
            means: 'How lengths are shown. What was written keeps its length.',
            options: [
              { value: 'in', label: 'inches' },
              { value: 'mm', label: 'millimetres' },
            ],
            start: 'mm',
          }}
          text={text('units')}
          fault={undefined}
          marking={PLAIN}
          onText={(now) => write('units', now)}
        />
        <FieldBox
          name="about"
          field={{
            kind: 'lines',
            label: 'In your own words',
            means: 'What it looks like, and anything not to forget.',
            start: { in: '', mm: '' },
          }}
          text={text('about')}
          fault={fault('about')}
          marking={PLAIN}
          onText={(now) => write('about', now)}
        />
        {outfit.invented && (
          <p class="quiet field-wide">
            This outfit is a demonstration: wearer, occasion and garments are invented.
          </p>
        )}
        <div class="choice field-wide">
          <button type="submit" class={changed.length > 0 ? 'main' : 'plain'}>
            Keep this
          </button>
        </div>
      </form>
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
