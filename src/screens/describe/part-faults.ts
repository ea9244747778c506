import type { Fault } from '../../fields/fields.ts';
import { type Problem, writeProblem } from '../../outfit/problem.ts';
import type { Asks } from './asks.ts';

/** The field that a problem stands at: the asked path nearest to its place, else none. */
function fieldAt(asks: Asks, path: string): string {
  const names = Object.keys(asks);
  const within = names.find((name) => path === name || path.startsWith(`${name}.`));
  if (within !== undefined) {
    const ask = asks[within];
    const [i, ...rest] = path === within ? [] : path.slice(within.length + 1).split('.');
    if (ask?.kind !== 'rows' || i === undefined) return within;
    const inner = ask.plain ? 'words' : fieldAt(ask.row, rest.join('.'));
    return inner === '' ? within : `${within}.${i}.${inner}`;
  }
  if (path === 'on') return names.find((name) => ['edge', 'run'].includes(asks[name]?.kind ?? '')) ?? '';
  // Whether it has a fold is a matter of how it is cut.
  if (path.startsWith('outline') && names.includes('cut')) return 'cut';
  // Something whole is wrong: it stands at the first thing asked of it.
  return path === '' ? '' : (names.find((name) => name.startsWith(`${path}.`)) ?? '');
}

/** Problems of a description as faults of the form; those that are not about this part stand at no field. */
export function faultsOf(problems: readonly Problem[], place: string, asks: Asks): readonly Fault[] {
  return problems.map((problem) => {
    const inside = problem.at === place || problem.at.startsWith(`${place}/`);
    const path = inside
      ? problem.at
          .slice(place.length + 1)
          .split('/')
          .join('.')
      : '';
    return { field: inside ? fieldAt(asks, path) : '', say: writeProblem(problem) };
  });
}
