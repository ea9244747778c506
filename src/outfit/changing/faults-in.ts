import { disagreements } from '../agreement.ts';
import type { Garment, Outfit } from '../outfit.ts';
import { type Problem, writeProblem } from '../problem.ts';
import { LISTS } from './part-lists.ts';
import type { UnitFault } from './units.ts';

/** What is wrong with the names in a garment, in a maker's words, each with the unit that brought the part. */
export function faultsIn(outfit: Outfit, garment: Garment): readonly UnitFault[] {
  return problemsIn(outfit, garment).map((problem) => {
    const [, , , list, place] = problem.at.split('/');
    const key = LISTS.find((one) => one === list);
    const part = key && garment[key][Number(place)];
    const use = part && garment.units.find((one) => one.brought.includes(part.id));
    const said = writeProblem(problem).replaceAll(/`([^`]*)`/g, '“$1”');
    const say = `${said.charAt(0).toUpperCase()}${said.slice(1)}${said.endsWith('?') ? '' : '.'}`;
    return {
      garment: garment.id,
      unit: use?.id ?? '',
      name: part?.name ?? garment.name,
      faults: [{ field: '', say }],
    };
  });
}

/** What the names in one garment disagree about, each with its place in the whole description. */
export function problemsIn(outfit: Outfit, garment: Garment): readonly Problem[] {
  const place = outfit.garments.findIndex(({ id }) => id === garment.id);
  return disagreements({ ...outfit, garments: [garment] }).map((problem) => ({
    ...problem,
    at: problem.at.replace(
      /^\/garments\/0(?=\/|$)/,
      `/garments/${place < 0 ? outfit.garments.length : place}`,
    ),
  }));
}
