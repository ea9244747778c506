import * as v from 'valibot';
import { bad, good, type Result } from '../length/result.ts';
import { disagreements } from './agreement.ts';
import { oddNames } from './odd-names.ts';
import type { Outfit } from './outfit.ts';
import type { Problem } from './problem.ts';
import { everyProblem } from './reading-problems.ts';
import { outfitSchema } from './schema.ts';

/**
 * Reads the description of an outfit from data of unknown shape: an opened file, or what the ledger kept. This is the
 * only border; inside, an `Outfit` can be relied on. Everything that is wrong is given at once, each with its place, in
 * the order of the file.
 */
export function readOutfit(raw: unknown): Result<Outfit, readonly Problem[]> {
  const odd = oddNames(raw);
  if (odd.length > 0) return bad(odd);
  const parsed = v.safeParse(outfitSchema, raw, { abortPipeEarly: true });
  if (!parsed.success) return bad(everyProblem(raw, parsed.issues));
  const { $schema: _, ...outfit } = parsed.output;
  const found = disagreements(outfit);
  return found.length > 0 ? bad(found) : good(outfit);
}
