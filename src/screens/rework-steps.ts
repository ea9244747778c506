import { undoId } from '../order/step.ts';
import type { Progress } from '../store/progress-types.ts';

type Reworks = Progress['reworks'];

/** The cards that undo something, of all reworks. */
export const undoSteps = (reworks: Reworks): ReadonlySet<string> =>
  new Set(reworks.flatMap(({ id, undo }) => undo.map((one) => undoId(id, one))));

/** The rework that a card belongs to: it undoes something, or does again what is not done yet; none for any other. */
export const reworkOf = (
  { reworks, steps }: Pick<Progress, 'reworks' | 'steps'>,
  step: string,
): Reworks[number] | undefined =>
  reworks.findLast(
    ({ id, undo, again }) =>
      undo.some((one) => undoId(id, one) === step) ||
      (steps.get(step)?.doneAt === undefined && again.some((one) => one.step === step)),
  );
