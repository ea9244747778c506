import { readFileSync } from 'node:fs';
import type { ClothPiece } from '../../src/cloth/cloth-needed.ts';
import { type Length, mm, nm, zero } from '../../src/length/index.ts';
import { readOutfit } from '../../src/outfit/reading.ts';
import { boundingBox } from '../../src/shape/index.ts';
import { addAllowance } from '../../src/shape/offset.ts';

/** The pieces of the demonstration shirt by their cut edges, and the width of its cloth. */
export function shirt(): { readonly pieces: readonly ClothPiece[]; readonly width: Length } {
  const read = readOutfit(JSON.parse(readFileSync('demo-data/plain-shirt.json', 'utf8')));
  if (!read.ok) throw new Error(JSON.stringify(read.error));
  const pieces = read.value.garments.flatMap((garment) =>
    garment.pieces.map(({ name, cut, outline, allowance }) => {
      const cutEdge = addAllowance(outline, new Map([['fold', zero]]), allowance, mm(0.5));
      if (!cutEdge.ok) throw new Error(cutEdge.error);
      return { name, cut, shape: cutEdge.value };
    }),
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
