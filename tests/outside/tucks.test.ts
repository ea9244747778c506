import { describe, expect, test } from 'vitest';
import { crossTucks } from '../../src/cloth/cross-tucks.ts';
import { tucks } from '../../src/cloth/tucks.ts';
import { inches, mm, ratio, subtract, zero } from '../../src/length/index.ts';
import { at, rectangle } from '../shape/shapes.ts';

function made<T>(result: { ok: true; value: T } | { ok: false; error: unknown }): T {
  if (!result.ok) throw new Error(JSON.stringify(result.error));
  return result.value;
}

describe('tucks against published figures', () => {
  // Clothing for Women, Laura I. Baldt, 1916, Decoration: self-trimmings, p. 400 (seen as an excerpt):
  // cloth for tucks is twice the depth for each, added to the finished length.
  test.each([
    [5, inches(1, 4), inches(5, 2)],
    [3, inches(1, 2), inches(3)],
    [20, inches(1, 8), inches(5)],
  ])('%s tucks use twice their depth each', (count, depth, wanted) => {
    const { takeUp } = made(tucks({ count, depth, spacing: inches(1), first: zero, pressed: 'away' }));
    expect(takeUp).toBe(wanted);
  });

  // Home and School Sewing, chapter XXI Tucking, undated (author and year not in the excerpt): 2 d taken and 1 d to lie on,
  // so 3 d from the one edge to the next free line.
  test('a tuck and what it lies on make three depths', () => {
    const [first, second] = made(
      tucks({ count: 2, depth: inches(1, 4), spacing: inches(1, 4), first: zero, pressed: 'away' }),
    ).tucks;
    expect(subtract(second!.firstStitching, first!.firstStitching)).toBe(inches(3, 4));
  });

  // Hand Sewing Lessons, Model 6 Tucking (year not in the excerpt): 1/2 in tucks whose stitching lines are 1/2 in apart
  // when made just meet. Flat distance between folds 1 1/2 in, derived from these.
  test('half-inch tucks half an inch apart just meet', () => {
    const [first, second] = made(
      tucks({ count: 2, depth: inches(1, 2), spacing: inches(1, 2), first: inches(1), pressed: 'away' }),
    ).tucks;
    expect(first).toMatchObject({ meets: 'blind', showing: 0 });
    expect(subtract(second!.fold, first!.fold)).toBe(inches(3, 2));
    expect(subtract(second!.firstStitching, first!.firstStitching)).toBe(inches(3, 2));
  });

  // NIMI Dress Making, Trade Practical, exercise 48, p. 209, example 2 (c. 2024, seen as an excerpt): width 28 cm, margins
  // 2 + 2 cm, 16 tucks 2 mm deep use 6.4 cm, pattern width 34.4 cm, pitch 24 / 15 = 1.6 cm.
  test('sixteen tucks of 2 mm in 28 cm need 34.4 cm of cloth', () => {
    const result = made(
      tucks({ count: 16, depth: mm(2), spacing: mm(240 / 15), first: mm(20), pressed: 'away' }),
    );
    expect(result.takeUp).toBe(mm(64));
    expect(subtract(mm(280), result.tucks.at(-1)!.finished)).toBe(mm(20));
    expect(result.tucks.at(-1)!.secondStitching + mm(20)).toBe(mm(344));
  });

  // Same book, c. 2024, p. 203 (knife pleats): pattern width = 2 x depth x number + pleated width; 18 pleats 4 cm deep on 92 cm need 236.
  test('the same rule for eighteen folds of 4 cm on 92 cm', () => {
    const result = made(tucks({ count: 18, depth: mm(40), spacing: mm(51), first: zero, pressed: 'away' }));
    expect(result.takeUp + mm(920)).toBe(mm(2360));
  });

  // The New Dressmaker, Butterick, 1921, p. 98 (seen as an excerpt): same size and spacing both ways make squares.
  test('crossed tucks of the same size and spacing make squares', () => {
    const family = (across: number) => ({
      datum: at(0, 0),
      across,
      tucks: [1, 2, 3].map((k) => ({ at: inches(k), depth: inches(1, 8) })),
      pressed: 'away' as const,
    });
    const outline = rectangle(101.6, 101.6);
    const { cut, first, second } = made(crossTucks({ first: family(0), second: family(90), outline }));
    const xs = first.filter((l) => l.line === 'fold').map((l) => l.runs[0]![0]!.x);
    const ys = second.filter((l) => l.line === 'fold').map((l) => l.runs[0]![0]!.y);
    expect(xs).toEqual(ys);
    expect(ratio(subtract(xs[1]!, xs[0]!), inches(5, 4))).toBe(1);
    expect(cut).toContainEqual({ x: inches(19, 4), y: inches(19, 4) });
  });
});
