import { practice } from '../../cloth/source.ts';
import type { Made } from '../expand/made.ts';
import type { Rework, UndoStep } from '../running-types.ts';
import { type Constraint, type SetUp, type Step, type StepId, undoId } from '../step.ts';

const RULE = 'undo, then do again';

/** What stitches are cut with. */
export const RIPPER = 'seam ripper';

/** True for a step that takes something back or cuts it anew. */
export const isUndo = ({ action }: Pick<Step, 'action'>): boolean =>
  /^(unpick|open|cut-anew|lines-anew)-/.test(action);

/** True for a step that takes stitches out. */
export const isUnpicking = ({ action }: Pick<Step, 'action'>): boolean => /^(unpick|open)-/.test(action);

/** What work taken back adds to the steps of a garment. */
export interface Reworked {
  /** The cards of what is undone. */
  readonly steps: readonly Step[];
  readonly constraints: readonly Constraint[];
}

/**
 * What was sewn last comes out first, and all of it before anything is cut again; a piece cut again gets its lines before
 * anything else is done to it; a seam is sewn again when it is open.
 *
 * Nothing but undoing ever comes before undoing, so no loop can arise.
 */
export function reworked(made: Made, reworks: readonly Rework[], done: ReadonlySet<StepId>): Reworked {
  const found: Step[] = [];
  const constraints: Constraint[] = [];
  const own = new Map(
    [...made.subjects.values()].flatMap(({ steps }) => steps.map((step) => [step.id, step] as const)),
  );
  for (const rework of reworks) {
    const steps = rework.undo.flatMap((undo) => stepFor(made, rework.id, undo) ?? []);
    const redone = new Set(rework.again.map(({ step }) => step));
    const put = (before: Step, after: Step, because: string, waivable = false) =>
      constraints.push({
        before: before.id,
        after: after.id,
        rule: RULE,
        because,
        source: practice,
        waivable,
      });
    steps.forEach((step, i) => {
      const next = steps[i + 1];
      if (next) put(step, next, sayNext(step, next), isUnpicking(step) && isUnpicking(next));
    });
    for (const step of steps) {
      for (const other of own.values()) {
        if (!redone.has(other.id) && done.has(other.id)) continue;
        if (
          !isUnpicking(step) &&
          other.of.id !== step.of.id &&
          other.pieces.some((piece) => step.pieces.includes(piece))
        )
          put(
            step,
            other,
            step.action.startsWith('cut-anew')
              ? 'it is cut anew before anything is done to it'
              : 'its lines are marked before anything is done to it',
          );
        else if (isUnpicking(step) && redone.has(other.id) && other.of.id === step.of.id)
          put(step, other, 'it is opened before it is sewn again');
      }
    }
    found.push(...steps);
  }
  return { steps: found, constraints };
}

const sayNext = (step: Step, next: Step): string =>
  isUnpicking(next)
    ? 'what was sewn last comes out first'
    : isUnpicking(step)
      ? 'the old piece is out before the new one is cut, so that it can be laid under it'
      : 'a piece is cut before its lines are marked';

/** The steps that are done again, with the words and minutes of the latest rework that asks for it. */
export function doneAgain(
  steps: ReadonlyMap<StepId, Step>,
  reworks: readonly Rework[],
): ReadonlyMap<StepId, Step> {
  const found = new Map<StepId, Step>();
  for (const { id, again } of reworks) {
    for (const { step: name, only, side, minutes } of again) {
      const step = steps.get(name);
      if (!step) continue;
      found.set(name, {
        ...step,
        ...(only === undefined ? {} : { say: `${step.say}, ${only}` }),
        minutes,
        again: {
          rework: id,
          only: only ?? '',
          ...(side === undefined ? {} : { side }),
          say: step.say,
          minutes: step.minutes,
        },
      });
    }
  }
  return found;
}

/** The card of an undoing; none where its garment or pieces are no longer there. */
function stepFor(made: Made, rework: string, undo: UndoStep): Step | undefined {
  if (undo.garment !== made.garment.id || !made.subjects.has(undo.of.id)) return undefined;
  const there = undo.pieces.filter((piece) => made.looked.pieces.has(piece));
  if (there.length === 0) return undefined;
  return {
    id: undoId(rework, undo),
    garment: undo.garment,
    of: undo.of,
    action: `${undo.action}-${rework}`,
    setUp: setUpFor(undo),
    say: undo.say,
    pieces: there,
    edges: undo.edges.filter((edge) => made.looked.beside.has(edge)),
    times: undo.times,
    minutes: undo.minutes,
    final: undo.action === 'cut-anew',
    kills: [],
  };
}

const setUpFor = ({ action }: UndoStep): SetUp =>
  action === 'cut-anew'
    ? { station: 'cut', thread: '', tool: '' }
    : action === 'lines-anew'
      ? { station: 'mark', thread: '', tool: '' }
      : { station: 'hand', thread: '', tool: RIPPER };
