/** The steps of a JSON Pointer. */
const steps = (at: string): string[] =>
  at
    .split('/')
    .slice(1)
    .map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~'));

/** What stands at a JSON Pointer, or nothing. */
export const look = (data: unknown, at: string): unknown =>
  steps(at).reduce<unknown>((here, step) => (here as Record<string, unknown> | undefined)?.[step], data);

/** Puts a value at a JSON Pointer, or takes out what stands there where the value is nothing. Changes `data` itself. */
export function change(data: unknown, at: string, value: unknown): unknown {
  const way = steps(at);
  const last = way.pop();
  let here = data as Record<string, unknown>;
  for (const step of way) here = here[step] as Record<string, unknown>;
  if (last === undefined) throw new Error('the whole file cannot be changed in place');
  if (value === undefined) delete here[last];
  else here[last] = value;
  return data;
}
