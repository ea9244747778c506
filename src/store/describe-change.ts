import { bad, good, type Result } from '../length/result.ts';
import { type Fields, isFields } from './same-data.ts';

/** One change to a description: the place as a JSON Pointer, what was there and what is there now. */
export interface Change {
  readonly at: string;
  readonly was?: unknown;
  readonly now?: unknown;
}

/**
 * The names on the way that a JSON Pointer (RFC 6901, section 3) spells: `/garments/0/name` is three names; the empty
 * pointer, the whole description, is none. Refused: a pointer that does not begin with `/`, a `~` that is not `~0` or
 * `~1`, and the name `__proto__`, which is no field of anything that a maker describes.
 */
export const readPointer = (at: string): Result<readonly string[], string> => {
  if (at === '') return good([]);
  if (!at.startsWith('/')) return bad(`The place "${at}" does not begin with "/".`);
  if (/~(?![01])/.test(at)) return bad(`The place "${at}" has a "~" that is neither "~0" nor "~1".`);
  const names = at
    .slice(1)
    .split('/')
    .map((name) => name.replaceAll('~1', '/').replaceAll('~0', '~'));
  if (names.includes('__proto__')) return bad('"__proto__" cannot be the name of a field.');
  return good(names);
};

/** A JSON Pointer (RFC 6901) to the place that the names lead to; the other way round of {@link readPointer}. */
export const pointerTo = (names: readonly (string | number)[]): string =>
  names.map((name) => `/${String(name).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

const arrayIndex = (name: string): number | undefined =>
  /^(0|[1-9]\d*)$/.test(name) ? Number(name) : undefined;

const changeList = (list: readonly unknown[], name: string, change: Change): Result<unknown, string> => {
  const index = name === '-' ? list.length : arrayIndex(name);
  if (index === undefined || index > list.length) return bad(`"${change.at}" is past the end of a list.`);
  const added = change.was === undefined && change.now !== undefined;
  if (added) return good([...list.slice(0, index), change.now, ...list.slice(index)]);
  if (index === list.length) return bad(`"${change.at}" is past the end of a list.`);
  const rest = list.slice(index + 1);
  return good([...list.slice(0, index), ...(change.now === undefined ? [] : [change.now]), ...rest]);
};

const changeFields = (fields: Fields, name: string, now: unknown): unknown => {
  if (now !== undefined) return { ...fields, [name]: now };
  const { [name]: _gone, ...rest } = fields;
  return rest;
};

/**
 * The description with one change made; the one that was handed in stays as it is, and parts not on the way are
 * shared. A field is set, or taken away where there is no `now`. In a list, a change without `was` puts `now` in
 * before that place (`-` is the end), one with both puts `now` in its stead, one without `now` takes the entry out.
 * Refused, in words: a pointer that {@link readPointer} refuses, or one whose way there does not exist. Only fields of
 * the description's own are walked, so `constructor` is a name like any other.
 */
export const describeChange = (description: unknown, change: Change): Result<unknown, string> => {
  const names = readPointer(change.at);
  if (!names.ok) return names;
  const last = names.value.at(-1);
  if (last === undefined) return good(change.now);
  const way: unknown[] = [description];
  for (const name of names.value.slice(0, -1)) {
    const here = way.at(-1);
    const index = Array.isArray(here) ? arrayIndex(name) : undefined;
    if (Array.isArray(here) && index !== undefined && index < here.length) way.push(here[index]);
    else if (isFields(here) && Object.hasOwn(here, name)) way.push(here[name]);
    else return bad(`"${change.at}" leads nowhere: there is no "${name}".`);
  }
  const end = way.pop();
  let changed: unknown;
  if (Array.isArray(end)) {
    const list = changeList(end, last, change);
    if (!list.ok) return list;
    changed = list.value;
  } else if (isFields(end)) changed = changeFields(end, last, change.now);
  else return bad(`"${change.at}" leads nowhere: there is nothing that could hold "${last}".`);
  for (let i = way.length - 1; i >= 0; i--) {
    const here = way[i];
    const name = names.value[i] ?? '';
    changed = Array.isArray(here)
      ? here.with(Number(name), changed)
      : changeFields(here as Fields, name, changed);
  }
  return good(changed);
};
