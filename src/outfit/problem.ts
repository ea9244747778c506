/** One thing that is wrong in a description: where, what, and what would be right. */
export interface Problem {
  /** JSON Pointer (RFC 6901) to the place in the file. */
  readonly at: string;
  /** What is wrong, naming the thing as the maker does. */
  readonly wrong: string;
  /** What would be right. */
  readonly cure: string;
}

/** The problem in one line. */
export const writeProblem = (problem: Problem): string =>
  problem.cure === '' ? problem.wrong : `${problem.wrong}; ${problem.cure}`;

/** JSON Pointer for a path of keys. */
export const pointer = (path: readonly (string | number)[]): string =>
  path.map((key) => `/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');
