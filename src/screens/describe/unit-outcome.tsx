import { useMemo } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import type { Marking } from '../../length/writing.ts';
import type { UnitsMade } from '../../outfit/changing/units.ts';
import { lengthsFit } from '../../outfit/lengths-fit.ts';
import type { Outfit } from '../../outfit/outfit.ts';
import { outfitSheets } from '../../paper/outfit-sheets.ts';
import { sideBySide } from '../../paper/side-by-side.ts';
import { SheetDrawing } from '../../ui/sheet-drawing.tsx';
import { Sign } from '../../ui/signs.tsx';

/** The pieces that a unit brings as one drawing; undefined where it brings none. */
function drawingOf(outfit: Outfit, garment: string, brought: ReadonlySet<string>, marking: Marking) {
  const garments = outfit.garments
    .filter(({ id }) => id === garment)
    .map((one) => ({ ...one, pieces: one.pieces.filter(({ id }) => brought.has(id)) }));
  const sheets = outfitSheets({ ...outfit, garments }, marking).flatMap((piece) => piece.sheets.slice(-1));
  return sheets.length === 0 ? undefined : sideBySide('The pieces', sheets);
}

/** Seams of a unit whose lengths would not fit, and by how much: said before it is put on. */
export function Misfits(props: {
  readonly made: UnitsMade;
  /** Id of the garment. */
  readonly garment: string;
  readonly marking: Marking;
}) {
  const { made, garment: id, marking } = props;
  const garment = made.outfit.garments.find((one) => one.id === id);
  const misfits = useMemo(() => {
    const brought = garment?.units.find((use) => use.id === made.unit)?.brought ?? [];
    return garment
      ? lengthsFit(made.outfit, garment, marking).filter(
          ({ join, within }) => !within && brought.includes(join),
        )
      : [];
  }, [made, garment, marking]);
  return misfits.map((fit) => (
    <p class="fault" key={fit.join + fit.kind + fit.say} data-part="misfit" role="status">
      <Sign name="caution" />
      <span>{fit.say}</span>
    </p>
  ));
}

/** What a unit comes to: its pieces to scale, what to know and what was taken for granted. */
export function UnitOutcome(props: {
  readonly made: UnitsMade;
  readonly garment: string;
  readonly marking: Marking;
  /** The form has been changed to something that cannot be made; this is what could be made last. */
  readonly stale: boolean;
}) {
  const { made, garment: id, marking, stale } = props;
  const { outfit, unit, advice, assumed } = made;
  const garment = outfit.garments.find((one) => one.id === id);
  const brought = useMemo(
    () => new Set(garment?.units.find((use) => use.id === unit)?.brought),
    [garment, unit],
  );
  const drawing = useMemo(() => drawingOf(outfit, id, brought, marking), [outfit, id, brought, marking]);
  if (!garment) return null;
  return (
    <section class={stale ? 'unit-outcome stale' : 'unit-outcome'} data-part="outcome">
      {drawing && <SheetDrawing sheet={drawing} marking={marking} />}
      {(advice.length > 0 || assumed.length > 0) && (
        <ul class="told">
          {advice.map(({ say, source }) => (
            <li key={say}>
              <p>{say}</p>
              <cite>{writeSource(source)}</cite>
            </li>
          ))}
          {assumed.map((line) => (
            <li key={line}>
              <p>Taken for granted: {line}</p>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
