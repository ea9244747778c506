import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { inches, type Length, mm, nm } from '../../src/length/length.ts';
import { box, sheet } from '../../src/paper/drawing.ts';
import type { Ink, Page } from '../../src/paper/ink.ts';
import { layPages, MOST_PAGES, type Pages } from '../../src/paper/pages.ts';
import { A4, LETTER, MARGIN, PAPERS, type Paper } from '../../src/paper/papers.ts';
import type { PatternSheet } from '../../src/paper/pattern-sheet.ts';
import { made } from '../cloth/good.ts';
import { collar, drawings, flounce, strip } from './sheets.ts';

const laid = (sheets: readonly PatternSheet[], paper: Paper = A4): Pages =>
  made(layPages('Shirt', sheets, paper));

const wordsOn = (page: Page): readonly string[] =>
  [...page.windows.flatMap(({ ink }) => ink), ...page.ink].flatMap((one) =>
    one.kind === 'words' ? [one.words] : [],
  );

/** The longest level line of the page's own that lies right under some words. */
function lineUnder(page: Page, words: string): Length {
  const at = page.ink.find((one) => one.kind === 'words' && one.words === words);
  if (at?.kind !== 'words') throw new Error(`no ${words}`);
  const level = page.ink.flatMap((one) => {
    const [a, b] = one.kind === 'line' ? one.points : [];
    return a && b && a.y === b.y && a.y > at.at.y && a.y - at.at.y < mm(4) ? [Math.abs(b.x - a.x)] : [];
  });
  return nm(Math.max(...level));
}

describe('laying sheets on pages', () => {
  it.each(PAPERS)('puts both check lines on every page of $name, of their true length', (paper) => {
    const { pages } = laid([flounce, collar, strip(40, mm(20))], paper);
    expect(pages.length).toBeGreaterThan(15);
    for (const page of pages) {
      expect(lineUnder(page, 'This line must measure 100 mm')).toBe(mm(100));
      expect(lineUnder(page, 'This line must measure 4 in')).toBe(inches(4));
      expect(wordsOn(page).join(' ')).toContain('Print at 100 %, not fitted to the page.');
    }
  });

  it('makes pages of the size of the paper, upright or lying, and keeps its own lines off the margin', () => {
    for (const paper of [A4, LETTER]) {
      for (const page of laid([flounce, collar, strip(40, mm(20))], paper).pages) {
        expect([page.wide, page.high].sort((a, b) => a - b)).toEqual([paper.wide, paper.high]);
        const edge = MARGIN - mm(0.01);
        for (const one of page.ink) {
          if (one.kind === 'words') continue;
          for (const p of one.points) {
            expect(p.x).toBeGreaterThanOrEqual(edge);
            expect(p.y).toBeGreaterThanOrEqual(edge);
            expect(p.x).toBeLessThanOrEqual(page.wide - edge);
            expect(p.y).toBeLessThanOrEqual(page.high - edge);
          }
        }
        for (const { area } of page.windows) {
          expect(
            Math.min(area.left, area.top, page.wide - area.right, page.high - area.bottom),
          ).toBeGreaterThanOrEqual(edge);
        }
      }
    }
  });

  it('shows every corner of any drawing on some page, at its true place', () => {
    fc.assert(
      fc.property(drawings, fc.constantFrom(A4, LETTER), (drawing, paper) => {
        const made = layPages('Any', [drawing], paper);
        if (!made.ok) return;
        const { grid } = made.value.laid[0]!;
        if (!grid) return;
        for (const one of drawing.drawn) {
          if (one.kind !== 'path') continue;
          for (const p of one.points) {
            const shown = grid.grid.tiles.some(({ area }, i) => {
              const at = { x: p.x - area.left + MARGIN, y: p.y - area.top + MARGIN };
              const page = made.value.pages[grid.pages[i]! - 1]!;
              return page.windows.some(({ ink }) =>
                ink.some((l) => l.kind === 'line' && l.points.some((q) => q.x === at.x && q.y === at.y)),
              );
            });
            expect(shown).toBe(true);
          }
        }
      }),
      { numRuns: 40 },
    );
  });

  it('gives both sides of every joint the same sign, and no sign to a third page', () => {
    const made = laid([flounce]);
    const signs = new Map<string, Set<number>>();
    for (const [i, page] of made.pages.entries()) {
      for (const one of page.ink) {
        if (one.kind !== 'words' || !one.bold || !/^(\d+|[A-Z]+)$/.test(one.words)) continue;
        if (i < made.first) continue;
        signs.set(one.words, (signs.get(one.words) ?? new Set()).add(i));
      }
    }
    expect(signs.size).toBeGreaterThan(20);
    for (const pages of signs.values()) expect(pages.size).toBe(2);
  });

  it('tells on the first page what is where, with a map of the pages', () => {
    const { pages, first, laid: where } = laid([flounce, collar]);
    expect(first).toBe(1);
    const said = wordsOn(pages[0]!);
    expect(said).toContain('Flounce');
    expect(said).toContain('Cut 2.');
    for (const number of where[0]!.pages) expect(said).toContain(String(number));
    expect(said.join(' ')).toContain(`page ${where[1]!.pages[0]}`);
    expect(wordsOn(pages[1]!)).toContain(`page 2 of ${pages.length}`);
  });

  it('lets small sheets share a page without lying over each other, and needs no first page then', () => {
    const small = Array.from({ length: 5 }, (_, i) =>
      sheet(`Tab ${i}`, [box('cut', mm(0), mm(0), mm(50 + i), mm(30))]),
    );
    const { pages, first } = laid(small);
    expect([pages.length, first]).toEqual([1, 0]);
    const areas = pages[0]!.windows.map(({ area }) => area);
    expect(areas).toHaveLength(5);
    for (const [i, a] of areas.entries()) {
      for (const b of areas.slice(i + 1)) {
        expect(a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top).toBe(true);
      }
    }
  });

  it('lays a long strip in rows on few pages, in order, with signs where they join', () => {
    const { pages, laid: where } = laid([strip(30, mm(20))]);
    expect(pages).toHaveLength(1);
    expect(where[0]!.grid).toBeUndefined();
    const parts = wordsOn(pages[0]!).filter((words) => /part \d of/.test(words));
    expect(parts.length).toBeGreaterThan(1);
    expect(parts).toEqual([...parts].sort());
    const signs = pages[0]!.windows.flatMap(({ ink }) =>
      ink.flatMap((one: Ink) => (one.kind === 'words' && one.bold ? [one.words] : [])),
    );
    expect(signs).toHaveLength(2 * (parts.length - 1));
    expect(new Set(signs).size).toBe(parts.length - 1);
  });

  it('takes whichever way needs fewer pages', () => {
    const wide = laid([sheet('Wide', [box('cut', mm(0), mm(0), mm(240), mm(130))])]);
    expect(wide.pages.map((page) => page.wide > page.high)).toEqual([true]);
    const tall = laid([sheet('Tall', [box('cut', mm(0), mm(0), mm(150), mm(220))])]);
    expect(tall.pages.map((page) => page.wide > page.high)).toEqual([false]);
  });

  it('says what the lines mean, those that are used and no others', () => {
    const said = wordsOn(laid([collar]).pages[0]!);
    for (const one of ['cut', 'seam line', 'stitch', 'fold', 'mark', 'grain']) expect(said).toContain(one);
    const plain = wordsOn(laid([sheet('Tab', [box('cut', mm(0), mm(0), mm(50), mm(30))])]).pages[0]!);
    expect(plain).toContain('cut');
    expect(plain).not.toContain('seam line');
  });

  it('refuses nothing at all, an empty sheet, and more pages than anyone tapes together', () => {
    expect(layPages('x', [], A4)).toMatchObject({
      ok: false,
      error: { wrong: 'There is nothing to print.' },
    });
    expect(layPages('x', [collar, sheet('Blank', [])], A4)).toMatchObject({
      ok: false,
      error: { field: 'sheets', wrong: 'There is nothing drawn on “Blank”.' },
    });
    const tiles = Array.from({ length: 60 }, () => flounce);
    const made = layPages('x', tiles, A4);
    expect(made).toMatchObject({ ok: false, error: { field: 'sheets' } });
    expect(made.ok ? '' : made.error.wrong).toContain(`at most ${MOST_PAGES}`);
    const hall = sheet('Hall', [box('cut', mm(0), mm(0), mm(90_000), mm(90_000))]);
    expect(layPages('x', [hall], A4).ok).toBe(false);
  });
});
