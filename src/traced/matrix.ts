/** A change of place as SVG writes it: x becomes ax + cy + e, y becomes bx + dy + f. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Leaves everything where it is. */
export const STILL: Matrix = [1, 0, 0, 1, 0, 0];

/** First the second one, then the first, as nested groups do. */
export const after = ([a, b, c, d, e, f]: Matrix, [g, h, i, j, k, l]: Matrix): Matrix => [
  a * g + c * h,
  b * g + d * h,
  a * i + c * j,
  b * i + d * j,
  a * k + c * l + e,
  b * k + d * l + f,
];

/** Moves by so much. */
export const moveBy = (x: number, y: number): Matrix => [1, 0, 0, 1, x, y];

const radians = (degrees: number): number => (degrees * Math.PI) / 180;

const MADE: Readonly<Record<string, (n: readonly number[]) => Matrix | undefined>> = {
  matrix: ([a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, ...more]) =>
    more.length > 0 ? undefined : [a, b, c, d, e, f],
  translate: ([x = 0, y = 0]) => moveBy(x, y),
  scale: ([x = 1, y = x]) => [x, 0, 0, y, 0, 0],
  rotate: ([turn = 0, x = 0, y = 0]) => {
    const [cos, sin] = [Math.cos(radians(turn)), Math.sin(radians(turn))];
    return after(after(moveBy(x, y), [cos, sin, -sin, cos, 0, 0]), moveBy(-x, -y));
  },
  skewX: ([turn = 0]) => [1, 0, Math.tan(radians(turn)), 1, 0, 0],
  skewY: ([turn = 0]) => [1, Math.tan(radians(turn)), 0, 1, 0, 0],
};

const ONE = /\s*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]{0,400})\)\s*,?\s*/y;
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** Numbers with blanks or commas between; nothing where one of them is none. */
export function numbersIn(text: string): readonly number[] | undefined {
  const words = text.trim().split(/[\s,]+/);
  return words.every((one) => NUMBER.test(one)) ? words.map(Number) : undefined;
}

/** Reads a `transform`; nothing where it cannot be read. */
export function readTransform(text: string): Matrix | undefined {
  let made: Matrix = STILL;
  for (let at = 0; at < text.trimEnd().length; at = ONE.lastIndex) {
    ONE.lastIndex = at;
    const [, name = '', figures = ''] = ONE.exec(text) ?? [];
    const numbers = numbersIn(figures);
    const next = numbers && MADE[name]?.(numbers);
    if (!next) return undefined;
    made = after(made, next);
  }
  return made.every(Number.isFinite) ? made : undefined;
}

/** Millimetres in one of CSS's units. Source: W3C, CSS Values and Units Module Level 3, section 6.2 (from memory): 96 px to the inch. */
const UNIT_MM: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  q: 0.25,
  in: 25.4,
  pt: 25.4 / 72,
  pc: 25.4 / 6,
  px: 25.4 / 96,
  '': 25.4 / 96,
};

/** A length of a file in millimetres and in its own units, and whether its unit is one of a rule; nothing for `100%`, `2em` or what is no length. */
export function readSize(
  text: string | null,
): { readonly mm: number; readonly units: number; readonly ruled: boolean } | undefined {
  const [, figure = '', unit = ''] = /^\s*([+-]?[\d.]+(?:e[+-]?\d+)?)\s*([a-z]*)\s*$/i.exec(text ?? '') ?? [];
  const per = UNIT_MM[unit.toLowerCase()];
  if (!NUMBER.test(figure) || per === undefined) return undefined;
  const ruled = !['', 'px'].includes(unit.toLowerCase());
  const long = Number(figure) * per;
  return { mm: long, units: ruled ? (long * 96) / 25.4 : Number(figure), ruled };
}

/** A length of a file in its own units, of which 96 make an inch; 0 where none is written, NaN where it cannot be read. */
export const unitsOf = (text: string | null): number =>
  text === null || text.trim() === '' ? 0 : (readSize(text)?.units ?? Number.NaN);

/** How the box of a drawing is laid into a width and a height given in any one unit: both ways alike unless it says `none`. */
export function fitBox(
  [left = 0, top = 0, wide = 0, high = 0]: readonly number[],
  width: number | undefined,
  height: number | undefined,
  ratio: string | null,
): Matrix | undefined {
  if (!(wide > 0 && high > 0)) return undefined;
  let [x, y] = [
    width === undefined ? undefined : width / wide,
    height === undefined ? undefined : height / high,
  ];
  x ??= y;
  y ??= x;
  if (x === undefined || y === undefined || !(x > 0 && y > 0)) return undefined;
  if (!/^\s*none/.test(ratio ?? '')) {
    x = /slice/.test(ratio ?? '') ? Math.max(x, y) : Math.min(x, y);
    y = x;
  }
  return [x, 0, 0, y, -left * x, -top * y];
}
