import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { finishedPoint, openMap } from '../../src/cloth/fold-map.ts';
import { mm } from '../../src/length/length.ts';
import type { Garment, Outfit, Piece, Work } from '../../src/outfit/outfit.ts';
import { outfitSheets } from '../../src/paper/outfit-sheets.ts';
import { flatThrough } from '../../src/paper/piece-marks.ts';
import { familiesOn, openedPiece } from '../../src/paper/tucked-piece.ts';
import { flattenOutline, type Polygon } from '../../src/shape/flatten.ts';
import { addAllowance } from '../../src/shape/offset.ts';
import type { Point } from '../../src/shape/outline.ts';
import { cornersOf } from '../../src/traced/corners.ts';
import { traceOutline } from '../../src/traced/piece-outline.ts';
import { made } from '../cloth/good.ts';
import { demo } from '../outfit/demo-files.ts';
import { toNearestSide } from '../shape/shapes.ts';
import { fileOf, named, possible } from './read.ts';

const NAMES = ['shoulder', 'armhole', 'side', 'hem', 'opening', 'neck'];
const run = named(fileOf('layers-in-mm')).get('Front')!;
const corners = cornersOf(run);
// The armhole and the side are one edge of several stretches.
const joined = corners.filter((at) => at !== 3);
const traced = possible(
  traceOutline({ run, corners: joined, named: (at) => NAMES[joined.indexOf(at)] ?? 'edge', scale: 1.5 }),
);
const shirt = demo('plain-shirt');
const FINE = mm(0.005);

const piece: Piece = {
  id: 'front',
  name: 'Traced front',
  cloth: shirt.cloths[0]!.id,
  cut: 'pair',
  allowance: mm(10),
  cutAfterWork: false,
  grain: 20,
  marks: [{ name: 'Dart point', at: traced.at({ x: mm(70), y: mm(140) }) }],
  outline: traced.outline,
};
const tucks = (
  count: number,
  depth: number,
  spacing: number,
  angle: number,
  pressed: 'away' | 'toward',
): Work => ({
  kind: 'tucks',
  id: 'tucks',
  name: 'Tucks',
  on: 'front',
  from: traced.outline.edges.at(-1)!.name,
  marker: shirt.markers[0]!.id,
  family: { depths: Array(count).fill(mm(depth)), spacing: mm(spacing), first: mm(20), angle, pressed },
});
const garmentWith = (...works: readonly Work[]): Garment => ({
  ...shirt.garments[0]!,
  units: [],
  pieces: [piece],
  works,
  joins: [],
  gates: [],
});

/** The farthest that a corner of opened cloth lies from an outline once its tucks are sewn, in mm. */
function farthest(garment: Garment, open: Polygon, outline: Polygon): number {
  const maps = familiesOn(garment, piece).map((family) => made(openMap(family)));
  const sewn = (p: Point): Point => maps.reduce((at, map) => finishedPoint(map, at), p);
  return Math.max(...open.map((p) => toNearestSide(outline, sewn(p)))) / 1e6;
}

describe('an outline from a drawing program, with tucks', () => {
  it('has an edge of several stretches, of straight ones and curves', () => {
    expect(Math.max(...traced.outline.edges.map(({ segments }) => segments.length))).toBeGreaterThan(1);
    const kinds = new Set(traced.outline.edges.flatMap(({ segments }) => segments.map(({ kind }) => kind)));
    expect(kinds).toEqual(new Set(['line', 'curve']));
  });

  it('opens so that its seam line and cutting line are true within 0.01 mm when the tucks are sewn', () => {
    const seam = flattenOutline(piece.outline, FINE);
    const cut = possible(addAllowance(piece.outline, new Map(), piece.allowance, FINE));
    let opened = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 3, max: 9 }),
        fc.integer({ min: -12, max: 12 }),
        fc.constantFrom('away' as const, 'toward' as const),
        (count, depth, angle, pressed) => {
          const garment = garmentWith(tucks(count, depth, 25, angle, pressed));
          const found = openedPiece(cut, seam, familiesOn(garment, piece));
          // Where a corner would come loose it is refused in words, and rightly.
          if (!found.ok) return expect(found.error.wrong).toMatch(/tuck/);
          opened++;
          expect(farthest(garment, found.value.cut, cut)).toBeLessThan(0.01);
          for (const one of found.value.seams) expect(farthest(garment, one, seam)).toBeLessThan(0.01);
          // All of the finished edge is there: each corner of it lies on the opened line.
          const flat = seam.map((p) => flatThrough(familiesOn(garment, piece), p));
          const off = flat.map(
            (p) => Math.min(...found.value.seams.map((one) => toNearestSide(one, p))) / 1e6,
          );
          expect(Math.max(...off)).toBeLessThan(0.01);
        },
      ),
      { numRuns: 40, seed: 12 },
    );
    expect(opened).toBeGreaterThan(20);
  });

  it('is printed opened, with its grain as it lies in the drawing, its marks and its lattice on it', () => {
    const lattice: Work = {
      kind: 'lattice-beads',
      id: 'beads',
      name: 'Beads',
      on: 'front',
      families: [
        { angle: 45, spacing: mm(30) },
        { angle: -45, spacing: mm(30) },
      ],
      line: { name: 'Seed bead', length: mm(2), atATime: 1 },
      marker: shirt.markers[0]!.id,
    };
    const outfit = (...works: readonly Work[]): Outfit => ({ ...shirt, garments: [garmentWith(...works)] });
    const [plain] = outfitSheets(outfit(lattice), { unit: 'mm', step: 0.5 })[0]!.sheets;
    const [open, beaded] = outfitSheets(outfit(tucks(3, 5, 25, 0, 'away'), lattice), {
      unit: 'mm',
      step: 0.5,
    })[0]!.sheets;
    expect(open!.name).toBe('Traced front, opened');
    expect(beaded!.name).toBe('Traced front, lattice');
    for (const sheet of [plain!, open!]) {
      const grain = sheet.drawn.find((one) => one.kind === 'path' && one.stroke === 'grain');
      const [a, b] = grain?.kind === 'path' ? grain.points : [];
      expect((Math.atan2(b!.x - a!.x, a!.y - b!.y) * 180) / Math.PI).toSatisfy((turn: number) =>
        [20, -160].some((one) => Math.abs(turn - one) < 0.001),
      );
      expect(sheet.drawn.some((one) => one.kind === 'words' && one.words === 'Dart point')).toBe(true);
    }
    const seam = flattenOutline(piece.outline, mm(0.05));
    const marks = plain!.drawn.flatMap((one) =>
      one.kind === 'path' && one.stroke === 'mark' ? [one.points] : [],
    );
    expect(marks.length).toBeGreaterThan(10);
    const cross = marks.find(([a, b]) => a!.y === b!.y && b!.x - a!.x === mm(6));
    expect(cross).toBeDefined();
    // The same cross on the opened cloth folds back to the same place.
    const garment = garmentWith(tucks(3, 5, 25, 0, 'away'));
    const middle = (points: readonly Point[]): Point => ({
      x: mm((points[0]!.x + points[1]!.x) / 2e6),
      y: points[0]!.y,
    });
    const there = open!.drawn.flatMap((one) =>
      one.kind === 'path' && one.stroke === 'mark' && one.points[0]!.y === one.points[1]!.y
        ? [middle(one.points)]
        : [],
    )[0]!;
    const back = familiesOn(garment, piece).reduce(
      (at, family) => finishedPoint(made(openMap(family)), at),
      there,
    );
    expect(Math.hypot(back.x - middle(cross!).x, back.y - middle(cross!).y)).toBeLessThan(mm(0.01));
    expect(toNearestSide(seam, middle(cross!))).toBeGreaterThan(0);
  });
});
