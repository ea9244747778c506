import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { altered } from '../../src/fitting/altered.ts';
import type { Amount } from '../../src/fitting/cure-types.ts';
import type { Level } from '../../src/fitting/entry.ts';
import { widthAt } from '../../src/fitting/levels.ts';
import { sidesOf } from '../../src/fitting/sides.ts';
import { sewnEdge } from '../../src/fitting/spread.ts';
import { inches, type Length, mm, nm, toMm } from '../../src/length/length.ts';
import { flattenOutline } from '../../src/shape/flatten.ts';
import { edgeLengths } from '../../src/shape/measure.ts';
import { sidesCross } from '../../src/shape/offset-crossing.ts';
import type { Outline } from '../../src/shape/outline.ts';
import { allPieces, type Known, pieceOf } from './demo-garments.ts';

const wide = (level: Level, by: Length): Amount => ({ kind: 'width', level, by });
const long = (level: Level, by: Length): Amount => ({ kind: 'length', level, by });
const draw = (
  { piece, role, levels }: Known,
  amounts: readonly Amount[],
  edges: readonly string[] = [],
): Outline => altered(piece, role, levels, amounts, edges);
const lengthsOf = (outline: Outline): Record<string, number> =>
  Object.fromEntries([...edgeLengths(outline)].map(([edge, length]) => [edge, toMm(length)]));
const closes = ({ start, edges }: Outline): boolean => {
  const end = edges.at(-1)?.segments.at(-1)?.to;
  return end?.x === start.x && end.y === start.y;
};

/** Pieces with a side each way whose levels have a width that is measured straight across. */
const sided = allPieces.filter(
  ({ piece, role, levels }) => sidesOf(piece.outline) && levels.size > 1 && role !== 'skirt',
);
const straight: readonly Level[] = [
  'chest',
  'waist',
  'hip',
  'hem',
  'elbow',
  'wrist',
  'crotch',
  'thigh',
  'knee',
  'calf',
  'ankle',
];
const small = fc.integer({ min: -20, max: 40 }).map(mm);

describe('an altered outline', () => {
  it('is the same where nothing changes', () => {
    for (const one of allPieces) {
      const none = [...one.levels.keys()].flatMap((level) => [wide(level, nm(0)), long(level, nm(0))]);
      expect(draw(one, none)).toBe(one.piece.outline);
    }
  });

  it('is wider at every level by exactly what was asked, and stays closed, simple and named alike', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...sided),
        fc.array(small, { minLength: 8, maxLength: 8 }),
        (one, amounts) => {
          const asked = [...one.levels.keys()]
            .filter((level) => straight.includes(level))
            .map((level, i) => wide(level, amounts[i]!));
          const after = draw(one, asked);
          for (const { level, by } of asked) {
            const y = one.levels.get(level)!;
            expect(Math.abs(toMm(nm(widthAt(after, y) - widthAt(one.piece.outline, y) - by)))).toBeLessThan(
              1e-3,
            );
          }
          expect(closes(after)).toBe(true);
          expect(sidesCross(flattenOutline(after))).toBe(false);
          expect(after.edges.map(({ name }) => name)).toEqual(
            one.piece.outline.edges.map(({ name }) => name),
          );
        },
      ),
      { seed: 5, numRuns: 120 },
    );
  });

  it('is longer between two levels by exactly what was asked, and nowhere else', () => {
    fc.assert(
      fc.property(fc.constantFrom(...sided), small, fc.nat(), (one, by, pick) => {
        const order = [...one.levels.entries()];
        const i = pick % (order.length - 1);
        const after = draw(one, [long(order[i]![0], by)]);
        const before = flattenOutline(one.piece.outline).map(({ y }) => y as number);
        const now = flattenOutline(after).map(({ y }) => y as number);
        const depth = (ys: readonly number[]): number => Math.max(...ys) - Math.min(...ys);
        expect((depth(now) - depth(before)) / 1e6).toBeCloseTo(toMm(by), 3);
        expect(closes(after)).toBe(true);
        expect(sidesCross(flattenOutline(after))).toBe(false);
      }),
      { seed: 6, numRuns: 80 },
    );
  });

  it('moves the panel edge of a centre front alone, tapering to nothing at the shoulder', () => {
    const front = pieceOf('centre-front', 'centre-front');
    const after = draw(front, [wide('chest', inches(5, 8))]);
    const [was, is] = [lengthsOf(front.piece.outline), lengthsOf(after)];
    for (const edge of ['lap', 'neck', 'shoulder', 'opening']) expect(is[edge]).toBeCloseTo(was[edge]!, 4);
    // Below the chest all of it is wider, to the hem.
    expect(is.hem).toBeCloseTo(was.hem! + 15.875, 4);
    expect(Math.abs(is.panel! - was.panel!)).toBeLessThan(3);
  });

  it('keeps the width below where that was asked for too', () => {
    const front = pieceOf('centre-front', 'centre-front');
    const after = draw(front, [wide('chest', inches(5, 8)), wide('hem', nm(0))]);
    expect(lengthsOf(after).hem).toBeCloseTo(lengthsOf(front.piece.outline).hem!, 4);
  });

  it('moves the edge that is named', () => {
    const side = pieceOf('side-front', 'side-front');
    const inner = draw(side, [wide('chest', mm(6))], ['panel']);
    const outer = draw(side, [wide('chest', mm(6))]);
    const was = lengthsOf(side.piece.outline);
    expect(lengthsOf(inner).armhole).toBeCloseTo(was.armhole!, 4);
    expect(lengthsOf(outer).armhole).toBeGreaterThan(was.armhole! + 1);
    expect(lengthsOf(outer).panel).toBeCloseTo(was.panel!, 4);
  });

  it('keeps a fold on its line', () => {
    const back = pieceOf('centre-back', 'back');
    const after = draw(back, [wide('chest', mm(20))]);
    const xs = flattenOutline(after).map(({ x }) => x);
    expect(Math.min(...xs)).toBe(0);
  });

  it.each([
    ['cuff', 'cuff-outer'],
    ['cuff', 'cuff-inner'],
    ['frill', 'cuff-frill'],
    ['collar', 'collar-under'],
    ['arm-band', 'upper-band'],
  ] as const)('gives the edge by which a %s (%s) is sewn on the length that is wanted', (role, id) => {
    const one = pieceOf(role, id);
    const [level] = [...one.levels.keys()];
    for (const by of [mm(-12), mm(3), mm(12.7)]) {
      const after = draw(one, [wide(level!, by)]);
      const edge = sewnEdge(one.piece.outline);
      expect(lengthsOf(after)[edge]! - lengthsOf(one.piece.outline)[edge]!).toBeCloseTo(toMm(by), 3);
      expect(closes(after)).toBe(true);
    }
  });

  it('takes a rise up at its top and leaves the leg below as it is', () => {
    const thigh = pieceOf('leg', 'thigh');
    const after = draw(thigh, [long('waist', mm(-19))]);
    const [was, is] = [lengthsOf(thigh.piece.outline), lengthsOf(after)];
    for (const edge of ['front-inseam', 'back-inseam', 'knee']) expect(is[edge]).toBeCloseTo(was[edge]!, 4);
    for (const edge of ['front-rise', 'back-rise']) {
      expect(was[edge]! - is[edge]!).toBeGreaterThan(15);
      expect(was[edge]! - is[edge]!).toBeLessThan(20);
    }
    const knees = (outline: Outline): number => Math.max(...flattenOutline(outline).map(({ y }) => y));
    expect(knees(after)).toBe(knees(thigh.piece.outline));
  });

  it('shortens a lower leg above the foot, which stays as it is', () => {
    const leg = pieceOf('lower-leg', 'lower-leg');
    const after = draw(leg, [long('calf', mm(-25))]);
    const [was, is] = [lengthsOf(leg.piece.outline), lengthsOf(after)];
    for (const edge of ['knee', 'front-foot', 'back-foot']) expect(is[edge]).toBeCloseTo(was[edge]!, 3);
    expect(was['front-inseam']! - is['front-inseam']!).toBeGreaterThan(20);
    expect(
      Math.abs(is['front-inseam']! - was['front-inseam']! - (is['back-inseam']! - was['back-inseam']!)),
    ).toBeLessThan(1);
  });

  it('leaves the toes where they are when the ankle is changed', () => {
    const leg = pieceOf('lower-leg', 'lower-leg');
    const after = draw(leg, [wide('ankle', mm(-20))]);
    const toe = (outline: Outline) => flattenOutline(outline).reduce((a, b) => (b.y > a.y ? b : a));
    expect(toe(after)).toEqual(toe(leg.piece.outline));
  });
});
