/** A rectangle and the strips that are to be cut from it at 45 degrees; plain numbers of nanometres. */
export interface BiasLay {
  readonly across: number;
  readonly along: number;
  /** Cut width of a strip, and the distance of its two lines along an edge of the cloth. */
  readonly strip: number;
  readonly step: number;
  /** The shortest piece to use, along its shorter edge. */
  readonly shortest: number;
}

/** Length of the strip whose first line is `near` from the corner, along its middle and along its shorter edge. */
export function biasLengths(near: number, lay: BiasLay): { readonly middle: number; readonly short: number } {
  const { across, along, strip, step } = lay;
  const far = near + step;
  // Distance along the line, from where it would cross the diagonal through the corner.
  const end = (s: number) => (s <= across ? s : 2 * across - s) / Math.SQRT2;
  const start = (s: number) => (s <= along ? -s : s - 2 * along) / Math.SQRT2;
  const middle = Math.max(end(near), end(far)) - Math.min(start(near), start(far)) - strip;
  const parallel = end(far) >= end(near) === start(far) >= start(near);
  return { middle, short: parallel ? middle : middle - strip };
}

/** The first lines of all strips that are long enough, where the first of all lies at `start`. */
export function biasLinesFrom(start: number, lay: BiasLay): number[] {
  const lines: number[] = [];
  for (let near = start; near + lay.step <= lay.across + lay.along; near += lay.step) {
    // Rounding may take a nanometre off the first and shortest piece.
    if (biasLengths(near, lay).short >= lay.shortest - 2) lines.push(near);
  }
  return lines;
}

/**
 * Where the lines may begin, so that one of these places gives the longest strip there is.
 *
 * Moving all lines together, every strip grows or shrinks evenly until a line passes a corner of the cloth or a piece
 * becomes too short; between two such places the whole is a straight line, so the best is at one of them.
 */
export function biasStarts(lay: BiasLay): readonly number[] {
  const { across, along, step, shortest } = lay;
  const first = shortest / Math.SQRT2;
  const end = across + along - step;
  const corners = [across, along].flatMap((side) => [side, side - step / 2, side - step]);
  const turns = [first, ...corners.filter((s) => s > first && s < end), end].sort((a, b) => a - b);
  const places = [...turns];
  for (const [i, from] of turns.entries()) {
    const to = turns[i + 1];
    if (to === undefined || to - from < 4) continue;
    // At a corner the shorter edge may jump, so the line is taken just inside both.
    const [a, b] = [biasLengths(from + 1, lay).short, biasLengths(to - 1, lay).short];
    if (a < shortest !== b < shortest) places.push(from + 1 + ((shortest - a) / (b - a)) * (to - from - 2));
  }
  const starts = places
    .flatMap((place) => [place - 1, place, place + 1])
    .map((place) => first + ((((place - first) % step) + step) % step));
  return [...new Set([first, ...starts])];
}
