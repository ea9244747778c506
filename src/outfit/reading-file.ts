import { bad, good, type Result } from '../length/result.ts';
import { type Place, readHandWritten } from './hand-written.ts';
import type { Outfit } from './outfit.ts';
import { placeWords } from './place-words.ts';
import type { Problem } from './problem.ts';
import { readOutfit } from './reading.ts';
import { FORMAT } from './schema.ts';

/** One thing that is wrong in a file, where it stands there, and what would be right. */
export interface Wrong extends Place {
  /** The place in the words of the file: `garments: Blouse, pieces: Sleeve, cloth`; empty for the file as a whole. */
  readonly where: string;
  /** What is wrong. */
  readonly say: string;
  /** What would be right; empty where that is said already. */
  readonly cure: string;
}

/** Why a file is no outfit. */
export interface NotRead {
  /** `words`: it cannot be read at all. `other`: it is something else. `wrong`: it is an outfit with mistakes. */
  readonly kind: 'words' | 'other' | 'wrong';
  readonly wrong: readonly Wrong[];
  /** How many more mistakes there are, which are not told. */
  readonly more: number;
}

/** More than this many at once help nobody. */
const MOST = 100;

/** Is it meant for an outfit, well made or not? */
const meant = (raw: unknown): boolean =>
  typeof raw === 'object' &&
  raw !== null &&
  !Array.isArray(raw) &&
  ('garments' in raw || ('format' in raw && raw.format === FORMAT));

const standsAt = (raw: unknown, at: string): unknown =>
  at
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'))
    .reduce<unknown>(
      (here, key) =>
        typeof here === 'object' && here !== null && Object.hasOwn(here, key)
          ? (here as Record<string, unknown>)[key]
          : undefined,
      raw,
    );

/** What stands in a file, in short; undefined where that would say nothing. */
function inShort(value: unknown): string | undefined {
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (value === undefined) return undefined;
  const text = JSON.stringify(value).replaceAll('`', '');
  return text.length > SHORT ? undefined : `\`${text}\``;
}

/** Longer than this, what stands there is not said again, letters. */
const SHORT = 40;

/** Where it is only said what must be, says what is first. */
function withWhatStands(raw: unknown, { at, wrong, cure }: Problem): Pick<Wrong, 'say' | 'cure'> {
  const [, who, must] = /^(.*`) (must be .*)$/s.exec(wrong) ?? [];
  const what = inShort(standsAt(raw, at));
  return who !== undefined && cure === '' && what !== undefined
    ? { say: `${who} is ${what}`, cure: `it ${must}` }
    : { say: wrong, cure };
}

/**
 * Reads the text of an outfit file as somebody wrote it, comments and all. Everything that is wrong is given at once, in
 * the order of the file, each with its line; of a text that is no JSON the first thing that cannot be read.
 */
export function readOutfitFile(
  text: string,
): Result<{ readonly outfit: Outfit; readonly raw: unknown }, NotRead> {
  const written = readHandWritten(text);
  if (!written.ok) return bad({ kind: 'words', wrong: [{ ...written.error, where: '', cure: '' }], more: 0 });
  const { value: raw, placeOf } = written.value;
  if (!meant(raw)) return bad({ kind: 'other', wrong: [], more: 0 });
  const read = readOutfit(raw);
  if (read.ok) return good({ outfit: read.value, raw });
  const wrong = read.error.slice(0, MOST).map((problem) => ({
    ...placeOf(problem.at),
    where: placeWords(raw, problem.at),
    ...withWhatStands(raw, problem),
  }));
  wrong.sort((a, b) => a.line - b.line || a.column - b.column);
  return bad({ kind: 'wrong', wrong, more: read.error.length - wrong.length });
}
