import { readdirSync, readFileSync } from 'node:fs';
import { type ESTree, parseSync, Visitor } from 'vite';
import { describe, expect, it } from 'vitest';

/*
 * Counts what is checked against something outside the project, and sees that each check says what that is. A test counts once,
 * and a table of cases once for each row that is written out; cases that are reckoned (the 45 people, random ones) count as
 * one, however many they are.
 */

const folder = new URL('.', import.meta.url);

/** What a source is known by: a year, or the words that stand for one that has none. */
const NAMES_ITS_SOURCE =
  /\b(1[89]|20)\d\d\b|undated|[Ff]rom memory|[Cc]ommon practice, no source|[Rr]eference librar|[Dd]erived|textbook result|clipper2-ts|fraction\.js|graphology/;

interface Check {
  readonly file: string;
  readonly line: number;
  readonly rows: number;
  readonly sourced: boolean;
}

/** The tests of a file, with how many rows each has and whether a source stands with it. */
function checksIn(file: string, text: string): Check[] {
  const { program, comments } = parseSync(file, text);
  const lists = new Map<string, number>();
  const checks: Check[] = [];
  /** The comment that ends right before a place, with nothing but space between. */
  const before = (start: number): string => {
    let words = '';
    let at = start;
    for (const one of comments.toReversed()) {
      if (one.end > at || text.slice(one.end, at).trim() !== '') continue;
      words = `${one.value} ${words}`;
      at = one.start;
    }
    return words;
  };
  const rowsOf = (of: ESTree.Argument | undefined): number => {
    if (of?.type === 'TSAsExpression') return rowsOf(of.expression);
    if (of?.type === 'ArrayExpression') return of.elements.length;
    return of?.type === 'Identifier' ? (lists.get(of.name) ?? 1) : 1;
  };
  const root = (callee: ESTree.Expression): string =>
    callee.type === 'Identifier'
      ? callee.name
      : callee.type === 'MemberExpression'
        ? root(callee.object as ESTree.Expression)
        : callee.type === 'CallExpression'
          ? root(callee.callee as ESTree.Expression)
          : '';
  // Comments of the tests, describes and blocks round a place, and of the test before it that it belongs with.
  const blocks: { readonly end: number; readonly words: string }[] = [];
  let above = '';
  // What is said at the top of a file, and not right before a test, holds for all of it.
  const first = program.body.find(
    ({ type, start }) => type === 'ExpressionStatement' && /^(test|it|describe)\b/.test(text.slice(start)),
  );
  const begin = first?.start ?? 0;
  const header = comments
    .filter(({ end }) => end < begin && text.slice(end, begin).trim() !== '')
    .filter((one) => !before(begin).includes(one.value))
    .map(({ value }) => value)
    .join(' ');
  new Visitor({
    VariableDeclarator: ({ id, init }) => {
      if (id.type === 'Identifier' && init?.type === 'ArrayExpression')
        lists.set(id.name, init.elements.length);
    },
    ExpressionStatement: (node) => {
      if (node.expression.type !== 'CallExpression') return;
      const call = node.expression;
      const name = root(call.callee as ESTree.Expression);
      if (!['test', 'it', 'describe'].includes(name)) return;
      const title = text.slice(call.arguments[0]?.start, call.arguments[0]?.end);
      const words = `${before(node.start)} ${title}`;
      while (blocks.length > 0 && (blocks.at(-1)?.end ?? 0) < node.start) blocks.pop();
      if (name === 'describe') {
        blocks.push({ end: node.end, words });
        above = '';
        return;
      }
      const own = before(node.start) === '' ? `${above} ${words}` : words;
      if (before(node.start) !== '') above = words;
      const each = call.callee.type === 'CallExpression' ? rowsOf(call.callee.arguments[0]) : 1;
      const inside = text.slice(node.start, node.end);
      const sourced = [own, header, ...blocks.map((one) => one.words), inside].some((one) =>
        NAMES_ITS_SOURCE.test(one),
      );
      checks.push({ file, line: text.slice(0, node.start).split('\n').length, rows: each, sourced });
    },
  }).visit(program);
  return checks;
}

const files = readdirSync(folder).filter((file) => file.endsWith('.test.ts') && file !== 'count.test.ts');
const checks = files.flatMap((file) => checksIn(file, readFileSync(new URL(file, folder), 'utf8')));

describe('checks against the outside', () => {
  it('are well over a hundred', () => {
    const count = checks.reduce((sum, { rows }) => sum + rows, 0);
    console.log(`Outside checks: ${count} distinct, in ${checks.length} tests of ${files.length} files`);
    expect(count).toBeGreaterThan(200);
  });

  it('each name what they are checked against', () => {
    expect(checks.filter(({ sourced }) => !sourced).map(({ file, line }) => `${file}:${line}`)).toEqual([]);
  });

  it('are counted as they are written', () => {
    const text = `const T = [1, 2, 3];
      // A book, 1916.
      test.each(T)('a', () => {});
      test('b', () => {});
      describe('d', () => { test.each([1, 2])('c', () => {}); test.each(people)('e', () => {}); });`;
    expect(checksIn('made-up.test.ts', text).map(({ rows, sourced }) => [rows, sourced])).toEqual([
      [3, true],
      [1, true],
      [2, false],
      [1, false],
    ]);
  });
});
