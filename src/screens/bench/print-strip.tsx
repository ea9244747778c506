import { useMemo } from 'preact/hooks';
import { markingStrip } from '../../paper/marking-strip.ts';
import type { PatternSheet } from '../../paper/pattern-sheet.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { markingFor } from '../choices.ts';
import { PrintPaper } from '../paper/print.tsx';
import type { SheetProps } from './sheets.tsx';

/** The marks of the open card as strips of paper, one from every datum, to lay on the cloth. */
export function PrintStripSheet({ session, onClose }: SheetProps) {
  const card = session.card.value;
  const { unit } = markingFor(session.units.value);
  const sheets = useMemo(
    () => (): readonly PatternSheet[] =>
      card?.readout.kind === 'marks'
        ? card.readout.sets.map((set) => markingStrip(set, markingFor(unit)))
        : [],
    [card, unit],
  );
  if (card?.readout.kind !== 'marks') return null;
  return (
    <Sheet title={card.readout.sets.length === 1 ? 'Marking strip' : 'Marking strips'} onClose={onClose}>
      <PrintPaper name={`${card.garment}: ${card.say}`} sheets={sheets} />
    </Sheet>
  );
}
