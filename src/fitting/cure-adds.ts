import type { Garment, Work } from '../outfit/outfit.ts';
import type { Cure } from './cure-types.ts';
import { entryCalled } from './entries/all.ts';
import type { Role } from './entry.ts';
import type { Observation } from './observation.ts';

/** An id that nothing in the garment has yet. */
function unused(garment: Garment, taken: ReadonlySet<string>, wish: string): string {
  const ids = new Set(
    [...garment.pieces, ...garment.works, ...garment.joins, ...garment.gates].map(({ id }) => id),
  );
  for (const use of garment.units) ids.add(use.id);
  let id = wish;
  for (let n = 2; ids.has(id) || taken.has(id); n += 1) id = `${wish}-${n}`;
  return id;
}

/** The works that are sewn in besides for the causes that were taken; the same thing only once. */
export function addsOf(
  garment: Garment,
  roles: ReadonlyMap<string, Role>,
  observations: readonly Observation[],
  taken: Cure['taken'],
): Cure['adds'] {
  const added = new Map<string, Work>();
  const ids = new Set<string>();
  for (const { observation, cause } of taken) {
    const seen = observations.find(({ id }) => id === observation);
    const its = entryCalled(seen?.entry ?? '')?.causes.find(({ id }) => id === cause);
    for (const want of its?.wants ?? []) {
      if (want.kind !== 'add') continue;
      const on = garment.pieces.filter(({ id }) => want.on.includes(roles.get(id) ?? 'other'));
      const [first] = on;
      if (!first || added.has(want.name)) continue;
      const id = unused(garment, ids, `put-right-${cause}`);
      ids.add(id);
      added.set(want.name, {
        kind: 'own',
        id,
        name: want.name,
        on: first.id,
        with: [],
        when: 'late',
        steps: want.steps,
      });
    }
  }
  return [...added.values()].map((work) => ({ garment: garment.id, work }));
}
