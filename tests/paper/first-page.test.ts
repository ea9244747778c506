import { describe, expect, it } from 'vitest';
import { mm } from '../../src/length/length.ts';
import { box, sheet } from '../../src/paper/drawing.ts';
import { inkOf, type Page, wordsCorners } from '../../src/paper/ink.ts';
import { layPages } from '../../src/paper/pages.ts';
import { A4, LETTER, MARGIN } from '../../src/paper/papers.ts';
import { mapInk, pageInk } from '../../src/paper/small-picture.ts';
import { gridOf } from '../../src/paper/tiles.ts';
import { made } from '../cloth/good.ts';
import { collar, flounce } from './sheets.ts';

const wordsOf = (page: Page): readonly string[] =>
  page.ink.flatMap((one) => (one.kind === 'words' ? [one.words] : []));

const panel = (i: number) =>
  sheet(
    `Panel ${i}`,
    [box('cut', mm(0), mm(0), mm(250), mm(300))],
    ['Cut 2, one a mirror image.', 'Allowance drawn: 15 mm; hem 30 mm; armhole 10 mm; opening 37 mm.'],
  );

describe('the first pages', () => {
  it.each([A4, LETTER])(
    'go on over as many pages of $name as the sheets need, and leave none out',
    (paper) => {
      const { pages, first, laid } = made(
        layPages(
          'Many',
          Array.from({ length: 20 }, (_, i) => panel(i)),
          paper,
        ),
      );
      expect(first).toBeGreaterThan(1);
      const said = pages.slice(0, first).flatMap(wordsOf);
      for (let i = 0; i < 20; i++) expect(said).toContain(`Panel ${i}`);
      // What the first pages say of where a sheet is holds, though they come before it themselves.
      for (const { name, pages: on } of laid) {
        expect(on[0]).toBeGreaterThan(first);
        for (const number of on) {
          expect(wordsOf(pages[number - 1]!)).toEqual(
            expect.arrayContaining([name, `page ${number} of ${pages.length}`]),
          );
        }
      }
    },
  );

  it('keep all words within the part of the page that prints', () => {
    const sheets = Array.from({ length: 20 }, (_, i) => panel(i));
    const { pages, first } = made(
      layPages('A name long enough to be broken over lines, '.repeat(4), sheets, A4),
    );
    for (const page of pages.slice(0, first)) {
      for (const one of page.ink) {
        if (one.kind !== 'words') continue;
        for (const { x, y } of wordsCorners(one)) {
          expect(x, one.words).toBeGreaterThanOrEqual(MARGIN - mm(1));
          expect(x, one.words).toBeLessThanOrEqual(page.wide - MARGIN + mm(1));
          expect(y, one.words).toBeLessThanOrEqual(page.high - MARGIN + mm(1));
        }
      }
    }
  });
});

describe('small pictures', () => {
  const ink = inkOf(flounce.drawn);
  const grid = gridOf(ink, mm(180), mm(240))!;

  it('show every tile with the number of its page, within the room given', () => {
    const pages = grid.tiles.map((_, i) => i + 2);
    const map = mapInk(ink, grid, pages, 0, 0, { wide: mm(60), high: mm(60) });
    expect(map.high).toBeLessThanOrEqual(mm(60) + 1);
    const numbers = map.ink.flatMap((one) => (one.kind === 'words' ? [Number(one.words)] : []));
    expect(numbers).toEqual(pages);
    for (const one of map.ink) {
      if (one.kind === 'words') continue;
      for (const { x, y } of one.points) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(-1);
        expect(Math.max(x, y)).toBeLessThanOrEqual(mm(60) + 1);
      }
    }
  });

  it('draw a large sheet with few points', () => {
    const points = (of: typeof ink): number =>
      of.reduce((sum, one) => sum + (one.kind === 'line' ? one.points.length : 0), 0);
    const fine = inkOf([{ ...flounce.drawn[0]!, points: circle(5000) } as (typeof flounce.drawn)[number]]);
    const map = mapInk(fine, grid, [], 0, 0, { wide: mm(60), high: mm(60) });
    expect(points(map.ink)).toBeLessThan(points(fine) / 5);
  });

  it('show a page as wide as asked, in its own proportion', () => {
    const [page] = made(layPages('Collar', [collar], A4)).pages;
    const { ink: drawn, high } = pageInk(page!, mm(21));
    expect(high).toBe(mm(29.7));
    expect(drawn.length).toBeGreaterThan(3);
  });
});

const circle = (count: number) =>
  Array.from({ length: count }, (_, i) => {
    const angle = (2 * Math.PI * i) / count;
    return { x: mm(420 * Math.cos(angle)), y: mm(420 * Math.sin(angle)) };
  });
