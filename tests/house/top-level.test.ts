import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { ROOT } from './files.ts';

const OURS = ['README.md', 'DEVELOPERS.md', 'index.html', 'src', 'tests', 'public', 'demo-data', '.ci'];

/** What a tool or a custom insists on finding at the top. */
const INSISTED = [
  'package.json',
  'package-lock.json',
  'tsconfig.json',
  'vite.config.ts',
  'biome.json',
  '.gitignore',
  'LICENSE',
];

/** Made by tools and never kept, or an editor's own. */
const PASSING = ['.git', 'node_modules', 'dist', 'coverage', '.cache', '.idea', '.vscode', '.DS_Store'];

it('keeps the top level to what a newcomer must see', () => {
  const known = new Set([...OURS, ...INSISTED, ...PASSING]);
  const present = readdirSync(ROOT);
  expect(present.filter((name) => !known.has(name))).toEqual([]);
  expect([...OURS, ...INSISTED].filter((name) => !present.includes(name))).toEqual([]);
});
