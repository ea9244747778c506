import { bad, good, type Result } from '../length/result.ts';
import type { Act } from './deed.ts';

/** Most letters of a picture as a data URL: larger ones would make every copy heavy. */
export const MOST_PHOTO = 240_000;

/** Most letters of the words beside it. */
export const MOST_WORDS = 2_000;

/** Longest texts, in UTF-16 code units, and most entries of what is written down at a try-on. */
const MOST = {
  name: 400,
  cause: 80,
  say: 2_000,
  entries: 100,
  cures: 1_000,
  parts: 1_000,
  steps: 2_000,
  /** Ten metres, in nanometres: nobody is wider. */
  amount: 10_000_000_000,
  /** About ten weeks. */
  minutes: 100_000,
};

/** Which field is not as it must be, what is there, and what was expected. */
export interface Wrong {
  readonly field: string;
  readonly value: unknown;
  readonly expected: string;
}

type Fields = Readonly<Record<string, unknown>>;
type Check = readonly [expected: string, fits: (value: unknown) => boolean];

const text = (most: number, least = 1): Check => [
  `a text of ${least === 0 ? '' : `${least} to `}${most} letters${least === 0 ? ' at most' : ''}`,
  (value) => typeof value === 'string' && value.length >= least && value.length <= most,
];
const oneOf = (...words: readonly unknown[]): Check => [
  words.map((word) => JSON.stringify(word)).join(' or '),
  (value) => words.includes(value),
];
const like = (pattern: RegExp, expected: string): Check => [
  expected,
  (value) => typeof value === 'string' && pattern.test(value),
];
const listOf = ([expected, fits]: Check, most: number): Check => [
  `a list of ${most} at most, each ${expected}`,
  (value) => Array.isArray(value) && value.length <= most && value.every(fits),
];
const maybe = ([expected, fits]: Check): Check => [expected, (value) => value === undefined || fits(value)];

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const name = text(MOST.name);
const names = listOf(name, MOST.parts);
const entry = like(/^[a-z0-9-]{1,80}$/, 'small letters, digits and hyphens');
const cause = text(MOST.cause);
/** The name of a deed, as its device spells it. */
const deedName = like(/^[\w.:~]{1,64}-\d{1,16}$/, 'the name of a deed');
const minutes: Check = [
  `minutes from 0 to ${MOST.minutes}`,
  (value) => typeof value === 'number' && value >= 0 && value <= MOST.minutes,
];

const SEEN: Readonly<Record<string, Check>> = {
  garment: name,
  entry,
  side: oneOf('both', 'left', 'right'),
  amount: maybe([
    'whole nanometres, ten metres at most',
    (value) => Number.isSafeInteger(value) && Math.abs(Number(value)) <= MOST.amount,
  ]),
  sure: maybe(cause),
  out: maybe(listOf(cause, MOST.entries)),
  words: maybe(text(MOST_WORDS, 0)),
  photo: maybe([
    `a JPEG picture as a data URL of ${MOST_PHOTO} letters at most`,
    (value) =>
      typeof value === 'string' &&
      value.length <= MOST_PHOTO &&
      /^data:image\/jpeg;base64,[A-Za-z0-9+/]+={0,2}$/.test(value),
  ]),
};

const UNDO: Readonly<Record<string, Check>> = {
  garment: name,
  action: oneOf('unpick', 'open', 'cut-anew', 'lines-anew'),
  say: text(MOST.say),
  pieces: names,
  edges: names,
  times: oneOf(1, 2),
  minutes,
};

const OF: Readonly<Record<string, Check>> = { kind: oneOf('piece', 'work', 'join', 'gate'), id: name };

const AGAIN: Readonly<Record<string, Check>> = {
  step: name,
  only: maybe(text(MOST.say, 0)),
  side: maybe(oneOf('left', 'right')),
  minutes,
};

/** The first field of an object that is not as its check wants it. */
const firstWrong = (
  value: unknown,
  checks: Readonly<Record<string, Check>>,
  where: string,
): Wrong | undefined => {
  if (!isFields(value)) return { field: where, value, expected: 'an object' };
  for (const [field, [expected, fits]] of Object.entries(checks)) {
    const found = value[field];
    if (!fits(found)) return { field: where === '' ? field : `${where}.${field}`, value: found, expected };
  }
  return undefined;
};

const wrongRework = (rework: unknown): Wrong | undefined => {
  const head = firstWrong(
    rework,
    { id: like(/^[A-Za-z0-9-]{1,64}$/, 'letters, digits and hyphens'), say: text(MOST.say) },
    'rework',
  );
  if (head || !isFields(rework)) return head;
  const { undo, again } = rework;
  for (const [field, list] of [
    ['undo', undo],
    ['again', again],
  ] as const) {
    if (!Array.isArray(list) || list.length > MOST.steps) {
      return { field: `rework.${field}`, value: list, expected: `a list of ${MOST.steps} steps at most` };
    }
    for (const [i, one] of list.entries()) {
      const where = `rework.${field}.${i}`;
      const wrong =
        field === 'again'
          ? firstWrong(one, AGAIN, where)
          : (firstWrong(one, UNDO, where) ?? firstWrong(isFields(one) ? one.of : one, OF, `${where}.of`));
      if (wrong) return wrong;
    }
  }
  return undefined;
};

/** The acts of a try-on. */
export type FittingAct = Extract<Act, { kind: 'seen' | 'let-be' | 'reworked' }>;

/**
 * Reads an act of a try-on, whoever made it; its changes of the description are read where those of other deeds are.
 * Refused: a field that is missing, of the wrong kind or too long, a picture that is no JPEG, more steps than any outfit
 * has. Gives which field it is and what was expected.
 */
export const readFitting = (act: Fields): Result<FittingAct, Wrong> => {
  let wrong: Wrong | undefined;
  if (act.kind === 'seen') wrong = firstWrong(act, SEEN, '');
  else if (act.kind === 'let-be') wrong = firstWrong(act, { seen: deedName }, '');
  else {
    wrong =
      firstWrong(act, { say: text(MOST.say), cures: listOf(deedName, MOST.cures) }, '') ??
      wrongRework(act.rework);
  }
  return wrong ? bad(wrong) : good(act as unknown as FittingAct);
};
