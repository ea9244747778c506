import { bad, good, type Result } from '../length/result.ts';
import { safeMarkup, UNFIT } from './markup.ts';
import { fitBox, type Matrix, readSize } from './matrix.ts';
import { boxOf, type DrawnLine, LEFT, Refused, Walk } from './walk.ts';

export type { DrawnLine };

/** A drawing, read as lines and nothing else. */
export interface Drawing {
  readonly lines: readonly DrawnLine[];
  /** Does the file give its size in millimetres, inches or the like? If not, 96 of its units were taken for an inch. */
  readonly trueSize: boolean;
  /** What was left out, in words: `2 pictures`, `3 hidden parts`. */
  readonly left: readonly string[];
}

/** How the units of the whole drawing become millimetres. */
function sizeOf(root: Element): { readonly to: Matrix; readonly trueSize: boolean } {
  const [width, height] = [readSize(root.getAttribute('width')), readSize(root.getAttribute('height'))];
  const fitted = fitBox(boxOf(root), width?.mm, height?.mm, root.getAttribute('preserveAspectRatio'));
  const trueSize = (width?.ruled || height?.ruled) === true && fitted !== undefined;
  const px = 25.4 / 96;
  return {
    to: fitted ?? [px, 0, 0, px, 0, 0],
    trueSize: trueSize || (width?.ruled === true && boxOf(root).length === 0),
  };
}

const plural = ([what, count]: readonly [string, number]): string =>
  `${count} ${LEFT[what]?.[count === 1 ? 0 : 1] ?? what}`;

/** Parses markup; the browser's own parser where no other is given. */
export type Parse = (markup: string) => Document;
const byBrowser: Parse = (markup) => new DOMParser().parseFromString(markup, 'image/svg+xml');

/**
 * Reads a drawing that a vector program has saved as SVG. It is taken as data only: nothing of it is run, fetched, styled
 * or put into the page. Gives its lines in millimetres, or what is wrong with the file and what would be right.
 */
export function readDrawing(text: string, parse: Parse = byBrowser): Result<Drawing, string> {
  const markup = safeMarkup(text);
  if (!markup.ok) return markup;
  let root: Element | null;
  try {
    const document = parse(markup.value);
    root = document.getElementsByTagName('parsererror').length > 0 ? null : document.documentElement;
  } catch {
    root = null;
  }
  if (root?.localName !== 'svg') return bad(UNFIT);
  try {
    const { to, trueSize } = sizeOf(root);
    const walk = new Walk(root);
    walk.inside(root, to, '', 0);
    if (walk.lines.length === 0)
      return bad(
        'There is no outline in this drawing. Draw the pieces as closed paths, turn words into paths, and save it again.',
      );
    return good({ lines: walk.lines, trueSize, left: [...walk.left].map(plural) });
  } catch (error) {
    if (error instanceof Refused) return bad(error.message);
    throw error;
  }
}

/** Reads the bytes of a file as text: UTF-8, or UTF-16 where it begins with that mark. */
export function textOf(bytes: Uint8Array): string {
  const [a, b] = bytes;
  const wide = a === 0xff && b === 0xfe ? 'utf-16le' : a === 0xfe && b === 0xff ? 'utf-16be' : undefined;
  return new TextDecoder(wide).decode(bytes);
}
