import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A straight-sided path as it stands on a page, in millimetres from the left upper corner. */
export type ReadPath = readonly (readonly [number, number])[];

/** What a reader of PDF files finds on a page; all in millimetres. */
export interface ReadPage {
  readonly wide: number;
  readonly high: number;
  readonly paths: readonly ReadPath[];
  readonly words: readonly { readonly words: string; readonly x: number; readonly y: number }[];
}

const MM = 25.4 / 72;

/** Codes of pdf.js for the parts of a path. */
const [MOVE, LINE, CLOSE] = [0, 1, 4];

function pathsIn(data: ArrayLike<number>, high: number): ReadPath[] {
  const paths: [number, number][][] = [];
  for (let i = 0; i < data.length; ) {
    const code = data[i];
    if (code === CLOSE) {
      const path = paths.at(-1);
      if (path?.[0]) path.push(path[0]);
      i += 1;
      continue;
    }
    if (code !== MOVE && code !== LINE)
      throw new Error(`a part of kind ${code}, where only straight lines are written`);
    if (code === MOVE) paths.push([]);
    paths.at(-1)?.push([(data[i + 1] ?? 0) * MM, high - (data[i + 2] ?? 0) * MM]);
    i += 3;
  }
  return paths;
}

/** Reads a PDF with pdf.js, a reader that is not ours. */
export async function readPdf(bytes: Uint8Array): Promise<readonly ReadPage[]> {
  const doc = await getDocument({ data: bytes.slice(), verbosity: 0 }).promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= doc.numPages; number++) {
    const page = await doc.getPage(number);
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view;
    const [wide, high] = [(right - left) * MM * page.userUnit, (top - bottom) * MM * page.userUnit];
    const list = await page.getOperatorList();
    const paths: ReadPath[] = [];
    for (const [i, fn] of list.fnArray.entries()) {
      if (fn === OPS.transform) throw new Error('a page is scaled or turned, which we never do');
      if (fn !== OPS.constructPath) continue;
      const [data] = list.argsArray[i][1];
      if (data) paths.push(...pathsIn(data, high));
    }
    const { items } = await page.getTextContent();
    const words = items.flatMap((one) =>
      'str' in one && one.str !== ''
        ? [{ words: one.str, x: one.transform[4] * MM, y: high - one.transform[5] * MM }]
        : [],
    );
    pages.push({ wide, high, paths, words });
  }
  await doc.loadingTask.destroy();
  return pages;
}
