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

/** A part of all that could be chosen: what is decided in it, and what it costs at least. */
interface Node {
  readonly ways: readonly number[];
  readonly without: ReadonlySet<number>;
  readonly chosen: readonly number[];
  /** Ways of which one more is needed; none where those chosen do. */
  readonly helping: readonly number[];
  readonly changes: ReadonlyMap<number, number> | undefined;
  readonly added: number;
  readonly minutes: number;
  /** What things not yet decided will take besides. */
  readonly needs: readonly Need[];
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
  const cheapest = model.seen.map(({ explanations }) => Math.min(...explanations.map((one) => one.minutes)));
  const heap: Node[] = [];
  let made = 0;

  const nodeOf = (
    ways: readonly number[],
    without: ReadonlySet<number>,
    chosen: readonly number[],
  ): Node | undefined => {
    const tried = model.tried(ways, chosen);
    const helping = tried.meets ? [] : model.helping(tried.lack, ways, without);
    if (!tried.meets && helping.length === 0) return undefined;
    let [left, added, rank, decided] = [0, 0, 0, 0];
    chosen.forEach((cause, i) => {
      if (cause === LEFT_OUT) left += 1;
      else if (cause !== OPEN) {
        added += model.seen[i]?.explanations[cause]?.minutes ?? 0;
        rank += cause;
      } else if (!mayLeaveOut) added += cheapest[i] ?? 0;
      if (cause !== OPEN) decided += 1;
    });
    const cost = tried.meets
      ? model.minutes(ways)
      : Math.min(...helping.map((way) => model.minutes(withWay(ways, way))));
    made += 1;
    return {
      ways,
      without,
      chosen,
      helping,
      changes: tried.meets ? tried.changes : undefined,
      added,
      minutes: cost + added,
      needs: [],
      rank: [
        left,
        rounded(cost + added),
        ways.length + (tried.meets ? 0 : 1),
        tried.meets ? rounded(tried.total) : 0,
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
        const child = nodeOf(withWay(ways, way), new Set(out), chosen);
        push(child && withNeeds(child, node.needs));
        out.add(way);
      }
      continue;
    }
    const whole =
      causes === 'any' || !chosen.includes(OPEN) ? filled(model, chosen, changes, cheapest) : undefined;
    if (whole) {
      yield { ways, chosen: whole, changes, minutes: node.minutes, added, left: node.rank[0] ?? 0 };
      continue;
    }
    for (const child of narrowest(node)) push(child);
  }

  /** The parts of a node by the explanation of the thing seen that leaves least choice. */
  function narrowest({ ways, without, chosen }: Node): readonly Node[] {
    let best: readonly Node[] = [];
    let least: readonly number[] | undefined;
    const needs: Need[] = [];
    let branch = -1;
    for (const [at, { explanations }] of model.seen.entries()) {
      if (chosen[at] !== OPEN) continue;
      const choices = [...explanations.keys(), ...(mayLeaveOut ? [LEFT_OUT] : [])];
      const parts = choices.flatMap((cause) => nodeOf(ways, without, chosen.with(at, cause)) ?? []);
      if (parts.length === 0) return [];
      needs.push(needOf(at, parts));
      const first = parts.map((one) => one.rank.slice(0, 4)).reduce((a, b) => (before(a, b) <= 0 ? a : b));
      const by = least ? before(first, least) : 1;
      if (by < 0 || (by === 0 && parts.length >= best.length)) continue;
      [best, least, branch] = [parts, first, at];
    }
    const others = needs.filter(({ at, minutes }) => at !== branch && minutes > 0);
    others.sort((a, b) => b.minutes - a.minutes);
    return best.map((part) => withNeeds(part, others));
  }

  /** A node with what is surely to come besides, of pieces that it has not changed yet. */
  function withNeeds(node: Node, needs: readonly Need[]): Node {
    if (needs.length === 0) return node;
    const pieceOf = (way: number) => model.ways[way]?.piece ?? -1;
    const changed = new Set(node.ways.map(pieceOf));
    const left = needs.filter(({ pieces }) => [...pieces].every((piece) => !changed.has(piece)));
    const atLeast = node.minutes + together(left, node.helping.map(pieceOf));
    return { ...node, needs: left, rank: node.rank.with(1, Math.max(node.rank[1] ?? 0, rounded(atLeast))) };
  }

  /** What a thing seen takes at least besides the ways chosen, and on which pieces. */
  function needOf(at: number, parts: readonly Node[]): Need {
    const free = parts.some(({ helping }) => helping.length === 0);
    const pieces = new Set<number>();
    let minutes = Number.POSITIVE_INFINITY;
    for (const { helping } of parts)
      for (const way of helping) {
        pieces.add(model.ways[way]?.piece ?? -1);
        minutes = Math.min(minutes, model.ways[way]?.surely ?? 0);
      }
    return { at, pieces, minutes: free ? 0 : minutes };
  }
}

/** Minutes that one of some pieces costs at least, for one thing seen. */
interface Need {
  readonly at: number;
  readonly pieces: ReadonlySet<number>;
  readonly minutes: number;
}

/** What needs that share no piece come to together, besides pieces already reckoned with. */
function together(needs: readonly Need[], own: readonly number[]): number {
  const taken = new Set(own);
  let all = 0;
  for (const { pieces, minutes } of needs) {
    if ([...pieces].some((piece) => taken.has(piece))) continue;
    for (const piece of pieces) taken.add(piece);
    all += minutes;
  }
  return all;
}

/** The explanations, where each thing not yet decided has one that is met as it is and adds no more than it must. */
function filled(
  model: Model,
  chosen: readonly number[],
  changes: ReadonlyMap<number, number>,
  cheapest: readonly number[],
): readonly number[] | undefined {
  const whole: number[] = [];
  for (const [at, cause] of chosen.entries()) {
    const met =
      cause !== OPEN
        ? cause
        : (model.seen[at]?.explanations.findIndex(
            (one) => one.minutes <= (cheapest[at] ?? 0) && one.sums.every((sum) => meets(sum, changes)),
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
