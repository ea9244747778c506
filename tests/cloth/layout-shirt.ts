import { readFileSync } from 'node:fs';
import type { ClothPiece } from '../../src/cloth/cloth-needed.ts';
import { type Length, mm, nm } from '../../src/length/index.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { boundingBox, flattenOutline, type Polygon, pointOf, signedArea } from '../../src/shape/index.ts';

/**
 * The cut edge of a seam line: every side moved outwards by the allowance, corners mitred. Sides on x = 0 of a folded
 * piece stay. Good enough for the demonstration's pieces, whose curves are wide.
 */
export function cutEdge(seam: Polygon, allowance: Length, folded: boolean): Polygon {
  const turn = signedArea(seam) < 0 ? -1 : 1;
  const n = seam.length;
  const lines = seam.map((a, i) => {
    const b = seam[(i + 1) % n]!;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const [nx, ny] = [(turn * (b.y - a.y)) / long, (-turn * (b.x - a.x)) / long];
    const out = folded && a.x === 0 && b.x === 0 ? 0 : allowance;
    return { nx, ny, c: nx * a.x + ny * a.y + out };
  });
  return lines.map((q, i) => {
    const p = lines[(i + n - 1) % n]!;
    const cross = p.nx * q.ny - p.ny * q.nx;
    const corner = seam[i]!;
    if (Math.abs(cross) < 1e-6) return pointOf(corner.x + q.nx * allowance, corner.y + q.ny * allowance);
    return pointOf((p.c * q.ny - q.c * p.ny) / cross, (q.c * p.nx - p.c * q.nx) / cross);
  });
}

/** The pieces of the demonstration shirt by their cut edges, and the width of its cloth. */
export function shirt(): { readonly pieces: readonly ClothPiece[]; readonly width: Length } {
  const read = readOutfit(JSON.parse(readFileSync('demo-data/plain-shirt.json', 'utf8')));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  const pieces = read.value.garments.flatMap((garment) =>
    garment.pieces.map(({ name, cut, outline, allowance }) => ({
      name,
      cut,
      shape: cutEdge(flattenOutline(outline, mm(0.5)), allowance, cut === 'fold'),
    })),
  );
  return { pieces, width: read.value.cloths[0]!.width };
}

/** The boxes round pieces: what they would take if cut out as rectangles first. */
export const boxed = (pieces: readonly ClothPiece[]): ClothPiece[] =>
  pieces.map((piece) => {
    if ('across' in piece.shape) return piece;
    const { left, top, right, bottom } = boundingBox(piece.shape);
    return { ...piece, shape: { across: nm(right - left), along: nm(bottom - top) } };
  });
