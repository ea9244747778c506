import { describe, expect, test } from 'vitest';
import { crossTucks } from '../../src/cloth/cross-tucks.ts';
import { crossedPanel } from '../../src/cloth/crossed-panel.ts';
import { finishedPoint } from '../../src/cloth/fold-map.ts';
import { inches, mm, nm, zero } from '../../src/length/index.ts';
import { rectangle } from '../shape/shapes.ts';
import { sizeOf } from './box-size.ts';
import { made } from './good.ts';

const asked = { width: mm(210), height: mm(310), depth: mm(5), spacing: mm(25), angle: 90 };

describe('a panel of crossed tucks', () => {
  test('square, it is the same as opening the rectangle through both', () => {
    const panel = made(crossedPanel(asked));
    const opened = made(
      crossTucks({ first: panel.first.family, second: panel.second.family, outline: rectangle(210, 310) }),
    );
    expect(sizeOf(opened.cut)).toEqual({ width: panel.clothWidth, height: panel.clothHeight });
    expect(panel.secondLines).toEqual(opened.second);
    expect(panel.firstLines).toEqual(opened.first);
    expect([panel.first.marks.length, panel.second.marks.length]).toEqual([9, 13]);
    expect(panel.clothWidth).toBe(mm(210 + 90));
    expect(panel.clothHeight).toBe(mm(310 + 130));
  });

  test.each([30, 45, 60, 75, 90])('at %s degrees the cloth folds to cover the whole panel', (angle) => {
    const { first, second, clothWidth, clothHeight } = made(crossedPanel({ ...asked, angle }));
    // Walk a grid of the flat cloth; every finished place of the panel must be near one.
    const step = mm(2.5);
    const reached = new Set<string>();
    for (let x = 0; x <= clothWidth + step; x += step) {
      for (let y = 0; y <= clothHeight + step; y += step) {
        const flat = { x: nm(Math.min(x, clothWidth)), y: nm(Math.min(y, clothHeight)) };
        const p = finishedPoint(second, finishedPoint(first, flat));
        reached.add(`${Math.floor(p.x / mm(10))},${Math.floor(p.y / mm(10))}`);
      }
    }
    for (let x = 0; x < 21; x++) for (let y = 0; y < 31; y++) expect(reached.has(`${x},${y}`)).toBe(true);
  });

  test('aslant, the second lines lie in zigzag on the flat cloth and fold straight', () => {
    const { first, second, secondLines, square } = made(crossedPanel({ ...asked, angle: 60 }));
    expect(square).toBe(false);
    const long = secondLines.flatMap(({ runs }) => runs).filter((run) => run.length > 3);
    expect(long.length).toBeGreaterThan(0);
    const { x, y } = { x: Math.cos(Math.PI / 3), y: Math.sin(Math.PI / 3) };
    for (const line of secondLines) {
      const mark = second.marks[line.tuck]!;
      const flat = {
        'first stitching': mark.firstStitching,
        fold: mark.fold,
        'second stitching': mark.secondStitching,
      };
      for (const p of line.runs.flat().map((p) => finishedPoint(first, p)))
        expect(Math.abs(p.x * x + p.y * y - flat[line.line])).toBeLessThan(20);
    }
  });

  test.each([
    [{ angle: 20 }, 'angle'],
    [{ angle: 91 }, 'angle'],
    [{ width: zero }, 'width'],
    [{ height: zero }, 'height'],
    [{ depth: inches(2) }, 'depth'],
    [{ spacing: mm(0.5), depth: mm(0.5) }, 'spacing'],
  ])('refuses %j', (change, field) => {
    expect(crossedPanel({ ...asked, ...change })).toMatchObject({ ok: false, error: { field } });
  });
});
