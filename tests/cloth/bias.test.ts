import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type Binding, bindingWidth, longestBias, selvageLength } from '../../src/cloth/bias.ts';
import { inches, mm, nm, toMm, zero } from '../../src/length/index.ts';
import { made } from './good.ts';

describe('widths on the bias', () => {
  test('the longest single strip lies in the rectangle, corner to corner', () => {
    expect(toMm(made(longestBias({ across: mm(500), along: mm(300), strip: mm(30) })))).toBeCloseTo(
      300 * Math.SQRT2 - 30,
      5,
    );
  });

  test.each([
    [{ across: zero }, 'across'],
    [{ along: zero }, 'along'],
    [{ strip: zero }, 'strip'],
    [{ strip: mm(425) }, 'strip'],
  ])('a single strip refuses %j', (change, field) => {
    const cloth = { across: mm(500), along: mm(300), strip: mm(30) };
    expect(longestBias({ ...cloth, ...change })).toMatchObject({ ok: false, error: { field } });
  });

  test('refuses a strip without width', () => {
    expect(selvageLength(zero)).toMatchObject({ ok: false, error: { field: 'width' } });
  });
});

describe('bindings', () => {
  test.each<[Binding, number, number[]]>([
    [{ kind: 'single', width: mm(10) }, 40, [10, 20, 30]],
    [{ kind: 'single', width: mm(10), turn: mm(6) }, 32, [6, 16, 26]],
    [{ kind: 'double', width: mm(6) }, 36, [18]],
    [{ kind: 'double', width: mm(6), turn: mm(5) }, 34, [17]],
    [{ kind: 'facing', width: mm(30), turn: mm(5) }, 40, [5, 35]],
  ])('%j', (binding, cut, folds) => {
    const strip = made(bindingWidth(binding));
    expect(toMm(strip.cut)).toBe(cut);
    expect(strip.folds.map(toMm)).toEqual(folds);
  });

  test('piping goes once round its cord', () => {
    const strip = made(bindingWidth({ kind: 'piping', width: mm(4), turn: mm(10) }));
    expect(toMm(strip.cut)).toBeCloseTo(Math.PI * 4 + 20, 5);
  });

  test('the folds leave the strip lying evenly about its middle', () => {
    const kinds = fc.constantFrom<Binding['kind']>('single', 'double', 'band', 'facing', 'piping');
    fc.assert(
      fc.property(kinds, fc.integer({ min: 20, max: 90 }), fc.integer({ min: 3, max: 10 }), (kind, w, t) => {
        const { cut, folds } = made(bindingWidth({ kind, width: mm(w), turn: mm(t) }));
        const mirrored = [...folds].reverse().map((fold) => nm(cut - fold));
        folds.forEach((fold, i) => {
          expect(Math.abs(fold - mirrored[i]!)).toBeLessThanOrEqual(1);
        });
      }),
    );
  });

  test.each<[Binding, string]>([
    [{ kind: 'single', width: zero }, 'width'],
    [{ kind: 'single', width: mm(5), turn: mm(6) }, 'turn'],
    [{ kind: 'band', width: inches(1, 8) }, 'turn'],
    [{ kind: 'double', width: mm(5), turn: zero }, 'turn'],
    [{ kind: 'facing', width: mm(9), turn: mm(5) }, 'turn'],
  ])('refuses %j', (binding, field) => {
    expect(bindingWidth(binding)).toMatchObject({ ok: false, error: { field } });
  });
});
