import { lower } from '../../outfit/lower.ts';
import { type Ask, choicesOf, type Here } from './asks.ts';
import type { Written } from './drafts.ts';
import { readRows, standing } from './stands.ts';

/** A form in hand. */
export interface InHand {
  readonly here: Here;
  readonly written: Written;
  /** The part as it is; undefined for a new one. */
  readonly base: unknown;
  /** What is wrong with a field, by its path. */
  readonly faults: ReadonlyMap<string, string>;
  readonly write: (name: string, text: string) => void;
}

/** What stands in one answer, in a few words; empty where nothing does. */
function answerWords(name: string, ask: Ask, form: InHand): string {
  const text = standing(form.here, name, ask, form.written, form.base);
  switch (ask.kind) {
    case 'choice':
      if (ask.as === 'yes' || ask.as === 'only yes') return text === 'yes' ? 'yes' : '';
      return ask.options.find(({ value }) => value === text)?.label.toLowerCase() ?? text;
    case 'kind':
      return ask.options.find(({ value }) => value === text)?.label.toLowerCase() ?? text;
    case 'which':
      return choicesOf(form.here, ask.of).find(({ value }) => value === text)?.label ?? '';
    case 'length':
      return text === '' ? '' : /[a-z"″]/i.test(text) ? text : `${text} ${form.here.marking.unit}`;
    case 'number':
      return text === '' || ask.unit === undefined ? text : `${text} ${ask.unit}`;
    case 'rows': {
      const count = readRows(text).length;
      return count === 0 ? '' : String(count);
    }
    case 'some':
    case 'run': {
      const count = text.split(' ').filter(Boolean).length;
      return count === 0 ? '' : String(count);
    }
    default:
      return text;
  }
}

/** What stands in answers that are folded away, and which of them are empty. */
export function foldedWords(asks: readonly (readonly [string, Ask])[], form: InHand): string {
  const told = asks.map(([name, ask]) => [lower(ask.label), answerWords(name, ask, form)] as const);
  const stands = told.filter(([, words]) => words !== '').map(([label, words]) => `${label}: ${words}`);
  const empty = told.filter(([, words]) => words === '').map(([label]) => label);
  return [
    stands.length === 0 ? '' : `Also: ${stands.join('; ')}.`,
    empty.length === 0 ? '' : `Where it applies: ${empty.join('; ')}.`,
  ]
    .filter(Boolean)
    .join(' ');
}
