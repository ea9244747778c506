import { bad, good, type Result } from '../length/result.ts';
import { type Change, describeChange, readPointer } from './describe-change.ts';
import { type Fields, isFields, sameData } from './same-data.ts';

const idOf = (value: unknown): unknown =>
  isFields(value) && Object.hasOwn(value, 'id') ? value.id : undefined;

const partAt = (whole: unknown, way: readonly string[]): unknown => {
  let here = whole;
  for (const name of way)
    here =
      typeof here === 'object' && here !== null && Object.hasOwn(here, name)
        ? (here as Fields)[name]
        : undefined;
  return here;
};

/** Does a place hold what the change found there, or already what it would put there? */
function fits(description: unknown, change: Change, all: readonly Change[]): boolean {
  const names = readPointer(change.at);
  if (!names.ok) return false;
  const [holder, there] = [partAt(description, names.value.slice(0, -1)), partAt(description, names.value)];
  if (change.was !== undefined || !Array.isArray(holder) || change.now === undefined)
    return sameData(there, change.was) || (!Array.isArray(holder) && sameData(there, change.now));
  // Put into a list: only one entry may bear the id, but for one that the same deed takes out again further on.
  const id = idOf(change.now);
  const moved = all.some((one) => one.now === undefined && idOf(one.was) === id);
  return id === undefined || moved || !holder.some((entry) => idOf(entry) === id);
}

/**
 * A description with several changes made, in their order: all of them or none, since half a change would be a description
 * that nobody meant. Refused where the description is no longer what the changes were made to: another device had changed
 * the same place, or put something of the same id in.
 */
export function redescribe(description: unknown, changes: readonly Change[]): Result<unknown, string> {
  let sofar = description;
  for (const change of changes) {
    if (!fits(sofar, change, changes)) return bad(`"${change.at}" was changed meanwhile.`);
    const made = describeChange(sofar, change);
    if (!made.ok) return made;
    sofar = made.value;
  }
  return good(sofar);
}
