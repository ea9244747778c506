import { writeSource } from '../../cloth/source.ts';
import type { Entry, ReferenceCheck } from '../../fitting/entry.ts';
import type { SeenShown } from './figures.ts';

/** What the page says of a thing that is seen; its own source only where no cause has the same. */
function shown({ id, seen, place, causes, source }: Entry): SeenShown {
  const same = causes.some((cause) => writeSource(cause.source) === writeSource(source));
  return {
    id,
    name: seen,
    place,
    lines: [
      ...(same ? [] : [{ source }]),
      ...causes.map((cause) => ({ words: `Because ${cause.is}.`, cure: cause.change, source: cause.source })),
    ],
  };
}

/** What is seen at a try-on as the page lists it: the checks first. */
export const seenShown = (
  entries: readonly Entry[],
  checks: readonly ReferenceCheck[],
): readonly SeenShown[] => [
  {
    id: 'checks',
    name: 'Checks that come first',
    place: '',
    lines: checks.map(({ say, source }) => ({ words: `${say}.`, source })),
  },
  ...entries.map(shown),
];
