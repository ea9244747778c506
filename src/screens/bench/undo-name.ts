import type { Card } from '../../order/card-types.ts';
import type { Progress } from '../../store/progress-types.ts';

/** Letters of a name that go on one short line beside the sign of undo. */
const MOST_LETTERS = 14;

/** The words up to the first stop, as many as go on one line; undefined where not even the first word does. */
function shortName(name: string): string | undefined {
  const [head = ''] = name.split(/[:,;(]/);
  let short = '';
  for (const word of head.trim().split(/\s+/)) {
    const longer = short === '' ? word : `${short} ${word}`;
    if (longer.length > MOST_LETTERS) break;
    short = longer;
  }
  return short === '' ? undefined : short;
}

/** A tick by its words, where no other tick of the card would be called the same; else by its place in the list. */
function tickName(names: readonly string[], index: number): string {
  const short = shortName(names[index] ?? '');
  const alone = names.filter((name) => shortName(name) === short).length === 1;
  return short !== undefined && alone ? short : `tick ${index + 1}`;
}

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
    case 'ticks': {
      const index = readout.items.findIndex((tick) => tick.item === item);
      const names = readout.items.map(({ name }) => name);
      return index < 0 ? 'a tick' : tickName(names, index);
    }
    case 'timers': {
      const name = readout.timers.find((timer) => timer.item === item)?.name ?? '';
      return name.length <= MOST_LETTERS ? name : (shortName(name) ?? 'timer');
    }
    default:
      return '';
  }
}

/** A change of the description by what the maker did, without articles, where that goes on one line. */
function changeName(say = ''): string {
  const short = say.replace(/\b(?:the|an?) /g, '');
  return short === '' || short.length > MOST_LETTERS ? 'the change' : short;
}

/** A cure by the beginning of what it does: `the cure: centre front`. */
function cureName(say = ''): string {
  // A figure without its unit would be misread.
  const short = shortName(say.split(/\s\d/, 1)[0] ?? '') ?? '';
  return short === '' ? 'the cure' : `the cure: ${short.charAt(0).toLowerCase()}${short.slice(1)}`;
}

/** What one touch of undo would take back, on two short lines at most; undefined where there is nothing. */
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
    case 'redescribed':
      return changeName(undo.say);
    case 'seen':
      return 'what was seen';
    case 'let-be':
      return 'letting it be';
    case 'reworked':
      return cureName(undo.say);
    case 'note':
      return 'note';
    case 'reckoned':
      return 'the figures';
    default:
      return 'the last deed';
  }
}
