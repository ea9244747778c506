import { boundOf, type Undecided } from './least-work-bound.ts';
import { restOf } from './least-work-lacks.ts';
import { type Model, meets } from './least-work-model.ts';

/** A choice of ways and explanations that meets what is seen. */
export interface Found {
  /** Places of the ways, rising. */
  readonly ways: readonly number[];
  /** Place of the explanation for each thing seen; {@link LEFT_OUT} where it is not met. */
  readonly chosen: readonly number[];
  readonly changes: ReadonlyMap<number, number>;
  /** Minutes of all, and of what the explanations add. */
  readonly minutes: number;
  readonly added: number;
  readonly left: number;
}

/** In the place of an explanation: not decided yet. */
const OPEN = -1;
/** In the place of an explanation: not met. */
const LEFT_OUT = -2;
/** Is that, in place of an explanation, a thing seen that is not met? */
export const isLeftOut = (chosen: number | undefined): boolean => chosen === LEFT_OUT;

/** Changes that meet what is decided, and the sum of their sizes. */
interface Changes {
  readonly changes: ReadonlyMap<number, number>;
  readonly total: number;
}

/** A part of all that could be chosen: what is decided in it, and what it costs at least. */
interface Node {
  readonly ways: readonly number[];
  readonly without: ReadonlySet<number>;
  readonly chosen: readonly number[];
  /** Ways of which one more is needed; none where those chosen do. */
  readonly helping: readonly number[];
  readonly changes: Changes | undefined;
  readonly added: number;
  readonly minutes: number;
  /** What it is sorted by: left out, minutes, pieces, sum of changes, how unlikely, and deepest first. */
  readonly rank: readonly number[];
}

const rounded = (value: number): number => Math.round(value * 1e6);

function before(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i += 1) {
    const by = (a[i] ?? 0) - (b[i] ?? 0);
    if (by !== 0 && !Number.isNaN(by)) return by;
  }
  return 0;
}

/**
 * All that meets what is seen, the least work first: fewest left out, fewest minutes, fewest pieces, smallest changes.
 *
 * Best first over a tree of parts that never overlap. Where the ways chosen do not do, the arithmetic says which sum is
 * lacking, and only the ways that give to it are tried, each without those tried before it. Where they do, the thing
 * seen that leaves least choice is decided next. A part is never cheaper than its ways already are, so what comes out
 * first is the least. What only adds ways to something that came out before, with the same explanations, is left out.
 *
 * @param passOver says of ways and minutes of explanations that nothing with all of these ways is wanted
 * @param causes `any`: one choice of explanations is enough for the same ways; `all`: each choice comes out by itself
 * @param stop asked before each part; true where enough has been looked at
 */
export function* leastFirst(
  model: Model,
  mayLeaveOut: boolean,
  passOver: (ways: readonly number[], added: number) => boolean = () => false,
  causes: 'any' | 'all' = 'any',
  stop: () => boolean = () => false,
): Generator<Found, void> {
  const heap: Node[] = [];
  let made = 0;

  /** @param met changes that meet these explanations too, where they are known */
  const nodeOf = (
    ways: readonly number[],
    without: ReadonlySet<number>,
    chosen: readonly number[],
    met?: Changes,
  ): Node | undefined => {
    let bound = boundOf(model, ways, without, chosen, mayLeaveOut);
    if (!bound) return undefined;
    let changes = met;
    let lacking = bound.lacking;
    if (!lacking && !changes) {
      const tried = model.tried(ways, chosen);
      if (tried.meets) changes = tried;
      else {
        lacking = tried.lack;
        bound = boundOf(model, ways, without, chosen, mayLeaveOut);
        if (!bound) return undefined;
      }
    }
    const helping = lacking ? model.helping(lacking, ways, without) : [];
    if (lacking && helping.length === 0) return undefined;
    let [left, added, rank, decided] = [0, 0, 0, 0];
    chosen.forEach((cause, i) => {
      if (cause === LEFT_OUT) left += 1;
      else if (cause !== OPEN) {
        added += model.seen[i]?.explanations[cause]?.minutes ?? 0;
        rank += cause;
      } else if (!mayLeaveOut) added += model.seen[i]?.cheapest ?? 0;
      if (cause !== OPEN) decided += 1;
    });
    const cost = model.minutes(ways);
    // Each way that helps costs at least what it costs alone.
    const next = lacking ? Math.min(...helping.map((way) => model.minutes([way]))) : 0;
    made += 1;
    return {
      ways,
      without,
      chosen,
      helping,
      changes: lacking ? undefined : changes,
      added,
      minutes: cost + added,
      rank: [
        left,
        rounded(Math.max(cost + bound.minutes, next) + added),
        ways.length + (lacking ? 1 : 0),
        lacking ? 0 : rounded(changes?.total ?? 0),
        rank,
        -decided,
        made,
      ],
    };
  };
  const push = (node: Node | undefined) => {
    if (node) rise(heap, node);
  };

  push(
    nodeOf(
      [],
      new Set(),
      model.seen.map(() => OPEN),
    ),
  );
  for (let node = sink(heap); node; node = sink(heap)) {
    const { ways, without, chosen, changes, added } = node;
    if (stop()) return;
    if (passOver(ways, added)) continue;
    if (!changes) {
      const cost = (way: number) => model.minutes(withWay(ways, way));
      const tries = [...node.helping].sort((a, b) => cost(a) - cost(b) || a - b);
      const out = new Set(without);
      for (const way of tries) {
        push(nodeOf(withWay(ways, way), new Set(out), chosen));
        out.add(way);
      }
      continue;
    }
    const whole =
      causes === 'any' || !chosen.includes(OPEN) ? filled(model, chosen, changes.changes) : undefined;
    if (whole) {
      yield {
        ways,
        chosen: whole,
        changes: changes.changes,
        minutes: node.minutes,
        added,
        left: node.rank[0] ?? 0,
      };
      continue;
    }
    look(node, changes);
    const bound = boundOf(model, ways, without, chosen, mayLeaveOut);
    if (!bound) continue;
    const atLeast = rounded(node.minutes + bound.minutes);
    if (atLeast > (node.rank[1] ?? 0)) {
      // It is dearer than it looked; others may come first.
      push({ ...node, rank: node.rank.with(1, atLeast) });
      continue;
    }
    for (const child of narrowest(node, changes, bound.open)) push(child);
  }

  /** Finds out what each explanation not yet decided would lack, where it is not known. */
  function look({ ways, chosen }: Node, { changes }: Changes): void {
    for (const [at, { explanations }] of model.seen.entries()) {
      if (chosen[at] !== OPEN) continue;
      for (const [cause, { sums }] of explanations.entries()) {
        if (sums.every((sum) => meets(sum, changes))) continue;
        if (model.lacks.with(chosen, at, cause).some((lack) => restOf(lack, ways) > 0)) continue;
        model.tried(ways, chosen.with(at, cause));
      }
    }
  }

  /** The parts of a node by the explanation of the thing seen that takes most and leaves least choice. */
  function narrowest(
    { ways, without, chosen }: Node,
    changes: Changes,
    open: readonly Undecided[],
  ): readonly Node[] {
    const least = ({ causes }: Undecided): number => (causes.length === 0 ? 0 : 1);
    const by = (a: Undecided, b: Undecided): number =>
      least(a) - least(b) || b.takes - a.takes || a.causes.length - b.causes.length;
    const [first] = open.toSorted((a, b) => (Number.isNaN(by(a, b)) ? 0 : by(a, b)));
    if (!first) return [];
    const choices = [...first.causes, ...(mayLeaveOut ? [LEFT_OUT] : [])];
    return choices.flatMap((cause) => {
      const sums = model.seen[first.at]?.explanations[cause]?.sums ?? [];
      const met = sums.every((sum) => meets(sum, changes.changes));
      return nodeOf(ways, without, chosen.with(first.at, cause), met ? changes : undefined) ?? [];
    });
  }
}

/** The explanations, where each thing not yet decided has one that is met as it is and adds no more than it must. */
function filled(
  model: Model,
  chosen: readonly number[],
  changes: ReadonlyMap<number, number>,
): readonly number[] | undefined {
  const whole: number[] = [];
  for (const [at, cause] of chosen.entries()) {
    const met =
      cause !== OPEN
        ? cause
        : (model.seen[at]?.explanations.findIndex(
            (one) =>
              one.minutes <= (model.seen[at]?.cheapest ?? 0) && one.sums.every((sum) => meets(sum, changes)),
          ) ?? OPEN);
    if (met === OPEN) return undefined;
    whole.push(met);
  }
  return whole;
}

const withWay = (ways: readonly number[], way: number): readonly number[] =>
  [...ways, way].sort((a, b) => a - b);

function rise(heap: Node[], node: Node): void {
  let at = heap.push(node) - 1;
  while (at > 0) {
    const above = (at - 1) >> 1;
    const other = heap[above];
    if (!other || before(other.rank, node.rank) <= 0) break;
    heap[at] = other;
    at = above;
  }
  heap[at] = node;
}

function sink(heap: Node[]): Node | undefined {
  const first = heap[0];
  const last = heap.pop();
  if (!last || heap.length === 0) return first;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    const [left, right] = [heap[below], heap[below + 1]];
    if (!left) break;
    if (right && before(right.rank, left.rank) < 0) below += 1;
    const next = heap[below];
    if (!next || before(last.rank, next.rank) <= 0) break;
    heap[at] = next;
    at = below;
  }
  heap[at] = last;
  return first;
}
