import type { Length } from '../length/length.ts';
import { writeLength } from '../length/writing.ts';
import type { Outfit, Piece } from '../outfit/outfit.ts';
import { readoutOf } from './card/readout.ts';
import { markingFor, settingsOf } from './card/settings.ts';
import { subjectOf } from './card/subject.ts';
import type { Mark, Readout, Setting } from './card-types.ts';
import type { Running } from './running-types.ts';
import type { Step, StepId } from './step.ts';

/** A description and the order of making that follows from it. */
export interface Ordered {
  readonly outfit: Outfit;
  readonly running: Running;
}

/** A step that is still there but no longer the same. */
export interface StepChanged {
  readonly step: Step;
  readonly was: Step;
  /** What is different, one line: `stitch: 2 mm → 2.5 mm`. */
  readonly how: string;
}

/** What a change of the description does to the order of making. Steps not done and steps done are told apart. */
export interface Effect {
  readonly added: readonly Step[];
  readonly gone: readonly Step[];
  readonly changed: readonly StepChanged[];
  /** Steps that are done and would no longer exist. */
  readonly doneGone: readonly Step[];
  /** Steps that are done and would now be something else. */
  readonly doneChanged: readonly StepChanged[];
  /** Steps that were done once, were gone meanwhile, and count as done again. */
  readonly doneBack: readonly Step[];
  /** Minutes still to do. */
  readonly minutes: { readonly before: number; readonly after: number };
  /** True where anything that is done is gone or something else. */
  readonly touchesDone: boolean;
}

/**
 * Compares the order before and after a change; `before` is undefined where there was none yet. A step is something
 * else where its words, its pieces, its place of work, its time or the figures and marks on its card differ, and a
 * cutting also where what is cut has another shape.
 */
export function effectOf(before: Ordered | undefined, after: Ordered, done: readonly StepId[]): Effect {
  const isDone = new Set(done);
  const was = before?.running.steps ?? new Map<StepId, Step>();
  const now = after.running.steps;
  const inOrder = ({ sequence, steps }: Running): readonly Step[] =>
    sequence.flatMap((id) => steps.get(id) ?? []);
  const present = inOrder(after.running);
  const past = before ? inOrder(before.running) : [];
  const came = present.filter((step) => !was.has(step.id));
  const went = past.filter((step) => !now.has(step.id));
  const same = before ? untouched(before.outfit, after.outfit) : new Set<string>();
  const changed = before
    ? present.flatMap((step): readonly StepChanged[] => {
        const old = was.get(step.id);
        if (!old) return [];
        const how = [
          ...ofSteps(old, step),
          ...(same.has(step.garment) ? [] : ofCards(before, old, after, step)),
        ];
        return how.length > 0 ? [{ step, was: old, how: shortened(how) }] : [];
      })
    : [];
  const doneGone = went.filter((step) => isDone.has(step.id));
  const doneChanged = changed.filter(({ step }) => isDone.has(step.id));
  const toDo = (steps: readonly Step[]): number =>
    steps.reduce((sum, step) => sum + (isDone.has(step.id) ? 0 : step.minutes), 0);
  return {
    added: came.filter((step) => !isDone.has(step.id)),
    gone: went.filter((step) => !isDone.has(step.id)),
    changed: changed.filter(({ step }) => !isDone.has(step.id)),
    doneGone,
    doneChanged,
    doneBack: came.filter((step) => isDone.has(step.id)),
    minutes: { before: toDo(past), after: toDo(present) },
    touchesDone: doneGone.length > 0 || doneChanged.length > 0,
  };
}

/** Differences that are named one by one; the rest is only counted. */
const NAMED = 3;

function shortened(differences: readonly string[]): string {
  const named = differences.slice(0, NAMED);
  const more = differences.length - named.length;
  return more > 0 ? `${named.join('; ')}; and ${more} more` : named.join('; ');
}

const alike = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Garments of which nothing that a card shows can have changed. */
function untouched(before: Outfit, after: Outfit): ReadonlySet<string> {
  const whole =
    before.units === after.units &&
    alike(before.cloths, after.cloths) &&
    alike(before.markers, after.markers);
  if (!whole) return new Set();
  const old = new Map(before.garments.map((garment) => [garment.id, garment]));
  return new Set(
    after.garments.filter((garment) => alike(old.get(garment.id), garment)).map((garment) => garment.id),
  );
}

function* ofSteps(was: Step, now: Step): Iterable<string> {
  if (was.say !== now.say) yield `was “${was.say}”`;
  if (was.setUp.station !== now.setUp.station)
    yield `at the ${now.setUp.station}, not the ${was.setUp.station}`;
  if (was.setUp.thread !== now.setUp.thread)
    yield `thread: ${named(was.setUp.thread)} → ${named(now.setUp.thread)}`;
  if (was.setUp.tool !== now.setUp.tool) yield `tool: ${named(was.setUp.tool)} → ${named(now.setUp.tool)}`;
  if (was.say === now.say && !alike(was.pieces, now.pieces)) yield 'other pieces';
  else if (was.say === now.say && !alike(was.edges, now.edges)) yield 'other edges';
  if (was.minutes !== now.minutes) yield `${was.minutes} → ${now.minutes} min`;
}

const named = (name: string): string => (name === '' ? 'none' : name);

function* ofCards(before: Ordered, was: Step, after: Ordered, now: Step): Iterable<string> {
  const [old, fresh] = [subjectOf(before.outfit, was), subjectOf(after.outfit, now)];
  if (!old || !fresh) return;
  if (now.of.kind === 'piece') {
    for (const id of now.pieces) yield* ofShapes(old.looked.pieces.get(id), fresh.looked.pieces.get(id));
  }
  yield* ofSettings(settingsOf(old), settingsOf(fresh));
  const [showed, shows] = [readoutOf(old), readoutOf(fresh)];
  if (showed.ok && shows.ok) {
    const write = (length: Length): string => writeLength(length, markingFor(after.outfit.units)).text;
    yield* ofReadouts(showed.value.readout, shows.value.readout, write);
  } else if (showed.ok !== shows.ok) {
    yield shows.ok ? 'its figures can be worked out now' : 'its figures cannot be worked out any more';
  }
}

function* ofShapes(was: Piece | undefined, now: Piece | undefined): Iterable<string> {
  if (!was || !now) return;
  if (was.cloth !== now.cloth) yield `${now.name}: another cloth`;
  if (was.cut !== now.cut || was.cutAfterWork !== now.cutAfterWork) yield `${now.name}: cut another way`;
  if (was.allowance !== now.allowance) yield `${now.name}: another seam allowance`;
  if ((was.grain ?? 0) !== (now.grain ?? 0)) yield `${now.name}: another grain`;
  if (!alike(was.outline, now.outline)) yield `${now.name}: another shape`;
}

function* ofSettings(was: readonly Setting[], now: readonly Setting[]): Iterable<string> {
  const old = new Map(was.map(({ name, figure }) => [name, figure]));
  for (const { name, figure } of now) {
    const before = old.get(name);
    if (before === undefined) yield `new: ${name} ${figure}`;
    else if (before !== figure) yield `${name}: ${before} → ${figure}`;
    old.delete(name);
  }
  for (const name of old.keys()) yield `no longer: ${name}`;
}

const marksIn = (readout: Readout): ReadonlyMap<string, Mark> =>
  new Map(
    (readout.kind === 'marks' ? readout.sets : []).flatMap(({ marks }) =>
      marks.map((mark) => [mark.item, mark] as const),
    ),
  );

function* ofReadouts(was: Readout, now: Readout, write: (length: Length) => string): Iterable<string> {
  if (alike(was, now)) return;
  if (was.kind === 'marks' && now.kind === 'marks') {
    const [old, fresh] = [marksIn(was), marksIn(now)];
    if (old.size !== fresh.size) yield `${old.size} → ${fresh.size} marks`;
    for (const [item, mark] of fresh) {
      const before = old.get(item);
      // Read off the maker's own rule: what moves by less than its finest mark is where it was.
      if (before && write(before.at) !== write(mark.at)) {
        yield `${mark.name}: ${write(before.at)} → ${write(mark.at)}`;
      }
    }
    return;
  }
  if (was.kind === 'count' && now.kind === 'count') {
    const sum = (readout: typeof was): number => readout.lines.reduce((all, { target }) => all + target, 0);
    yield sum(was) === sum(now) ? 'other lines to count' : `${sum(was)} → ${sum(now)} ${now.of}`;
    return;
  }
  yield now.kind === 'timers' ? 'other times' : 'another list to tick';
}
