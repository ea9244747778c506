import { cleanup, render } from '@testing-library/preact';
import fc from 'fast-check';
import { afterEach, describe, expect, test } from 'vitest';
import { inches, mm, nm, toMm, zero } from '../../src/length/length.ts';
import { box, line, place, ring, sheet, words } from '../../src/paper/drawing.ts';
import { SheetDrawing, SheetPicture, scaleBar } from '../../src/ui/sheet-drawing.tsx';
import { sheetLines } from '../../src/ui/sheet-lines.ts';

afterEach(cleanup);

const inInches = { unit: 'in', per: 16 } as const;
const cuff = sheet('Cuff', [
  box('body', zero, zero, mm(200), mm(60)),
  line('fold', place(zero, mm(30)), place(mm(200), mm(30))),
  line('fold', place(mm(10), zero), place(mm(10), mm(60))),
  line('grain', place(mm(20), mm(50)), place(mm(180), mm(50))),
  words('fold', place(mm(80), mm(28)), mm(8)),
]);

describe('the lines of a sheet', () => {
  test('are gathered by kind, cloth lowest, in millimetres', () => {
    const { paths, extent } = sheetLines(cuff, 350, true);
    expect(paths.map(({ stroke }) => stroke)).toEqual(['body', 'grain', 'fold']);
    expect(paths[0]!.d).toBe('M0 0L200 0L200 60L0 60Z');
    expect(paths[2]!.d).toBe('M0 30L200 30M10 0L10 60');
    expect(extent).toEqual({ left: 0, top: 0, wide: 200, high: 60 });
  });

  test('a grain line has a head at each end', () => {
    const grain = sheetLines(cuff, 350, false).paths.find(({ stroke }) => stroke === 'grain')!.d;
    expect(grain.match(/M/g)).toHaveLength(3);
    expect(grain).toContain('M20 50L180 50');
  });

  test('a curve loses only points that no eye can tell apart', () => {
    const points = Array.from({ length: 14_400 }, (_, i) => {
      const turn = (i * Math.PI) / 7200;
      return place(mm(500 * Math.cos(turn)), mm(500 * Math.sin(turn)));
    });
    const { paths, extent } = sheetLines(sheet('Circle', [ring('cut', points)]), 350, false);
    const kept = [...paths[0]!.d.matchAll(/[ML](-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => [
      Number(x),
      Number(y),
    ]);
    expect(kept.length).toBeLessThan(points.length / 2);
    for (const [x, y] of kept) expect(Math.hypot(x!, y!)).toBeCloseTo(500, 1);
    // A chord over one left-out stretch lies nearer to the circle than a tenth of a pixel.
    for (let i = 1; i < kept.length; i += 1) {
      const [a, b] = [kept[i - 1]!, kept[i]!];
      const sagitta = 500 - Math.hypot((a[0]! + b[0]!) / 2, (a[1]! + b[1]!) / 2);
      expect(sagitta / (1000 / 350)).toBeLessThan(0.1);
    }
    expect(extent.wide).toBeCloseTo(1000, 1);
  });

  test('an empty sheet and one of a single line still have a size', () => {
    expect(sheetLines(sheet('None', []), 350, true).extent).toEqual({ left: 0, top: 0, wide: 1, high: 1 });
    render(
      <SheetDrawing
        sheet={sheet('Line', [line('cut', place(zero, zero), place(mm(100), zero))])}
        marking={inInches}
      />,
    );
    const view = document.querySelector('svg')!.getAttribute('viewBox')!.split(' ').map(Number);
    expect(view.every(Number.isFinite)).toBe(true);
    expect(view[3]).toBeGreaterThan(0);
  });
});

describe('the bar', () => {
  test('is a round length of at most a third of the drawing, unless the drawing is tiny', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        fc.constantFrom('in', 'mm'),
        (wide, unit) => {
          const bar = toMm(scaleBar(wide, unit));
          expect(bar).toBeGreaterThan(0);
          if (wide >= 10) expect(bar).toBeLessThanOrEqual(wide / 3 + 1e-6);
          if (wide >= 10 && wide <= 20_000) expect(bar).toBeGreaterThan(wide / 12);
        },
      ),
    );
  });

  test('is drawn as long as it says', () => {
    render(<SheetDrawing sheet={cuff} marking={inInches} />);
    expect(document.querySelector('figcaption')!.textContent).toBe('To scale. The bar is 2 in long.');
    const [, long] = /h(-?[\d.]+)/.exec(document.querySelector('.sheet-bar')!.getAttribute('d')!)!;
    expect(Number(long)).toBeCloseTo(toMm(inches(2)), 2);
  });
});

test('the drawing is named for readers, with its words; the small picture is lines only and hidden', () => {
  render(<SheetDrawing sheet={cuff} marking={inInches} />);
  expect(document.querySelector('svg')!.getAttribute('aria-label')).toBe('Cuff, drawn to scale: fold');
  expect(document.querySelector('text')!.textContent).toBe('fold');
  cleanup();
  render(<SheetPicture sheet={cuff} />);
  expect(document.querySelector('svg')!.getAttribute('aria-hidden')).toBe('true');
  expect(document.querySelector('text')).toBeNull();
});

test('letters too small for the screen are drawn larger, turned words turn round their own place', () => {
  const far = sheet('Leg', [
    box('cut', zero, zero, mm(300), mm(960)),
    words('knee', place(mm(10), mm(500)), nm(mm(4)), -90),
  ]);
  render(<SheetDrawing sheet={far} marking={inInches} />);
  const text = document.querySelector('text')!;
  expect(Number(text.getAttribute('font-size'))).toBeCloseTo(960 / 32, 1);
  expect(text.getAttribute('transform')).toBe('rotate(-90 10 500)');
});
