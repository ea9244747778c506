import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync, runnerImport } from 'vite';
import { ROOT } from './house.mjs';

/*
 * What the page "Where figures come from" lists is read from the source files themselves, whenever the app is built or
 * tested: names and doc comments by the bundler's own parser, values by running the modules. There is no second list.
 *
 * In a doc comment the first paragraph says what the figure means. Two tags may follow: `@unit` with the words after the
 * figure (`part` for a part of a whole, `times` for a multiple; nothing for a bare number; a length needs none), and `@each`
 * with the name of an entry of a table, `{}` standing for its key.
 */

/** A screen imports the list as `./gather.ts?figures`: what that file gathers, and not the file itself. */
const ASKED = /\/gather\.ts\?figures$/;
const FIGURES = '\0figures';

/** The folders that are read: those with figures of the trade, and with rules of the order. */
const FOLDERS = [
  'src/length',
  'src/cloth',
  'src/order',
  'src/order/card',
  'src/order/rules',
  'src/order/undoing',
  'src/fitting',
];

/** Every file that is read, from the project's folder. */
export const filesRead = () =>
  FOLDERS.flatMap((folder) =>
    readdirSync(join(ROOT, folder))
      .filter((file) => file.endsWith('.ts'))
      .sort()
      .map((file) => `${folder}/${file}`),
  );

/**
 * A constant or a function at the top of a file, with the words and tags of its doc comment.
 * @typedef {object} Declared
 * @property {string} file from the project's folder
 * @property {string} name
 * @property {boolean} exported
 * @property {string} type as it is written; empty where it is left to the compiler, and of a function
 * @property {string} meaning the first paragraph of the comment without its tags, in one line
 * @property {string | undefined} unit
 * @property {string | undefined} each
 * @property {string | undefined} rule the name of the rule, where a file gives rules of the order
 * @property {string | undefined} ruleFrom the kind of source that the file gives for it, where it stands written out
 */

/**
 * Everything that is declared at the top of a file.
 * @param {string} file from the project's folder
 * @param {string} [text]
 * @returns {Declared[]}
 */
export function declaredIn(file, text = readFileSync(join(ROOT, file), 'utf8')) {
  const { program, comments, errors } = parseSync(file, text);
  if (errors.length > 0) throw new Error(`${file}: ${errors.map((one) => one.message).join('; ')}`);
  /** @type {Declared[]} */
  const found = [];
  const ownRule = /^const RULE = '([^']+)'/m.exec(text)?.[1];
  const ruleFrom = ownRule && /\bsource: (practice|memory|geometry)\b/.exec(text)?.[1];
  let before = 0;
  for (const node of program.body) {
    const comment = comments.findLast(
      (one) =>
        one.type === 'Block' && one.value.startsWith('*') && one.start >= before && one.end <= node.start,
    );
    const doc = readDoc(comment?.value ?? '');
    before = node.end;
    const exported = node.type === 'ExportNamedDeclaration';
    const declaration = exported ? node.declaration : node;
    if (declaration?.type === 'FunctionDeclaration' && declaration.id) {
      const { name } = declaration.id;
      found.push({ file, name, exported, type: '', ...doc, rule: exported ? ownRule : undefined, ruleFrom });
    }
    if (declaration?.type !== 'VariableDeclaration') continue;
    for (const { id, init } of declaration.declarations) {
      if (id.type !== 'Identifier') continue;
      const note = id.typeAnnotation?.typeAnnotation;
      const type = note ? text.slice(note.start, note.end) : '';
      const rule =
        type === 'Rule' && init ? /\bid: '([^']+)'/.exec(text.slice(init.start, init.end))?.[1] : undefined;
      found.push({ file, name: id.name, exported, type, ...doc, rule, ruleFrom: undefined });
    }
  }
  return found;
}

/** @param {string} comment */
function readDoc(comment) {
  const lines = comment.split('\n').map((line) => line.replace(/^\s*\*+ ?/, '').trim());
  const begin = lines.findIndex((line) => line !== '');
  const end = lines.findIndex((line, i) => i > begin && (line === '' || line.startsWith('@')));
  const words = lines
    .slice(Math.max(begin, 0), end < 0 ? undefined : end)
    .join(' ')
    .trim();
  /** @param {string} name */
  const tag = (name) =>
    lines
      .find((line) => line === `@${name}` || line.startsWith(`@${name} `))
      ?.slice(name.length + 2)
      .trim();
  return { meaning: words, unit: tag('unit'), each: tag('each') };
}

/**
 * Every figure and rule with its words, value and source, as the page shows them.
 * @returns {Promise<import('../src/screens/sources/figures.ts').Figures>}
 */
export async function readFigures() {
  const { module } = /** @type {{ module: typeof import('../src/screens/sources/gather.ts') }} */ (
    await runnerImport(join(ROOT, 'src/screens/sources/gather.ts'), { root: ROOT, logLevel: 'error' })
  );
  return module.gather(filesRead().flatMap((file) => declaredIn(file)));
}

/**
 * Gives the list to whoever imports it, in the build, on the development server and in tests.
 * @returns {import('vite').Plugin}
 */
export function figures() {
  return {
    name: 'figures-and-their-sources',
    enforce: 'pre',
    resolveId: { filter: { id: ASKED }, handler: () => FIGURES },
    load: {
      filter: { id: /^\0figures$/ },
      async handler() {
        for (const file of filesRead()) this.addWatchFile(join(ROOT, file));
        // As text: the browser reads it faster than an object in a script.
        return `export default JSON.parse(${JSON.stringify(JSON.stringify(await readFigures()))});`;
      },
    },
  };
}
