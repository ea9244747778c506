/** What a key does at the bench. */
export type KeyMeaning = 'pad' | 'undo';

/** Keys that the maker has taught, by `KeyboardEvent.key` (or `code` where the key has no name). */
export type TaughtKeys = { readonly [meaning in KeyMeaning]?: string | undefined };

/** The part of a keyboard event that decides. */
export interface KeyPress {
  readonly key: string;
  readonly code: string;
  readonly repeat: boolean;
  readonly ctrlKey: boolean;
  readonly altKey: boolean;
  readonly metaKey: boolean;
  readonly target: EventTarget | null;
}

/** What to do with a press: act, swallow it (a held key), or leave it to whatever has the focus. */
export type KeyVerdict =
  | { readonly kind: 'act'; readonly as: KeyMeaning }
  | { readonly kind: 'swallow' }
  | { readonly kind: 'leave' };

const padKeys: ReadonlySet<string> = new Set([' ', 'Enter', 'ArrowRight', 'ArrowDown', 'PageDown']);
const undoKeys: ReadonlySet<string> = new Set(['ArrowLeft', 'ArrowUp', 'PageUp', 'Backspace']);
const scrollKeys: ReadonlySet<string> = new Set(['ArrowUp', 'ArrowDown', 'PageUp', 'PageDown']);
const leave: KeyVerdict = { kind: 'leave' };

/** The name under which a key is taught: a pedal may send a key that has no name of its own. */
export const keyName = (press: Pick<KeyPress, 'key' | 'code'>): string =>
  press.key !== 'Unidentified' && press.key !== '' ? press.key : press.code;

/** A taught key as the maker reads it. */
export const writeKey = (name: string): string =>
  name === ' ' ? 'Space' : name.replace(/([a-z])([A-Z])/g, '$1 $2');

function meaningOf(name: string, taught: TaughtKeys): KeyMeaning | undefined {
  if (name === taught.pad) return 'pad';
  if (name === taught.undo) return 'undo';
  if (padKeys.has(name)) return 'pad';
  return undoKeys.has(name) ? 'undo' : undefined;
}

/**
 * What a key press means at the bench. Fields and open sheets keep all their keys; a focused control keeps Space and
 * Enter, except the pad, which is acted on at key-down because some keyboards never send the key-up. A held key acts
 * once.
 */
export function readKey(press: KeyPress, taught: TaughtKeys): KeyVerdict {
  if (press.ctrlKey || press.altKey || press.metaKey) return leave;
  const name = keyName(press);
  const as = meaningOf(name, taught);
  if (as === undefined) return leave;
  // A sheet has the keys even while nothing in it has the focus.
  if (document.querySelector('dialog[open]')) return leave;
  const target = press.target instanceof Element ? press.target : undefined;
  if (target?.closest('input, textarea, select, [contenteditable]')) return leave;
  // Reached by Tab, the card is scrolled by these keys; after a mere touch on it they stay the pedal's.
  if (target?.matches('[data-part="middle"]:focus-visible') && scrollKeys.has(name)) return leave;
  const control = target?.closest('button, a, summary, [role="button"]');
  const presses = name === ' ' || name === 'Enter';
  if (control && presses && !control.matches('[data-part="pad"]')) return leave;
  return press.repeat ? { kind: 'swallow' } : { kind: 'act', as };
}
