/** An object of plain data. */
export type Fields = Readonly<Record<string, unknown>>;

/** Is it an object with fields, and no list? */
export const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Do two values of plain data say the same? The order of fields says nothing. */
export function sameData(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((one, i) => sameData(one, b[i]));
  }
  if (!isFields(a) || !isFields(b)) return false;
  const keys = Object.keys(a);
  return (
    keys.length === Object.keys(b).length &&
    keys.every((key) => Object.hasOwn(b, key) && sameData(a[key], b[key]))
  );
}
