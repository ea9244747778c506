import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { box, sheet } from '../../src/paper/drawing.ts';
import { layPages } from '../../src/paper/pages.ts';
import { PAPERS, type Paper } from '../../src/paper/papers.ts';
import type { PatternSheet } from '../../src/paper/pattern-sheet.ts';
import { pageSvg, sheetsSvg } from '../../src/paper/svg.ts';
import { writePdf } from '../../src/print/pdf.ts';
import { made } from '../cloth/good.ts';
import { type ReadPage, type ReadPath, readPdf } from './read-pdf.ts';
import { readSvg } from './read-svg.ts';
import { collar, flounce, strip } from './sheets.ts';

const NEAR = 0.1; // mm: what a maker could measure at best

const PAPER_MM = { A4: [210, 297], Letter: [215.9, 279.4] } as const;

const pdfOf = async (sheets: readonly PatternSheet[], paper: Paper): Promise<Uint8Array> => {
  const { pages } = made(layPages('Shirt', sheets, paper));
  const blob = await writePdf(pages, { title: 'Shirt', made: new Date(0) });
  return new Uint8Array(await blob.arrayBuffer());
};

const span = (path: ReadPath): { wide: number; high: number; left: number; top: number } => {
  const [xs, ys] = [path.map(([x]) => x), path.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { left, top, wide: Math.max(...xs) - left, high: Math.max(...ys) - top };
};

/** Lengths of the level lines of a page that are as long as a check line. */
const checkLines = ({ paths }: ReadPage): readonly number[] =>
  paths
    .filter((path) => path.length === 2)
    .map(span)
    .filter(({ wide, high }) => high < 0.01 && wide > 95 && wide < 105)
    .map(({ wide }) => wide)
    .sort((a, b) => a - b);

function expectCheckLines(page: ReadPage): void {
  const [hundred, four, ...more] = checkLines(page);
  expect(more).toEqual([]);
  expect(Math.abs(hundred! - 100)).toBeLessThan(NEAR);
  expect(Math.abs(four! - 101.6)).toBeLessThan(NEAR);
}

/** A path of a page with these measures, to a tenth of a millimetre. */
const measures = ({ paths }: ReadPage, wide: number, high: number): boolean =>
  paths.map(span).some((one) => Math.abs(one.wide - wide) < NEAR && Math.abs(one.high - high) < NEAR);

/** What another program, which shares no code with the first reader, sees in a PDF; nothing where it is not installed. */
function byPoppler(pdf: Uint8Array, page: number): ReadPage | undefined {
  const folder = mkdtempSync(join(tmpdir(), 'slipbaste-pdf-'));
  try {
    const [from, to] = [join(folder, 'in.pdf'), join(folder, 'out.svg')];
    writeFileSync(from, pdf);
    const ran = spawnSync('pdftocairo', [
      '-svg',
      '-noshrink',
      '-f',
      String(page),
      '-l',
      String(page),
      from,
      to,
    ]);
    if (ran.error) return undefined;
    expect(ran.status).toBe(0);
    return readSvg(readFileSync(to, 'utf8'));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

describe.each(PAPERS)('read back from $name', (paper) => {
  const [wide, high] = PAPER_MM[paper.name];

  it('a PDF has pages, check lines and a piece of their true size', async () => {
    const [page, ...more] = await readPdf(await pdfOf([collar], paper));
    expect(more).toEqual([]);
    expect(Math.abs(page!.wide - wide) + Math.abs(page!.high - high)).toBeLessThan(0.01);
    expectCheckLines(page!);
    expect(measures(page!, 150, 80)).toBe(true);
    expect(measures(page!, 126, 56)).toBe(true);
    expect(page!.words.map(({ words }) => words)).toContain('This line must measure 100 mm');
  });

  it('a PDF has both check lines on every page, upright or lying', async () => {
    const pages = await readPdf(await pdfOf([flounce, collar, strip(40, mm(20))], paper));
    expect(pages.length).toBeGreaterThan(15);
    for (const page of pages) expectCheckLines(page);
  });

  it('another reader of PDF measures the same', async ({ skip }) => {
    const page = byPoppler(await pdfOf([collar], paper), 1);
    if (!page) return skip('poppler is not installed');
    expect(Math.abs(page.wide - wide) + Math.abs(page.high - high)).toBeLessThan(0.5);
    expectCheckLines(page);
    expect(measures(page, 150, 80)).toBe(true);
  });

  it('a page as SVG is as large as the paper and measures the same', () => {
    const { name, pages } = made(layPages('Shirt', [collar], paper));
    const page = readSvg(pageSvg(name, pages[0]!));
    expect([page.wide, page.high]).toEqual([wide, high]);
    expectCheckLines(page);
    expect(measures(page, 150, 80)).toBe(true);
  });

  it('pages put together again give the measures of a piece that is larger than a page', async () => {
    const large = sheet('Panel', [box('cut', mm(0), mm(0), mm(500), mm(700))]);
    const { laid, first } = made(layPages('Panel', [large], paper));
    const { grid, pages } = laid[0]!.grid!;
    const read = await readPdf(await pdfOf([large], paper));
    expect(read).toHaveLength(first + grid.tiles.length);
    // As a maker does: neighbours are laid so that the edge of one lies on the fine line of the other.
    const drawn = grid.tiles.flatMap(({ row, column }, i) => {
      const page = read[pages[i]! - 1]!;
      const frame = page.paths.map(span).find((one) => one.wide > 100 && one.high > 100)!;
      const [across, down] = [frame.wide - 15, frame.high - 15];
      const within = ([x, y]: readonly [number, number]): boolean =>
        x >= frame.left - 0.01 &&
        y >= frame.top - 0.01 &&
        x <= frame.left + frame.wide + 0.01 &&
        y <= frame.top + frame.high + 0.01;
      // The lines of the sheet come first on a page, before the frame.
      return page.paths
        .slice(
          0,
          page.paths.findLastIndex(
            (path) => path.length === 5 && Math.abs(span(path).high - frame.high) < 0.01,
          ) + 1,
        )
        .filter((path) => path.length < 5 && path.every(within))
        .map((path) => path.map(([x, y]) => [x + column * across, y + row * down] as const));
    });
    const whole = span(drawn.flat());
    expect(Math.abs(whole.wide - 500)).toBeLessThan(NEAR);
    expect(Math.abs(whole.high - 700)).toBeLessThan(NEAR);
  });
});

describe('whole sheets as one SVG', () => {
  it('have check lines and pieces of their true size, however large', () => {
    const svg = readSvg(sheetsSvg('Shirt', [collar, flounce]));
    expectCheckLines(svg);
    expect(measures(svg, 150, 80)).toBe(true);
    expect(measures(svg, 840, 840)).toBe(true);
    expect(svg.wide).toBeGreaterThan(840);
    for (const one of svg.paths.flat()) {
      expect(one[0]).toBeGreaterThan(0);
      expect(one[0]).toBeLessThan(svg.wide);
      expect(one[1]).toBeGreaterThan(0);
      expect(one[1]).toBeLessThan(svg.high);
    }
  });

  it('keep any words, whatever signs are in them', () => {
    const name = `<Šaty> & "Кот" 'x' \u0007\ud800 ✂ ]]>`;
    const svg = readSvg(sheetsSvg(name, [{ ...collar, name }]));
    expect(svg.words.map(({ words }) => words)).toContain(`<Šaty> & "Кот" 'x'  ✂ ]]>`);
  });
});

describe('words in a PDF', () => {
  it('keep every letter that its fonts have, and stand in a stated way for the others', async () => {
    const [page] = await readPdf(await pdfOf([{ ...collar, name: 'Łódź “½” – Šaty Кот ✂ 3/8' }], PAPERS[0]!));
    expect(page!.words.map(({ words }) => words).join('|')).toContain('Lódz “½” – Šaty ??? ? 3/8');
  });
});
