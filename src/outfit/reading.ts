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
  if (!parsed.success) return bad(parsed.issues.map((issue) => shapeProblem(raw, issue)));
  const { $schema: _, ...outfit } = parsed.output;
  const found = disagreements(outfit);
  return found.length > 0 ? bad(found) : good(outfit);
}

function shapeProblem(raw: unknown, issue: v.BaseIssue<unknown>): Problem {
  const path = (issue.path ?? []).map((item) => item.key as string | number);
  const missing = issue.input === undefined && path.length > 0;
  const who = whose(raw, path);
  return {
    at: pointer(path),
    wrong: missing ? `${who} is missing` : `${who} ${issue.message}`,
    cure: missing ? 'add it' : '',
  };
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
