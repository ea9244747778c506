import { type Signal, useSignal } from '@preact/signals';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { readKey } from '../../ui/keys.ts';
import { taught } from '../choices.ts';

/** How long a touch still belongs to what the pad said before: about the time a person takes to see the change. */
const SETTLE_MS = 250;

/** True for a moment whenever `meaning` has changed since the last touch could have been aimed. */
export function useSettling(meaning: string | undefined): Signal<boolean> {
  const settling = useSignal(false);
  const before = useRef(meaning);
  useLayoutEffect(() => {
    if (before.current === meaning) return undefined;
    const first = before.current === undefined;
    before.current = meaning;
    if (first) return undefined;
    settling.value = true;
    const over = setTimeout(() => {
      settling.value = false;
    }, SETTLE_MS);
    return () => {
      clearTimeout(over);
      settling.value = false;
    };
  }, [meaning]);
  return settling;
}

/** Keys, pedals and remotes: the same as touching the pad or the undo button. Acts at key-down, once a press. */
export function useBenchKeys(pad: () => void, undo: () => void): void {
  const acts = useRef({ pad, undo });
  acts.current = { pad, undo };
  // Before the first paint: a key is never pressed at a card that cannot hear it.
  useLayoutEffect(() => {
    const down = (event: KeyboardEvent): void => {
      const verdict = readKey(event, taught.value);
      if (verdict.kind === 'leave') return;
      event.preventDefault();
      if (verdict.kind === 'act') acts.current[verdict.as]();
    };
    // Some browsers press a focused button at key-up although key-down was taken.
    const up = (event: KeyboardEvent): void => {
      const target = event.target instanceof Element ? event.target : undefined;
      if (event.key === ' ' && target?.closest('[data-part="pad"]')) event.preventDefault();
    };
    document.addEventListener('keydown', down);
    document.addEventListener('keyup', up);
    return () => {
      document.removeEventListener('keydown', down);
      document.removeEventListener('keyup', up);
    };
  }, []);
}
