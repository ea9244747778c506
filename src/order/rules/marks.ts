import { practice } from '../../cloth/source.ts';
import { lower } from '../../outfit/lower.ts';
import type { Marker } from '../../outfit/outfit.ts';
import type { Made, MarkMade } from '../expand/made.ts';
import type { MarkConcern } from '../running-types.ts';
import type { Constraint, MarkKiller, Step, StepId } from '../step.ts';
import type { Web } from '../web.ts';

const RULE = 'marks must live';

/** What takes out a mark of each kind. Chalk and thread stay until they are brushed or pulled out. */
export const killerOf: Readonly<Record<Marker['kind'], MarkKiller | undefined>> = {
  chalk: undefined,
  thread: undefined,
  'heat-fading': 'heat',
  'air-fading': 'time',
  'water-fading': 'water',
};

/** What keeping marks alive asks for: constraints, steps that mark again, and what the maker should know. */
export interface MarksKept {
  readonly constraints: readonly Constraint[];
  readonly again: readonly Step[];
  readonly concerns: readonly MarkConcern[];
}

/**
 * A mark that heat, time or water takes out is used before that happens, or made again after it.
 *
 * Where the order is free, the killer is put after the last use or before the marking; where it is forced between them, marking again is put into the order,
 * and the maker is told of it with the markers that would live. Adds to the web as it goes, so no loop can arise.
 */
export function marksLive(
  made: Made,
  steps: ReadonlyMap<StepId, Step>,
  web: Web,
  isWaived: (c: Constraint) => boolean,
): MarksKept {
  const kept = { constraints: [] as Constraint[], again: [] as Step[], concerns: [] as MarkConcern[] };
  for (const mark of made.marks) {
    const by = killerOf[mark.marker.kind];
    if (by === undefined) continue;
    keep(made, steps, web, isWaived, mark, by, kept);
  }
  return kept;
}

interface Kept {
  constraints: Constraint[];
  again: Step[];
  concerns: MarkConcern[];
}

function keep(
  made: Made,
  steps: ReadonlyMap<StepId, Step>,
  web: Web,
  isWaived: (c: Constraint) => boolean,
  mark: MarkMade,
  by: MarkKiller,
  kept: Kept,
): void {
  const put = (before: StepId, after: StepId, because: string, waivable = true) => {
    const constraint: Constraint = { before, after, rule: RULE, because, source: practice, waivable };
    kept.constraints.push(constraint);
    if (!isWaived(constraint)) web.add(constraint);
  };
  const marking = steps.get(mark.mark);
  if (!marking) return;
  // The marks that are in the cloth just now, and who still goes by them.
  let live = marking;
  let users = mark.users;
  for (const killer of killers(made, steps, mark, by, web)) {
    if (killer.id === live.id || !users.length) continue;
    const forcedAfterMark = web.leads(live.id, killer.id);
    const needed = users.filter((user) => user !== killer.id && web.leads(killer.id, user));
    if (needed.length === 0) {
      // Nobody is forced to come after it: let them all come first, unless marking can wait for it altogether.
      for (const user of users) {
        if (user !== killer.id && !web.leads(user, killer.id))
          put(
            user,
            killer.id,
            `${lower(killer.say)}: that would take the ${lower(mark.marker.name)} out before it is used`,
          );
      }
      continue;
    }
    if (!forcedAfterMark) {
      put(
        killer.id,
        live.id,
        `${lower(killer.say)} comes before marking, because it would take the ${lower(mark.marker.name)} out`,
      );
      continue;
    }
    const again = markAgain(live, killer, kept.again.length);
    kept.again.push(again);
    put(
      killer.id,
      again.id,
      `${lower(killer.say)} takes the ${lower(mark.marker.name)} out, so it is marked again after it`,
      false,
    );
    for (const user of needed)
      put(again.id, user, `${lower(steps.get(user)?.say ?? '')}: that goes by these marks`, false);
    for (const user of users) {
      if (!needed.includes(user) && user !== killer.id && !web.leads(user, killer.id)) {
        put(
          user,
          killer.id,
          `${lower(killer.say)}: that would take the ${lower(mark.marker.name)} out before it is used`,
        );
      }
    }
    kept.concerns.push(concern(made, steps, mark, by, live, killer, needed, again));
    live = again;
    users = needed;
  }
}

/** Steps that take the marks out of the pieces in question, in an order that agrees with the web. */
function killers(
  made: Made,
  steps: ReadonlyMap<StepId, Step>,
  mark: MarkMade,
  by: MarkKiller,
  web: Web,
): readonly Step[] {
  const found: Step[] = [];
  for (const step of steps.values()) {
    if (step.garment !== made.garment.id) continue;
    const rests =
      by === 'time' &&
      (step.setUp.station === 'try-on' || web.into(step.id).some((c) => (c.wait ?? 0) > 3600));
    if (!rests && !step.kills.includes(by)) continue;
    if (step.pieces.some((piece) => mark.pieces.includes(piece))) found.push(step);
  }
  const later = new Map(found.map((step) => [step.id, web.after(step.id)]));
  // A killer that others come after is taken first; the count of killers behind it sorts them so.
  const behind = (step: Step): number => found.filter((other) => later.get(step.id)?.has(other.id)).length;
  return found
    .map((step) => ({ step, n: behind(step) }))
    .sort((a, b) => b.n - a.n)
    .map(({ step }) => step);
}

function markAgain(marking: Step, killer: Step, nth: number): Step {
  return {
    ...marking,
    id: `${marking.garment}/${marking.of.id}/mark-again-${nth + 1}-after-${killer.of.id}-${killer.action}`,
    action: 'mark-again',
    say: sayAgain(marking.say),
  };
}

/** Of two directions marked at once, only the second still needs its marks after a pressing. */
const sayAgain = (say: string): string =>
  say.endsWith(' again')
    ? say
    : `${say.replace('Mark both directions of tucks', 'Mark the second direction of tucks')} again`;

function concern(
  made: Made,
  steps: ReadonlyMap<StepId, Step>,
  mark: MarkMade,
  by: MarkKiller,
  live: Step,
  killer: Step,
  needed: readonly StepId[],
  again: Step,
): MarkConcern {
  const user = steps.get(needed[0] ?? '');
  const others = made.outfit.markers.filter(
    (marker) => marker.id !== mark.marker.id && killerOf[marker.kind] === undefined,
  );
  return {
    mark: live.id,
    killer: killer.id,
    by,
    needed: user?.id ?? live.id,
    say: `The ${lower(mark.marker.name)} would be gone: “${killer.say}” takes it out before “${user?.say ?? ''}”`,
    again: again.id,
    otherMarkers: others.map(({ id, name }) => ({ id, name })),
    at: mark.at,
  };
}
