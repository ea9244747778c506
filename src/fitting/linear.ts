/** Between which two values something may lie; `-Infinity` and `Infinity` where there is no limit. */
export interface Span {
  readonly least: number;
  readonly most: number;
}

/** A weighted sum of some of the values, which must lie in a span. */
export interface Sum extends Span {
  /** Places of the values and their factors; no place twice. */
  readonly terms: readonly (readonly [at: number, factor: number])[];
}

/** The values that meet every sum, or why none do. */
export type LeastChange =
  | { readonly meets: true; readonly values: readonly number[]; readonly total: number }
  /**
   * Weights of the sums that show it: all sums so weighted and added up would have to come to no less than the `least` of
   * those with a weight above nought and the `most` of those with one below ask for, and the values cannot give that much.
   */
  | { readonly meets: false; readonly weights: readonly number[] };

/** A sum that is out by less than this (mm) is met: far finer than any rule, far coarser than the arithmetic. */
const HAIR = 1e-7;
/** A factor below this is what rounding left of nought. */
const NOUGHT = 1e-9;
/** After so many turns the choice is made by place alone, which cannot go round in a ring. */
const PATIENCE = 200;

/**
 * The values, each within its own span, that meet every sum and whose sizes add up to least.
 *
 * Only the sums that are not met come into it, and only the values that stand in them; what is then no longer met comes
 * in too, until all are. So most sums are never reckoned with, and yet what comes out is the least of all.
 */
export function leastChange(spans: readonly Span[], sums: readonly Sum[]): LeastChange {
  const empty = sums.findIndex(({ least, most }) => least > most + HAIR);
  if (empty >= 0) return { meets: false, weights: sums.map((_, i) => (i === empty ? 1 : 0)) };
  const values = spans.map(({ least, most }) => Math.max(least, Math.min(most, 0)));
  const at: number[] = [];
  const own: Span[] = [];
  const places = new Map<number, number>();
  const rows: number[] = [];
  const asked: Sum[] = [];
  for (;;) {
    const before = rows.length;
    for (const [i, sum] of sums.entries()) {
      if (rows.includes(i) || isMet(sum, values)) continue;
      rows.push(i);
      const terms = sum.terms.map(([value, factor]) => {
        const known = places.get(value);
        if (known !== undefined) return [known, factor] as const;
        places.set(value, at.length);
        at.push(value);
        own.push(spans[value] ?? { least: 0, most: 0 });
        return [at.length - 1, factor] as const;
      });
      asked.push({ ...sum, terms });
    }
    if (rows.length === before) break;
    const found = ofThese(own, asked);
    if (!found.meets) {
      const weights = sums.map(() => 0);
      for (const [i, weight] of found.weights.entries()) weights[rows[i] ?? -1] = weight;
      return { meets: false, weights };
    }
    for (const [i, value] of found.values.entries()) values[at[i] ?? -1] = value;
  }
  return { meets: true, values, total: values.reduce((sum, one) => sum + Math.abs(one), 0) };
}

function isMet({ terms, least, most }: Sum, values: readonly number[]): boolean {
  let comes = 0;
  for (const [at, factor] of terms) comes += factor * (values[at] ?? 0);
  return comes >= least - HAIR && comes <= most + HAIR;
}

/**
 * The same for all of these sums.
 *
 * A dual simplex for bounded values. Each value is split into what it is above nought and what it is below, both of
 * which cost what they measure; so all at their least is the cheapest start there is, only the sums are not met yet.
 * Each turn puts right the sum that is furthest out, and never makes the whole cheaper than it can be: what meets all
 * in the end is the least.
 */
function ofThese(spans: readonly Span[], sums: readonly Sum[]): LeastChange {
  const rows = sums.length;

  // Columns: one or two for each value. Names below `rows` are the sums themselves.
  const of: number[] = [];
  const columnsOf: (readonly number[])[] = [];
  const sign: number[] = [];
  const low: number[] = sums.map(({ least }) => least);
  const high: number[] = sums.map(({ most }) => most);
  spans.forEach(({ least, most }, at) => {
    if (most > 0) {
      columnsOf[at] = [of.length];
      of.push(at);
      sign.push(1);
      low.push(Math.max(0, least));
      high.push(most);
    }
    if (least < 0) {
      columnsOf[at] = [...(columnsOf[at] ?? []), of.length];
      of.push(at);
      sign.push(-1);
      low.push(Math.max(0, -most));
      high.push(-least);
    }
  });
  const columns = of.length;
  const table = sums.map(({ terms }) => {
    const row = new Float64Array(columns);
    for (const [at, factor] of terms) for (const c of columnsOf[at] ?? []) row[c] = factor * (sign[c] ?? 0);
    return row;
  });
  /** Who stands in each row and column, where those of the columns stand, and what moving them costs. */
  const inRow = sums.map((_, i) => i);
  const inColumn = of.map((_, c) => rows + c);
  const stands = new Float64Array(columns);
  const costs = new Float64Array(columns).fill(1);
  for (let c = 0; c < columns; c += 1) stands[c] = low[rows + c] ?? 0;
  const value = (r: number): number => {
    const row = table[r];
    let sum = 0;
    if (row) for (let c = 0; c < columns; c += 1) sum += (row[c] ?? 0) * (stands[c] ?? 0);
    return sum;
  };
  const known = new Float64Array(rows);
  for (let r = 0; r < rows; r += 1) known[r] = value(r);

  for (let turn = 0; ; turn += 1) {
    // The row that is furthest out.
    let out = -1;
    let worst = HAIR;
    for (let r = 0; r < rows; r += 1) {
      const who = inRow[r] ?? 0;
      const by = Math.max((low[who] ?? 0) - (known[r] ?? 0), (known[r] ?? 0) - (high[who] ?? 0));
      if (by <= HAIR || (turn > PATIENCE ? who > (inRow[out] ?? Infinity) : by <= worst)) continue;
      out = r;
      worst = by;
    }
    const row = table[out];
    if (!row) return met();
    const leaving = inRow[out] ?? 0;
    const short = (known[out] ?? 0) < (low[leaving] ?? 0);
    // The column that can put it right at the least cost for each mm.
    let enter = -1;
    let price = Infinity;
    for (let c = 0; c < columns; c += 1) {
      const factor = (row[c] ?? 0) * (short ? 1 : -1);
      const who = inColumn[c] ?? 0;
      if (Math.abs(factor) < NOUGHT || (low[who] ?? 0) === (high[who] ?? 0)) continue;
      if (factor > 0 ? stands[c] !== low[who] : stands[c] !== high[who]) continue;
      const costly = Math.abs(costs[c] ?? 0) / Math.abs(factor);
      const same = Math.abs(costly - price) <= NOUGHT;
      const better =
        turn > PATIENCE ? who < (inColumn[enter] ?? Infinity) : Math.abs(factor) > Math.abs(row[enter] ?? 0);
      if (same ? !better : costly > price) continue;
      enter = c;
      price = Math.min(price, costly);
    }
    if (enter < 0) return notMet(row, leaving, short ? 1 : -1);
    turnOn(out, enter, row, short ? (low[leaving] ?? 0) : (high[leaving] ?? 0));
  }

  /** Lets the row and the column change places; who stood in the row now stands at `at`. */
  function turnOn(out: number, enter: number, row: Float64Array, at: number): void {
    const pivot = row[enter] ?? 1;
    for (let c = 0; c < columns; c += 1) row[c] = c === enter ? 1 / pivot : -(row[c] ?? 0) / pivot;
    for (let r = 0; r < rows; r += 1) {
      const other = table[r];
      const factor = other?.[enter] ?? 0;
      if (!other || r === out || factor === 0) continue;
      for (let c = 0; c < columns; c += 1)
        other[c] = (c === enter ? 0 : (other[c] ?? 0)) + factor * (row[c] ?? 0);
    }
    const cost = costs[enter] ?? 0;
    for (let c = 0; c < columns; c += 1)
      costs[c] = (c === enter ? 0 : (costs[c] ?? 0)) + cost * (row[c] ?? 0);
    const leaving = inRow[out] ?? 0;
    inRow[out] = inColumn[enter] ?? 0;
    inColumn[enter] = leaving;
    stands[enter] = at;
    for (let r = 0; r < rows; r += 1) known[r] = value(r);
  }

  function met(): LeastChange {
    const values = spans.map(() => 0);
    const put = (who: number, much: number) => {
      const at = who < rows ? undefined : of[who - rows];
      if (at !== undefined) values[at] = (values[at] ?? 0) + much * (sign[who - rows] ?? 0);
    };
    inRow.forEach((who, r) => {
      put(who, known[r] ?? 0);
    });
    inColumn.forEach((who, c) => {
      put(who, stands[c] ?? 0);
    });
    const clean = values.map((one) => (Math.abs(one) < NOUGHT ? 0 : one));
    return { meets: true, values: clean, total: clean.reduce((sum, one) => sum + Math.abs(one), 0) };
  }

  function notMet(row: Float64Array, leaving: number, way: 1 | -1): LeastChange {
    const weights = sums.map(() => 0);
    if (leaving < rows) weights[leaving] = way;
    inColumn.forEach((who, c) => {
      const factor = row[c] ?? 0;
      if (who < rows && Math.abs(factor) >= NOUGHT) weights[who] = -factor * way;
    });
    return { meets: false, weights };
  }
}
