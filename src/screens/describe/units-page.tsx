/**
 * The ready-made parts, by drawing and name.
 *
 * What others may hold on to: `main[data-part="units"]`; one `a[data-unit]` a unit, with `data-fits` where all that it
 * needs is there; buttons named by the groups.
 */
import { useMemo } from 'preact/hooks';
import { missingFor } from '../../outfit/changing/suggest-units.ts';
import { UNITS } from '../../outfit/units/all.ts';
import type { Unit } from '../../outfit/units/unit.ts';
import { HouseNotice } from '../house.tsx';
import type { GarmentProps } from './describe.tsx';
import { Head, hashOf, NotThere } from './head.tsx';
import { UndoBar } from './undo-bar.tsx';
import { UnitLink } from './unit-link.tsx';

const groupsOf = (units: readonly Unit[]): readonly string[] => [...new Set(units.map(({ group }) => group))];

/** The ready-made units to choose from: those that fit now first, by groups; then the others, and what they need. */
export function UnitsPage({ session, garment: id }: GarmentProps) {
  const garment = session.outfit.value?.garments.find((one) => one.id === id);
  const missing = useMemo(
    () => new Map(garment && UNITS.map((unit) => [unit.id, missingFor(garment, unit)])),
    [garment],
  );
  if (!garment) return <NotThere session={session} what="This garment is not in the outfit" />;
  const fits = UNITS.filter((unit) => missing.get(unit.id)?.length === 0);
  const later = UNITS.filter((unit) => !fits.includes(unit));
  const list = (units: readonly Unit[], which: string) =>
    groupsOf(units).map((group) => (
      <section key={group} class="unit-group" data-group={`${which} ${group}`}>
        <h3 tabIndex={-1}>{group}</h3>
        <ul class="unit-choice">
          {units
            .filter((unit) => unit.group === group)
            .map((unit) => (
              <li key={unit.id}>
                <UnitLink
                  unit={unit}
                  href={hashOf(session, 'garment', id, 'add', unit.id)}
                  missing={missing.get(unit.id) ?? []}
                />
              </li>
            ))}
        </ul>
      </section>
    ));
  const jump = (group: string): void => {
    const section = document.querySelector<HTMLElement>(`[data-group="fits ${group}"]`);
    section?.scrollIntoView({ block: 'start' });
    section?.querySelector('h3')?.focus({ preventScroll: true });
  };
  return (
    <main class="page describe" data-part="units">
      <Head
        session={session}
        up={[{ say: garment.name, href: hashOf(session, 'garment', id) }]}
        title="Ready-made part"
      />
      {groupsOf(fits).length > 2 && (
        <div class="choice jumps">
          {groupsOf(fits).map((group) => (
            <button key={group} type="button" class="plain" onClick={() => jump(group)}>
              {group}
            </button>
          ))}
        </div>
      )}
      <section>
        <h2>Fits here now</h2>
        {list(fits, 'fits')}
      </section>
      {later.length > 0 && (
        <section>
          <h2>Needs another part first</h2>
          {list(later, 'later')}
        </section>
      )}
      <UndoBar session={session} />
      <HouseNotice />
    </main>
  );
}
