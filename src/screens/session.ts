import { batch, computed, effect, type ReadonlySignal, signal, untracked } from '@preact/signals';
import type { Result } from '../length/result.ts';
import type { Card } from '../order/card-types.ts';
import type { Explained } from '../order/explain.ts';
import type { Loop, Running, Standing } from '../order/running-types.ts';
import type { StepId } from '../order/step.ts';
import type { Outfit } from '../outfit/outfit.ts';
import type { Problem } from '../outfit/problem.ts';
import type { Act, Deed, DeedId } from '../store/deed.ts';
import { placeOf } from '../store/deed-order.ts';
import { readPointer } from '../store/describe-change.ts';
import { applyDeeds } from '../store/progress.ts';
import type { Progress, StepProgress } from '../store/progress-types.ts';
import { untouched } from './bench/pad-act.ts';
import { namesUnkept, renamed, UNKEPT } from './names-to-come.ts';
import { nextStep, restUntil } from './next-step.ts';
import type { WarmCard } from './warm-card.ts';

/** The part of the ledger that a session writes to. A write settles when its transaction has ended. */
export interface SessionLedger {
  write(outfit: string, acts: readonly Act[]): Promise<readonly Deed[]>;
}

/** What turns the description into an order and a step into a card. */
export interface Rooms {
  readonly readOutfit: (raw: unknown) => Result<Outfit, readonly Problem[]>;
  readonly runningOrder: (outfit: Outfit, standing: Standing) => Result<Running, Loop>;
  readonly cardFor: (outfit: Outfit, running: Running, step: StepId) => Card | undefined;
  readonly explain: (running: Running, step: StepId) => Explained;
}

/** What a session needs from outside, so that tests can hold the clock. */
export interface SessionNeeds {
  readonly ledger: SessionLedger;
  /** The rooms, or a promise of them where the card of the last time is shown until they are there. */
  readonly rooms: Rooms | Promise<Rooms>;
  /** The open card as it was last worked out; shown until it is worked out anew. */
  readonly warm?: WarmCard | undefined;
  /** Told of the open card whenever it has been worked out. */
  readonly worked?: (progress: Progress, warm: WarmCard) => void;
  /** The time now, in ms since 1970: what deeds are dated by. */
  readonly now: () => number;
  /** The time last shown: a signal's value, so that what is computed from it moves with the screen. */
  readonly seen: () => number;
  /** Runs something once the screen has been drawn. */
  readonly afterPaint: (work: () => void) => void;
}

/** A timer that runs, or has just run out, on a step that is not the open one. */
export interface OtherTimer {
  readonly step: StepId;
  readonly item: string;
  readonly say: string;
  readonly startedAt: number;
  readonly seconds: number;
}

/** One outfit in work: all that the screens show of it, and the two ways to change it. */
export interface Session {
  readonly id: string;
  readonly progress: ReadonlySignal<Progress>;
  readonly outfit: ReadonlySignal<Outfit | undefined>;
  /** In which units lengths are shown unless the maker chooses otherwise. */
  readonly units: ReadonlySignal<'in' | 'mm'>;
  readonly problems: ReadonlySignal<readonly Problem[]>;
  readonly running: ReadonlySignal<Running | undefined>;
  readonly loop: ReadonlySignal<Loop | undefined>;
  /** The step that is open at the bench; undefined where all is done or nothing can be. */
  readonly step: ReadonlySignal<StepId | undefined>;
  readonly card: ReadonlySignal<Card | undefined>;
  readonly stepProgress: ReadonlySignal<StepProgress>;
  readonly finished: ReadonlySignal<boolean>;
  /** Until when the open step has to rest, in ms since 1970. */
  readonly resting: ReadonlySignal<number | undefined>;
  /** Timers of other steps, the one that ends first in front. */
  readonly otherTimers: ReadonlySignal<readonly OtherTimer[]>;
  /** How many deeds are shown but not yet acknowledged by the ledger. */
  readonly inFlight: ReadonlySignal<number>;
  /** Why the last write did not succeed; undefined where all is well. */
  readonly unkept: ReadonlySignal<string | undefined>;
  /** What the description has at a place (JSON Pointer); undefined where there is nothing. */
  described(at: string): unknown;
  /** Why a step stands where it does; undefined before there is an order. */
  why(step: StepId): Explained | undefined;
  /** Writes deeds: they show at once, and rest when the ledger has them. */
  act(...acts: readonly Act[]): void;
  /** Takes back the last deed that can be. */
  undo(): void;
  /** Marks the open step done and opens the next one. */
  done(): void;
  /** Opens another step. */
  openStep(step: StepId): void;
  /** Tries the writes again that were refused. */
  retry(): void;
  /** Deeds of the same outfit that another page or file has added. */
  hear(deeds: readonly Deed[]): void;
  /** Settles when everything written so far is in the ledger, or refused. */
  settled(): Promise<void>;
  /** Stops deriving. */
  close(): void;
}

/** What an order is derived from. */
interface Basis extends Standing {
  readonly outfit: Outfit;
  readonly reworks: Progress['reworks'];
}

const sameList = <T>(a: Iterable<T>, b: Iterable<T>): boolean => {
  if (a === b) return true;
  const [left, right] = [[...a], [...b]];
  return left.length === right.length && left.every((one, i) => one === right[i]);
};

/** Do two of them differ at most in what is done? */
const sameOrder = (a: Basis, b: Basis): boolean =>
  a.outfit === b.outfit &&
  a.added.length === b.added.length &&
  sameList(a.waived, b.waived) &&
  sameList(a.reworks, b.reworks);

/** How long a timer that ran out on another card is still mentioned there: ten minutes. */
const MENTION_MS = 10 * 60 * 1000;

/**
 * The only place where store, outfit, order and card are joined. A touch that neither finishes a step nor changes the
 * description leaves the order as it is; finishing a step shows the next card first and derives the order after the paint.
 */
export function startSession(loaded: Progress, needs: SessionNeeds): Session {
  const { ledger, now, seen, afterPaint, warm } = needs;
  const id = loaded.outfit;

  let kept = loaded;
  let waiting: Deed[] = [];
  let undoing = 0;
  let provisional = 0;
  /** The names in the ledger of deeds that were shown before it had them. */
  const names = new Map<DeedId, DeedId>();
  let pumping: Promise<void> | undefined;
  const progress = signal(loaded);
  const inFlight = signal(0);
  const unkept = signal<string | undefined>(undefined);

  const show = (): void => {
    progress.value = applyDeeds(kept, waiting);
    inFlight.value = waiting.length + undoing;
  };

  async function pump(): Promise<void> {
    while (waiting.length > 0) {
      // What names a deed before it waits until that one has its name.
      const unnamed = waiting.findIndex((deed, i) => i > 0 && namesUnkept(deed.act));
      const batch = waiting.slice(0, unnamed < 0 ? waiting.length : unnamed);
      const deeds = await ledger.write(
        id,
        batch.map((deed) => deed.act),
      );
      kept = applyDeeds(kept, deeds);
      for (const [i, { id: name }] of deeds.entries()) names.set(batch[i]?.id ?? name, name);
      waiting = waiting.slice(batch.length).map((deed) => ({ ...deed, act: renamed(deed.act, names) }));
      unkept.value = undefined;
      show();
    }
    while (undoing > 0) {
      const last = kept.undo;
      // Another page may be heard while the ledger writes, so what is kept is read after the write.
      const deeds = last ? await ledger.write(id, [{ kind: 'undone', deed: last.deed }]) : [];
      kept = applyDeeds(kept, deeds);
      undoing--;
      show();
    }
  }

  const write = (): void => {
    pumping ??= pump()
      .catch((error: unknown) => {
        undoing = 0;
        inFlight.value = waiting.length;
        unkept.value = error instanceof Error ? error.message : String(error);
        return 'refused' as const;
      })
      .then((outcome) => {
        pumping = undefined;
        if (outcome !== 'refused' && waiting.length + undoing > 0) write();
      });
  };

  // Its name sorts after every device, and its place never before the last deed's: so it always comes last.
  const provisionalDeed = (act: Act): Deed => {
    const seq = ++provisional;
    const last = progress.value.trail?.last;
    const [at, place] = [now(), last ? placeOf(last) : 0];
    const name: DeedId = `${UNKEPT}-${seq}`;
    return { id: name, device: UNKEPT, seq, at, outfit: id, act, ...(place > at ? { place } : {}) };
  };

  const act = (...acts: readonly Act[]): void => {
    batch(() => {
      for (const one of acts) {
        const deed = provisionalDeed(renamed(one, names));
        waiting.push(deed);
        progress.value = applyDeeds(progress.value, [deed]);
      }
      inFlight.value = waiting.length + undoing;
    });
    write();
  };

  const rooms = signal<Rooms | undefined>('then' in needs.rooms ? undefined : needs.rooms);
  // What fails to load is asked for again by whoever opens the next session; the warm card stays workable.
  const furnished = Promise.resolve(needs.rooms).then((there) => {
    rooms.value = there;
  });
  furnished.catch((error: unknown) => {
    unkept.value ??= error instanceof Error ? error.message : String(error);
  });

  const description = computed(() => progress.value.description);
  const read = computed(() => rooms.value?.readOutfit(description.value));
  const outfit = computed(() => (read.value?.ok ? read.value.value : undefined));
  const problems = computed(() => (!read.value || read.value.ok ? [] : read.value.error));

  const done = computed(() => progress.value.done);
  const added = computed(() => progress.value.added);
  const waived = computed(() => progress.value.waived);
  const reworks = computed(() => progress.value.reworks);
  const running = signal<Running | undefined>(undefined);
  const loop = signal<Loop | undefined>(undefined);
  let derivedFrom: Basis | undefined;

  const basis = (): Basis | undefined =>
    outfit.value && {
      outfit: outfit.value,
      done: done.value,
      added: added.value,
      waived: waived.value,
      reworks: reworks.value,
    };

  const derive = (): void => {
    const from = untracked(basis);
    if (!from || (derivedFrom && sameOrder(from, derivedFrom) && sameList(from.done, derivedFrom.done)))
      return;
    const found = rooms.peek()?.runningOrder(from.outfit, from);
    if (!found) return;
    derivedFrom = from;
    if (found.ok) running.value = found.value;
    loop.value = found.ok ? undefined : found.error;
  };

  const stopDeriving = effect(() => {
    const from = basis();
    if (from && derivedFrom && sameOrder(from, derivedFrom)) afterPaint(derive);
    else untracked(derive);
  });

  const asked = computed(() => progress.value.open);
  const step = computed(() => {
    const order = running.value;
    const open = asked.value;
    if (!order) return warm?.card.step === open ? open : undefined;
    if (open !== undefined && order.steps.has(open)) return open;
    return nextStep(order, { ...progress.peek(), done: done.value }, now());
  });
  const card = computed(() => {
    const [described, order, open] = [outfit.value, running.value, step.value];
    if (!order) return open === undefined ? undefined : warm?.card;
    return described && open !== undefined ? rooms.value?.cardFor(described, order, open) : undefined;
  });
  const units = computed(() => outfit.value?.units ?? warm?.units ?? 'in');
  const stopKeeping = effect(() => {
    const worked = running.value && card.value;
    if (worked) afterPaint(() => needs.worked?.(progress.peek(), { card: worked, units: units.peek() }));
  });
  const stepProgress = computed(() => progress.value.steps.get(step.value ?? '') ?? untouched);
  const finished = computed(() => {
    const order = running.value;
    if (!order || order.sequence.length === 0) return false;
    const over = new Set(done.value);
    return order.sequence.every((one) => over.has(one));
  });
  const resting = computed(() => {
    const [order, open] = [running.value, step.value];
    if (!order || open === undefined || stepProgress.value.doneAt !== undefined) return undefined;
    return restUntil(order, progress.value, open, seen());
  });
  const otherTimers = computed(() => {
    const found: OtherTimer[] = [];
    const order = running.value;
    for (const [other, { timers, doneAt }] of progress.value.steps) {
      if (timers.size === 0 || other === step.value || !order) continue;
      const say = order.steps.get(other)?.say ?? '';
      for (const [item, timer] of timers) {
        const over = seen() - timer.startedAt - timer.seconds * 1000;
        if (over < 0 || (doneAt === undefined && over < MENTION_MS))
          found.push({ step: other, item, say, ...timer });
      }
    }
    return found.sort((a, b) => a.startedAt + a.seconds * 1000 - b.startedAt - b.seconds * 1000);
  });

  const finish = (): void => {
    const [order, open] = [running.value, step.value];
    if (!order && open !== undefined && loop.value === undefined) {
      // The order is still being derived: what comes next is known in a moment.
      void furnished.then(() => (running.value ? finish() : undefined));
    }
    if (!order || open === undefined) return;
    const next = nextStep(order, progress.value, now(), open);
    const acts: Act[] =
      progress.value.steps.get(open)?.doneAt === undefined ? [{ kind: 'step-done', step: open }] : [];
    if (next !== undefined) acts.push({ kind: 'step-opened', step: next });
    act(...acts);
  };

  return {
    id,
    progress,
    outfit,
    units,
    problems,
    running,
    loop,
    step,
    card,
    stepProgress,
    finished,
    resting,
    otherTimers,
    inFlight,
    unkept,
    described(at) {
      const names = readPointer(at);
      let here: unknown = description.value;
      for (const name of names.ok ? names.value : []) {
        here =
          typeof here === 'object' && here !== null
            ? Object.entries(here).find(([key]) => key === name)?.[1]
            : undefined;
      }
      return names.ok ? here : undefined;
    },
    why(other) {
      return running.value && rooms.value?.explain(running.value, other);
    },
    act,
    undo() {
      if (!progress.value.undo) return;
      undoing++;
      inFlight.value = waiting.length + undoing;
      write();
    },
    done: finish,
    openStep(other) {
      if (progress.value.open !== other) act({ kind: 'step-opened', step: other });
    },
    retry: write,
    hear(deeds) {
      kept = applyDeeds(kept, deeds);
      show();
    },
    async settled() {
      while (pumping) await pumping;
    },
    close() {
      stopDeriving();
      stopKeeping();
    },
  };
}
