import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DOMParser } from '@xmldom/xmldom';
import { ROOT } from '../../.ci/house.mjs';
import type { Result } from '../../src/length/result.ts';
import { type Drawing, type DrawnLine, readDrawing } from '../../src/traced/drawing.ts';

/** Parses as strictly as a browser: what is not well formed is an error. */
const parse = (markup: string): Document =>
  new DOMParser({
    onError(level, say) {
      if (level !== 'warning') throw new Error(say);
    },
  }).parseFromString(markup, 'image/svg+xml') as unknown as Document;

/** Reads a drawing as the app does, with a parser that runs in Node. */
export const read = (text: string): Result<Drawing, string> => readDrawing(text, parse);

/** The text of one of our own small drawings. */
export const fileOf = (name: string): string =>
  readFileSync(join(ROOT, 'tests/traced/data', `${name}.svg`), 'utf8');

/** A drawing that must be readable. */
export function drawn(text: string): Drawing {
  const found = read(text);
  if (!found.ok) throw new Error(found.error);
  return found.value;
}

/** Its lines by the names that the file gives them. */
export const named = (text: string): ReadonlyMap<string, DrawnLine> =>
  new Map(drawn(text).lines.map((line) => [line.name, line]));

/** A whole drawing round some of its parts, in millimetres. */
export const inMm = (parts: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="1000mm" height="1000mm" viewBox="0 0 1000 1000">${parts}</svg>`;

/** What was possible; says what was wrong where it was not. */
export function possible<T>(found: Result<T, string>): T {
  if (!found.ok) throw new Error(found.error);
  return found.value;
}
