import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type ClothNeededInput, type ClothPiece, clothNeeded } from '../../src/cloth/cloth-needed.ts';
import { openedOut } from '../../src/cloth/cloth-needed-pieces.ts';
import { inches, mm, nm } from '../../src/length/index.ts';
import type { Point } from '../../src/shape/index.ts';
import { signedArea } from '../../src/shape/index.ts';
import { at, ell } from '../shape/shapes.ts';
import { made } from './good.ts';
import { apart, overlap } from './layout-overlap.ts';
import { boxed, shirt } from './layout-shirt.ts';

const box = (across: number, along: number): ClothPiece['shape'] => ({
  across: mm(across),
  along: mm(along),
});
const piece = (change: Partial<ClothPiece> = {}): ClothPiece => ({
  name: 'Front',
  shape: box(300, 700),
  cut: 'one',
  ...change,
});
const cloth = (change: Partial<ClothNeededInput> = {}): ClothNeededInput => ({
  pieces: [piece()],
  width: mm(1000),
  laid: 'single',
  oneWay: false,
  ...change,
});
const skew: readonly Point[] = [at(0, 0), at(100, 20), at(80, 300), at(0, 200)];

describe('cloth needed', () => {
  test('a pair side by side takes its own length', () => {
    const found = made(clothNeeded(cloth({ pieces: [piece({ cut: 'pair' })] })));
    expect(found).toMatchObject({ length: mm(700), buy: mm(700), area: 420_000, areaBound: mm(420) });
    expect(found.efficiency).toBeCloseTo(0.6, 9);
    expect(found.parts[0]?.places.map(({ copy, mirrored }) => [copy, mirrored])).toEqual([
      [0, false],
      [1, true],
    ]);
  });

  test('doubled, a pair is laid once and cut twice', () => {
    const found = made(clothNeeded(cloth({ laid: 'doubled', pieces: [piece({ cut: 'pair' })] })));
    expect(found.parts).toMatchObject([{ layers: 2, width: mm(500), length: mm(700) }]);
    expect(found.parts[0]?.places).toHaveLength(1);
    expect(found.area).toBe(420_000);
  });

  test('on the fold the half lies at the fold, even upside down; opened out it is whole', () => {
    const pieces = [piece({ name: 'Back', shape: skew, cut: 'fold', count: 3 })];
    const doubled = made(clothNeeded(cloth({ pieces, laid: 'doubled' })));
    for (const { outline, onFold } of doubled.parts[0]!.places) {
      expect(onFold).toBe(true);
      expect(outline.filter(({ x }) => x === 0)).toHaveLength(2);
    }
    const single = made(clothNeeded(cloth({ pieces })));
    expect(single.area).toBe(doubled.area);
    expect(single.parts[0]!.places.map((p) => Math.abs(signedArea(p.outline)))).toEqual(
      Array.from({ length: 3 }, () => single.area / 3),
    );
  });

  test('single pieces come after the doubled ones, the gap between', () => {
    const pieces = [piece({ cut: 'pair' }), piece({ name: 'Pocket', shape: box(600, 100) })];
    const found = made(clothNeeded(cloth({ pieces, laid: 'doubled', gap: mm(10) })));
    expect(found.parts.map(({ layers, length }) => [layers, length])).toEqual([
      [2, mm(700)],
      [1, mm(100)],
    ]);
    expect(found.length).toBe(mm(810));
  });

  test('crosswise only where it may be', () => {
    const wide = (turns?: 'quarter') =>
      clothNeeded(
        cloth({
          pieces: [piece({ shape: box(900, 100), ...(turns && { turns }), count: 2 })],
          width: mm(950),
        }),
      );
    expect(made(wide()).length).toBe(mm(200));
    const narrow = cloth({ pieces: [piece({ shape: box(1200, 100), turns: 'quarter' })] });
    expect(made(clothNeeded(narrow)).parts[0]?.places[0]).toMatchObject({ turned: 90 });
  });

  test('on the bias the grain still runs along the cloth', () => {
    const found = made(clothNeeded(cloth({ pieces: [piece({ shape: box(100, 100), grain: 45 })] })));
    expect(found.length / mm(1)).toBeCloseTo(100 * Math.SQRT2, 4);
  });

  test('shrinkage by N / (1 - s), and rounded up to what is sold', () => {
    const pieces = [piece({ shape: box(300, 950) })];
    expect(made(clothNeeded(cloth({ pieces, shrinkage: 0.05 })))).toMatchObject({
      unshrunk: mm(1000),
      buy: mm(1000),
    });
    const yards = made(clothNeeded(cloth({ pieces, step: inches(36, 8) })));
    expect(yards.buy).toBe(inches(9 * 4.5));
  });

  test('margins at the selvage are left free', () => {
    const found = made(clothNeeded(cloth({ pieces: [piece({ count: 3 })], selvage: mm(51) })));
    expect(found.length).toBe(mm(1400));
    expect(Math.min(...found.parts[0]!.places.flatMap((p) => p.outline.map(({ x }) => x)))).toBe(mm(51));
  });

  test.each<[Partial<ClothNeededInput>, string]>([
    [{ pieces: [] }, 'pieces'],
    [{ pieces: [piece({ count: 200 }), piece({ count: 200 })] }, 'pieces'],
    [{ pieces: [piece({ shape: box(1001, 100) })] }, 'width'],
    [{ pieces: [piece({ shape: box(501, 100), cut: 'pair' })], laid: 'doubled' }, 'width'],
    [{ pieces: [piece({ shape: box(501, 100), cut: 'fold' })] }, 'width'],
    [{ gap: mm(-1) }, 'gap'],
    [{ selvage: mm(-1) }, 'selvage'],
    [{ selvage: mm(500) }, 'width'],
    [{ shrinkage: 1 }, 'shrinkage'],
    [{ shrinkage: -0.1 }, 'shrinkage'],
    [{ shrinkage: Number.NaN }, 'shrinkage'],
    [{ step: mm(0) }, 'step'],
    [{ oneWay: true, pieces: [piece({ turns: 'half' })] }, 'turns'],
    [{ oneWay: true, pieces: [piece({ turns: 'quarter' })] }, 'turns'],
    [{ pieces: [piece({ count: 1.5 })] }, 'count'],
    [{ pieces: [piece({ grain: Number.NaN })] }, 'grain'],
    [{ pieces: [piece({ shape: box(0, 100) })] }, 'shape'],
    [{ pieces: [piece({ shape: [at(0, 0), at(10, 0)] })] }, 'shape'],
    [{ pieces: [piece({ shape: [at(1, 0), at(9, 0), at(9, 9)], cut: 'fold' })] }, 'shape'],
    [{ pieces: [piece({ shape: skew, cut: 'fold', grain: 45 })], laid: 'doubled' }, 'grain'],
  ])('refuses %#', (change, field) => {
    expect(clothNeeded(cloth(change))).toMatchObject({ ok: false, error: { field } });
  });

  test('too wide a piece is told in both rules', () => {
    expect(clothNeeded(cloth({ pieces: [piece({ shape: box(1016.2, 100) })] }))).toMatchObject({
      error: {
        wrong: expect.stringMatching(
          /1017 mm \(40 1\/16 in\) wide .* than the 1000 mm \(39 5\/16 in\) of cloth/,
        ),
      },
    });
  });

  test('a half opens along one straight fold only', () => {
    expect(openedOut(skew)).toHaveLength(6);
    expect(openedOut([at(0, 0), at(50, 0), at(0, 50), at(50, 90), at(0, 100)])).toBeUndefined();
    expect(openedOut([at(-5, 0), at(50, 0), at(0, 50)])).toBeUndefined();
  });
});

/** The piece as it was drawn, laid by what the place says: mirrored, turned off its grain, moved. */
function placed(drawing: readonly Point[], mirrored: boolean, degrees: number, by: Point): Point[] {
  const [cos, sin] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  return drawing.map(({ x, y }) => {
    const across = mirrored ? -x : x;
    return {
      x: nm(across * cos - y * sin + by.x),
      y: nm(across * sin + y * cos + by.y),
    };
  });
}

describe('any pieces on any cloth', () => {
  const any = fc.record({
    name: fc.constant('Piece'),
    shape: fc.constantFrom<ClothPiece['shape']>(box(120, 60), box(200, 340), skew, ell),
    cut: fc.constantFrom('one' as const, 'pair' as const, 'fold' as const),
    count: fc.integer({ min: 1, max: 2 }),
  });

  test('none overlaps, all keep the gap, each lies where its place says, and one way where the cloth does', () => {
    fc.assert(
      fc.property(
        fc.array(any, { minLength: 1, maxLength: 5 }),
        fc.constantFrom('single' as const, 'doubled' as const),
        fc.boolean(),
        fc.nat(9),
        fc.nat(20),
        (pieces, laid, oneWay, gap, selvage) => {
          const input = cloth({ pieces, laid, oneWay, gap: mm(gap), selvage: mm(selvage), search: 450_000 });
          const found = made(clothNeeded(input));
          expect(found.length).toBeGreaterThanOrEqual(found.areaBound);
          for (const { places, layers, width, length } of found.parts) {
            for (const [i, one] of places.entries()) {
              const { shape, cut } = pieces[one.piece]!;
              if (oneWay) expect(one.turned).toBe(0);
              if (!('across' in shape) && (layers === 2 || cut !== 'fold')) {
                expect(placed(shape, one.mirrored, one.turned, one.at)).toEqual(one.outline);
              }
              for (const { x, y } of one.outline) {
                const least = layers === 1 ? mm(selvage) : one.onFold ? 0 : mm(gap) / 2;
                expect(x).toBeGreaterThanOrEqual(least);
                expect(x).toBeLessThanOrEqual(width - mm(selvage));
                expect(y).toBeGreaterThanOrEqual(0);
                expect(y).toBeLessThanOrEqual(length);
              }
              for (const other of places.slice(0, i)) {
                expect(overlap(one.outline, other.outline)).toBe(false);
                if (gap > 0) expect(apart(one.outline, other.outline)).toBeGreaterThanOrEqual(mm(gap) - 2);
              }
            }
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});

describe('the demonstration shirt', () => {
  const { pieces, width } = shirt();

  test('its thirteen pieces interlock without overlapping', () => {
    const { parts, length } = made(clothNeeded({ pieces, width, laid: 'single', oneWay: false, gap: mm(2) }));
    const outlines = parts.flatMap((part) => part.places.map((place) => place.outline));
    expect(outlines).toHaveLength(13);
    for (const [i, one] of outlines.entries()) {
      for (const other of outlines.slice(0, i)) expect(overlap(one, other)).toBe(false);
    }
    const asBoxes = made(
      clothNeeded({ pieces: boxed(pieces), width, laid: 'single', oneWay: false, gap: mm(2) }),
    );
    expect(length).toBeLessThanOrEqual(asBoxes.length);
  });

  test('interlocked and opened out it takes at most 1.25 times its area', () => {
    const { length, areaBound } = made(clothNeeded({ pieces, width, laid: 'single', oneWay: false }));
    expect(length / areaBound).toBeLessThanOrEqual(1.25);
  });

  test('cut as boxes it takes at most 1.25 times their area', () => {
    for (const laid of ['single', 'doubled'] as const) {
      const { length, areaBound } = made(clothNeeded({ pieces: boxed(pieces), width, laid, oneWay: false }));
      expect(length / areaBound).toBeLessThanOrEqual(1.25);
    }
  });
});
