import type { StepId } from '../step.ts';
import { type CostByPlace, costsByPlace } from './late-costs.ts';
import type { Prepared } from './undoing.ts';
import type { Alteration } from './undoing-types.ts';

/** Something that may turn out not to fit, and what would then be altered. */
export interface Misfit {
  readonly id: string;
  /** As a maker would say it: `Crotch low`. */
  readonly name: string;
  /** How likely it is, 0 to 1. */
  readonly chance: number;
  readonly alterations: readonly Alteration[];
}

/** One point of the running order. */
export interface LatePoint {
  /** The step that has just been done. */
  readonly step: StepId;
  /** How many steps are done by then. */
  readonly done: number;
  /** What is to be expected: the sum of chance times minutes over all misfits. */
  readonly minutes: number;
  /** Id of the misfit that would cost most if it were found here; empty where none costs anything. */
  readonly worst: string;
  /** What that one would cost, without its chance. */
  readonly worstMinutes: number;
}

/** What it costs to find out late. */
export interface LateCurve {
  /** One for every step of the order, the first one done first. */
  readonly points: readonly LatePoint[];
  /** What each misfit would cost, by its id, with so many steps done (0: none). */
  readonly costs: ReadonlyMap<string, CostByPlace>;
}

/**
 * For every point of the running order: what the misfits, found there, would cost to undo and do again. Misfits that ask
 * for the same alterations are worked out once. `own` has the maker's own minutes by step.
 */
export function costOfFindingLate(
  prepared: Prepared,
  misfits: readonly Misfit[],
  own?: ReadonlyMap<StepId, number>,
): LateCurve {
  const keys = misfits.map(({ alterations }) => alterations.map(spelt).sort().join(' '));
  const asked = new Map(misfits.map(({ alterations }, i) => [keys[i], alterations]));
  const found = costsByPlace(prepared, [...asked.values()], own);
  const worked = new Map([...asked.keys()].map((key, i) => [key, found[i]]));
  const costs = new Map(
    misfits.flatMap(({ id }, i): readonly [string, CostByPlace][] => {
      const cost = worked.get(keys[i]);
      return cost ? [[id, cost]] : [];
    }),
  );
  return { points: pointsOf(prepared.running.sequence, misfits, costs), costs };
}

/** The points of a running order for some of the misfits whose costs are known. */
export function pointsOf(
  sequence: readonly StepId[],
  misfits: readonly Misfit[],
  costs: LateCurve['costs'],
): readonly LatePoint[] {
  const known = misfits.flatMap(({ id, chance }) => {
    const cost = costs.get(id);
    return cost ? [{ id, chance, cost }] : [];
  });
  return sequence.map((step, i) => {
    const done = i + 1;
    let [minutes, worst, worstMinutes] = [0, '', 0];
    for (const { id, chance, cost } of known) {
      const here = cost[done] ?? 0;
      minutes += chance * here;
      if (here > worstMinutes) [worst, worstMinutes] = [id, here];
    }
    return { step, done, minutes, worst, worstMinutes };
  });
}

const spelt = ({ garment, piece, how, edges, side }: Alteration): string =>
  `${garment}/${piece}/${how}/${how === 'edges' ? [...edges].sort().join(',') : ''}/${side}`;
