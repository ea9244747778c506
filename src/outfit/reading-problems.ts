import * as v from 'valibot';
import { disagreements } from './agreement.ts';
import { MendedCopy } from './mending.ts';
import { type Problem, pointer } from './problem.ts';
import { notUsed, outfitSchema, VERSION } from './schema.ts';
import { type Form, kindsOf } from './schema-filling.ts';
import { nearest } from './suggest.ts';
import type { Path } from './unsure.ts';

type Issue = v.BaseIssue<unknown>;

/** Mended so often, a description either has its shape or never will. */
const ROUNDS = 8;
/** With more mistakes of shape than this, the names in it are not looked at: there is enough to do. */
const MANY = 400;
/** Names that a thing does not have are told up to this many. */
const UNUSED = 50;

/**
 * Everything that is wrong in a description that has not the right shape, in the order of the file. What the names in it
 * disagree about is found in a copy whose shape is mended; nothing is said that hangs on the mending.
 */
export function everyProblem(raw: unknown, first: readonly Issue[]): readonly Problem[] {
  const told = new Map<string, Problem>();
  const copy = MendedCopy.of(raw, outfitSchema as unknown as Form);
  const tell = (problem: Problem): void => {
    const at = copy?.placeIn(problem.at) ?? problem.at;
    told.set(`${at} ${problem.wrong}`, { ...problem, at });
  };
  let issues = first;
  for (let round = 0; round < ROUNDS; round += 1) {
    let mended = copy !== undefined;
    for (const issue of issues) {
      const path = (issue.path ?? []).map((item) => item.key as string | number);
      if (copy?.inside(path)) continue;
      if (!copy) tell(shapeProblem(raw, path, issue));
      else if (issue.expected === 'never') takeUnused(copy, path.slice(0, -1), tell, told);
      else {
        tell(shapeProblem(copy.whole, path, issue, copy));
        mended = copy.mend({ ...issue, path }) && mended;
      }
    }
    if (!copy || !mended || issues.length > MANY) break;
    const again = v.safeParse(outfitSchema, copy.whole, { abortPipeEarly: true });
    if (again.success) {
      for (const problem of disagreements(again.output, copy)) tell(problem);
      break;
    }
    issues = again.issues;
  }
  const all = inOrder(raw, [...told.values()]);
  // What a later version has otherwise is no mistake.
  const later = all.filter(({ at }) => at === '/version' && isLater(raw));
  return later.length > 0 ? later : all;
}

const isLater = (raw: unknown): boolean => {
  const version = partAt(raw, ['version']);
  return typeof version === 'number' && version > VERSION;
};

/** Tells of every name that a thing does not have, and takes them out. */
function takeUnused(
  copy: MendedCopy,
  path: Path,
  tell: (problem: Problem) => void,
  told: Map<string, Problem>,
): void {
  const used = copy.namesAt(path);
  copy.unused(path).forEach((key, i) => {
    if (i < UNUSED) {
      const at = [...path, key];
      tell({ at: pointer(at), ...inTwo(`${whose(copy.whole, at, copy)} ${notUsed(key, used)}`) });
    }
    const found = copy.take(path, key);
    for (const [name, { at }] of told) if (at === found) told.delete(name);
  });
}

function shapeProblem(raw: unknown, path: Path, issue: Issue, copy?: MendedCopy): Problem {
  // A list passes for an object without names; what is wrong is the list.
  const round = path.slice(0, -1);
  if (typeof path.at(-1) === 'string' && Array.isArray(partAt(raw, round))) {
    return {
      at: pointer(round),
      wrong: `${whose(raw, round, copy)} must be an object, in { }, and not a list`,
      cure: '',
    };
  }
  const missing = issue.input === undefined && path.length > 0;
  const who = whose(raw, path, copy);
  if (missing) {
    const form = copy?.formAt(path);
    const [must] = form ? (v.safeParse(form as unknown as v.GenericSchema, undefined).issues ?? []) : [];
    const what = must?.message.startsWith('must be ') ? `; it ${must.message}` : '';
    return { at: pointer(path), wrong: `${who} is missing`, cure: `add it${what}` };
  }
  // Of a thing that comes in kinds, either the kind is wrong or it is no thing at all.
  const ofKinds = issue.type === 'variant';
  if (ofKinds && path.at(-1) !== 'kind')
    return { at: pointer(path), wrong: `${who} must be an object, in { }`, cure: '' };
  const kinds = ofKinds ? copy?.formAt(round) : undefined;
  const near = kinds && typeof issue.input === 'string' ? nearest(issue.input, kindsOf(kinds)) : undefined;
  const told =
    near === undefined
      ? `${who} ${issue.message}`
      : `${who} \`${issue.input}\` is no kind of work; did you mean \`${near}\`?`;
  return { at: pointer(path), ...inTwo(told) };
}

/** What is wrong, and after the semicolon what would be right. */
function inTwo(said: string): Pick<Problem, 'wrong' | 'cure'> {
  const [wrong = '', ...cure] = said.split('; ');
  return { wrong, cure: cure.join('; ') };
}

function partAt(raw: unknown, path: Path): unknown {
  let here: unknown = raw;
  for (const key of path) {
    if (typeof here !== 'object' || here === null) return undefined;
    here = (here as Record<string | number, unknown>)[key];
  }
  return here;
}

/** Names a place as the maker does: by the nearest named thing on the way to it. */
function whose(raw: unknown, path: Path, copy: MendedCopy | undefined): string {
  let here: unknown = raw;
  let owner = '';
  for (const key of path) {
    if (typeof here !== 'object' || here === null) break;
    here = (here as Record<string | number, unknown>)[key];
    if (typeof here === 'object' && here !== null && 'name' in here && typeof here.name === 'string') {
      if (!copy?.invented(here.name)) owner = here.name;
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

/** In the order in which the places stand in the file; what is missing stands where the thing begins that lacks it. */
function inOrder(raw: unknown, problems: readonly Problem[]): readonly Problem[] {
  const orders = new Map<object, Map<string, number>>();
  const ranks = (at: string): readonly number[] => {
    let here = raw;
    return at
      .split('/')
      .slice(1)
      .map((step) => {
        const key = step.replaceAll('~1', '/').replaceAll('~0', '~');
        if (typeof here !== 'object' || here === null) return -1;
        const order = orders.get(here) ?? new Map(Object.keys(here).map((name, i) => [name, i]));
        orders.set(here, order);
        here = order.has(key) ? (here as Record<string, unknown>)[key] : undefined;
        return order.get(key) ?? -1;
      });
  };
  const ranked = problems.map((problem) => ({ problem, rank: ranks(problem.at) }));
  ranked.sort((a, b) => {
    const i = a.rank.findIndex((one, n) => one !== b.rank[n]);
    return i < 0 ? a.rank.length - b.rank.length : (a.rank[i] ?? -1) - (b.rank[i] ?? -1);
  });
  return ranked.map(({ problem }) => problem);
}
