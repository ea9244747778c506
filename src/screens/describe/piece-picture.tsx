import { useMemo } from 'preact/hooks';
import type { Marking } from '../../length/writing.ts';
import type { Garment, Outfit, Piece } from '../../outfit/outfit.ts';
import { outfitSheets } from '../../paper/outfit-sheets.ts';
import type { Drawn } from '../../paper/pattern-sheet.ts';
import { SheetDrawing } from '../../ui/sheet-drawing.tsx';

/** A piece as its pattern sheets show it: seam line and cutting line, its works, marks and grain. */
export function PiecePicture(props: {
  readonly piece: Piece;
  readonly garment: Garment;
  readonly outfit: Outfit;
  readonly marking: Marking;
}) {
  const { piece, garment, outfit, marking } = props;
  // Its name stands above it, and would cover a small piece.
  const unnamed = (one: Drawn): boolean =>
    one.kind === 'path' ||
    !(one.words === piece.name || one.words === garment.name || one.words.startsWith('cut '));
  // A slip of the drawing must not take the page away.
  const sheets = useMemo(() => {
    try {
      const garments = [{ ...garment, pieces: [piece] }];
      return outfitSheets({ ...outfit, garments }, marking).flatMap((one) =>
        one.sheets.map((sheet) => ({ ...sheet, drawn: sheet.drawn.filter(unnamed) })),
      );
    } catch {
      return [];
    }
  }, [piece, garment, outfit, marking]);
  if (sheets.length === 0) return <p class="quiet">It cannot be drawn like this.</p>;
  return (
    <div class="piece-picture" data-part="piece-picture">
      {sheets.map((sheet) => (
        <div key={sheet.name}>
          {sheets.length > 1 && <h3>{sheet.name}</h3>}
          <SheetDrawing sheet={sheet} marking={marking} />
        </div>
      ))}
    </div>
  );
}
