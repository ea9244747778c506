import * as v from 'valibot';
import { bad, good, type Result } from '../length/result.ts';
import { disagreements } from './agreement.ts';
import type { Outfit } from './outfit.ts';
import { type Problem, pointer } from './problem.ts';
import { outfitSchema } from './schema.ts';

/**
 * Reads the description of an outfit from data of unknown shape: an opened file, or what the ledger kept. This is the
 * only border; inside, an `Outfit` can be relied on. Everything that is wrong is given at once, each with its place.
 */
export function readOutfit(raw: unknown): Result<Outfit, readonly Problem[]> {
  const parsed = v.safeParse(outfitSchema, raw, { abortPipeEarly: true });
  if (!parsed.success) {
    const problems = new Map<string, Problem>();
    for (const issue of parsed.issues) {
      const problem = shapeProblem(raw, issue);
      problems.set(`${problem.at} ${problem.wrong}`, problem);
    }
    return bad([...problems.values()]);
  }
  const { $schema: _, ...outfit } = parsed.output;
  const found = disagreements(outfit);
  return found.length > 0 ? bad(found) : good(outfit);
}

function shapeProblem(raw: unknown, issue: v.BaseIssue<unknown>): Problem {
  const path = (issue.path ?? []).map((item) => item.key as string | number);
  // A list passes for an object without names; what is wrong is the list.
  const round = path.slice(0, -1);
  if (typeof path.at(-1) === 'string' && Array.isArray(partAt(raw, round))) {
    return {
      at: pointer(round),
      wrong: `${whose(raw, round)} must be an object, in { }, and not a list`,
      cure: '',
    };
  }
  const missing = issue.input === undefined && path.length > 0;
  const who = whose(raw, path);
  return {
    at: pointer(path),
    wrong: missing ? `${who} is missing` : `${who} ${issue.message}`,
    cure: missing ? 'add it' : '',
  };
}

function partAt(raw: unknown, path: readonly (string | number)[]): unknown {
  let here: unknown = raw;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string | number, unknown>)[key];
  }
  return here;
}

/** Names a place as the maker does: by the nearest named thing on the way to it. */
function whose(raw: unknown, path: readonly (string | number)[]): string {
  let here: unknown = raw;
  let owner = '';
  for (const key of path) {
    if (typeof here !== 'object' || here === null) break;
    here = (here as Record<string | number, unknown>)[key];
    if (typeof here === 'object' && here !== null && 'name' in here && typeof here.name === 'string') {
      owner = here.name;
    }
  }
  const last = path.at(-1);
  const place =
    last === undefined
      ? 'the file'
      : typeof last === 'number'
        ? `entry ${last + 1} of \`${path.at(-2) ?? ''}\``
        : `\`${last}\``;
  return owner === '' || last === undefined ? place : `${owner}: ${place}`;
}
