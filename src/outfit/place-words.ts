/**
 * A JSON Pointer in the words of the file: `garments: Blouse, pieces: Sleeve, allowance`. Entries of a list are called by
 * their name, by their id, or by their number.
 */
export function placeWords(whole: unknown, at: string): string {
  const said: string[] = [];
  let here = whole;
  for (const step of at.split('/').slice(1)) {
    const key = step.replaceAll('~1', '/').replaceAll('~0', '~');
    const inList = Array.isArray(here);
    const next =
      typeof here === 'object' && here !== null
        ? Object.entries(here).find(([one]) => one === key)?.[1]
        : undefined;
    if (inList && said.length > 0 && /^\d+$/.test(key))
      said[said.length - 1] += `: ${calledBy(next) ?? Number(key) + 1}`;
    else said.push(key);
    here = next;
  }
  return said.join(', ');
}

function calledBy(thing: unknown): string | undefined {
  if (typeof thing !== 'object' || thing === null) return undefined;
  const [name] = ['name', 'id']
    .map((key) => Object.entries(thing).find(([one]) => one === key)?.[1])
    .filter((one) => typeof one === 'string' && one !== '');
  return typeof name === 'string' ? name.slice(0, 60) : undefined;
}
