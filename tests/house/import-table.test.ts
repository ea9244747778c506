import { existsSync, readdirSync } from 'node:fs';
import { dirname, join, posix } from 'node:path';
import { describe, expect, it } from 'vitest';
import packageFile from '../../package.json' with { type: 'json' };
import { filesUnder, ROOT } from './files.ts';
import { type Import, importsIn } from './imports.ts';

const SRC = join(ROOT, 'src');

/** The rooms, and from which other rooms each may take something. The table in DEVELOPERS.md says the same. */
const TABLE = new Map<string, readonly string[]>([
  ['length', []],
  ['shape', ['length']],
  ['fields', ['length']],
  ['cloth', ['length', 'shape']],
  ['outfit', ['length', 'shape', 'fields', 'cloth']],
  ['paper', ['length', 'shape', 'cloth', 'outfit']],
  ['reckon', ['length', 'shape', 'fields', 'cloth', 'paper']],
  ['order', ['length', 'shape', 'cloth', 'outfit']],
  ['fitting', ['length', 'shape', 'cloth', 'outfit', 'order']],
  ['time', ['length', 'order', 'outfit']],
  ['store', ['length', 'outfit']],
  ['ui', ['length', 'shape', 'paper']],
  ['print', ['length', 'shape', 'paper']],
  ['traced', ['length', 'shape']],
  ['pwa', []],
  [
    'screens',
    [
      'length',
      'shape',
      'fields',
      'cloth',
      'outfit',
      'paper',
      'print',
      'traced',
      'reckon',
      'order',
      'fitting',
      'time',
      'store',
      'ui',
      'pwa',
      'demo-data',
    ],
  ],
  [
    'main',
    [
      'length',
      'shape',
      'cloth',
      'outfit',
      'order',
      'fitting',
      'time',
      'store',
      'ui',
      'pwa',
      'screens',
      'demo-data',
    ],
  ],
]);

const CORE = new Set([
  'length',
  'shape',
  'fields',
  'cloth',
  'outfit',
  'paper',
  'reckon',
  'order',
  'fitting',
  'time',
]);

/** The border of the core, where a file from outside is read: the only place in it for a package. */
const BORDER = /^outfit\/(schema|reading)[\w-]*\.ts$/;

const shipped = Object.keys(packageFile.dependencies);

/** The room of a file under src, `main` for the top, or `demo-data`. */
function roomOf(path: string): string {
  if (path.startsWith('../demo-data/')) return 'demo-data';
  return path.includes('/') ? path.slice(0, path.indexOf('/')) : 'main';
}

/** What is wrong with an import in a file under src; nothing when the table allows it. */
function objection(file: string, { from }: Import): string | undefined {
  const room = roomOf(file);
  if (from.startsWith('.')) {
    const target = posix.join(dirname(file), from.replace(/\?.*$/, ''));
    const other = roomOf(target);
    if (other === room || TABLE.get(room)?.includes(other)) return undefined;
    return `${file} takes from ${from}, but ${room} may take nothing from ${other}`;
  }
  const name = from
    .split('/')
    .slice(0, from.startsWith('@') ? 2 : 1)
    .join('/');
  if (!CORE.has(room))
    return shipped.includes(name) ? undefined : `${file} imports ${name}, which is not shipped`;
  if (name === 'valibot' && BORDER.test(file)) return undefined;
  return `${file} imports ${name}, but the core takes no package except valibot at the border of outfit`;
}

const sources = filesUnder(SRC).filter((path) => /\.tsx?$/.test(path) && !path.endsWith('.d.ts'));
const imports = new Map(sources.map((file) => [file, importsIn(join(SRC, file))]));

describe('import table', () => {
  it('has a row for every room', () => {
    const rooms = readdirSync(SRC, { withFileTypes: true }).filter((one) => one.isDirectory());
    expect(rooms.map((one) => one.name).filter((name) => !TABLE.has(name))).toEqual([]);
  });

  it('is kept by every file', () => {
    expect(sources.length).toBeGreaterThan(0);
    const objections = sources.flatMap((file) =>
      (imports.get(file) ?? []).map((one) => objection(file, one)),
    );
    expect(objections.filter(Boolean)).toEqual([]);
  });

  it('would notice what it forbids', () => {
    const one = (from: string): Import => ({ from, typeOnly: false, later: false });
    expect(objection('length/length.ts', one('../shape/outline.ts'))).toContain('nothing from shape');
    expect(objection('cloth/tucks.ts', one('valibot'))).toContain('no package');
    expect(objection('order/arrange.ts', one('node:fs'))).toContain('no package');
    expect(objection('outfit/schema.ts', one('valibot'))).toBeUndefined();
    expect(objection('store/ledger.ts', one('fast-check'))).toContain('not shipped');
    expect(objection('ui/tape.tsx', one('../main.tsx'))).toContain('nothing from main');
    expect(objection('screens/bench/card.tsx', one('../../order/step.ts'))).toBeUndefined();
    expect(objection('outfit/outfit.ts', one('../../demo-data/plain-shirt.json'))).toContain('demo-data');
  });

  it('names only files that are there', () => {
    const missing = sources.flatMap((file) =>
      (imports.get(file) ?? [])
        .filter(({ from }) => from.startsWith('.') && !from.includes('*'))
        .filter(({ from }) => !existsSync(join(SRC, dirname(file), from.replace(/\?.*$/, ''))))
        .map(({ from }) => `${file}: ${from}`),
    );
    expect(missing).toEqual([]);
  });

  it('has no file that needs itself by way of others', () => {
    const needs = new Map(
      sources.map((file) => [
        file,
        new Set(
          (imports.get(file) ?? [])
            .filter((one) => one.from.startsWith('.') && !one.typeOnly && !one.later)
            .map((one) => posix.join(dirname(file), one.from)),
        ),
      ]),
    );
    // Peel off the files that need no other, again and again; a ring never comes off.
    for (let peeled = true; peeled; ) {
      peeled = false;
      for (const [file, needed] of needs) {
        if ([...needed].some((one) => needs.has(one))) continue;
        needs.delete(file);
        peeled = true;
      }
    }
    expect([...needs.keys()]).toEqual([]);
  });
});

describe('reading imports', () => {
  it('finds every form and tells types from the rest', () => {
    const text = `import type { A } from './a.ts';
      import { type B, c } from './b.ts';
      import './d.css';
      export * from 'e';
      export { type F } from 'f';
      const g = () => import('./g.tsx');
      const h = (name: string) => import(name);
      export type I = import('i').X;
      export const j = <p style={{ width: 1 }}>{String(g) + String(h) + c}</p>;`;
    const found = importsIn('sample.tsx', text);
    expect(found.map((one) => [one.from, one.typeOnly, one.later])).toEqual([
      ['./a.ts', true, false],
      ['./b.ts', false, false],
      ['./d.css', false, false],
      ['e', false, false],
      ['f', true, false],
      ['./g.tsx', false, true],
      ['(computed)', false, true],
      ['i', true, false],
    ]);
  });

  it('refuses what it cannot parse', () => {
    expect(() => importsIn('broken.ts', 'const = ;')).toThrow('broken.ts');
  });
});
