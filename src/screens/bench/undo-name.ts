import type { Card } from '../../order/card-types.ts';
import type { Progress } from '../../store/progress-types.ts';

function itemName(card: Card | undefined, item: string): string {
  const readout = card?.readout;
  switch (readout?.kind) {
    case 'marks': {
      for (const set of readout.sets) {
        const index = set.marks.findIndex((mark) => mark.item === item);
        if (index >= 0) return `mark ${index + 1}`;
      }
      return 'a mark';
    }
    case 'ticks':
      return readout.items.find((tick) => tick.item === item)?.name ?? 'a tick';
    case 'timers':
      return readout.timers.find((timer) => timer.item === item)?.name ?? 'timer';
    default:
      return '';
  }
}

/** What one touch of undo would take back, in two or three words; undefined where there is nothing. */
export function undoName(undo: Progress['undo'], card: Card | undefined): string | undefined {
  if (!undo) return undefined;
  const here = card !== undefined && undo.step === card.step;
  const item = here ? itemName(card, undo.item) : '';
  switch (undo.kind) {
    case 'step-done':
      return here ? 'done' : 'last step';
    case 'item-done':
      return item === '' ? 'a mark' : item;
    case 'tap':
      return 'last count';
    case 'line-closed':
      return 'line done';
    case 'timer-started':
      return `start ${item}`.trim();
    case 'timer-stopped':
      return `stop ${item}`.trim();
    case 'reason-added':
      return 'your reason';
    case 'reason-waived':
      return 'waiving';
    case 'described':
      return 'the change';
    case 'note':
      return 'note';
    default:
      return 'the last deed';
  }
}
