import { type Signal, useSignal } from '@preact/signals';
import type { RefObject } from 'preact';
import { useLayoutEffect } from 'preact/hooks';

/** Under so many of its own letters' heights a screen has no room for three things side by side. */
const NARROW_REM = 19;

/**
 * True while `room` is narrow for the size of its letters: on a very small screen, magnified, or with large letters.
 * Measured, because no media query follows the size of letters that is chosen while the page is open.
 */
export function useNarrow(
  room: RefObject<HTMLElement | null>,
  letter: RefObject<HTMLElement | null>,
): Signal<boolean> {
  const narrow = useSignal(false);
  useLayoutEffect(() => {
    const [wide, one] = [room.current, letter.current];
    if (!wide || !one) return undefined;
    const measure = (): void => {
      narrow.value = one.offsetWidth > 0 && wide.clientWidth / one.offsetWidth < NARROW_REM;
    };
    if (typeof ResizeObserver === 'undefined') {
      measure();
      return undefined;
    }
    // The observer first calls when the page has been laid out anyway; measuring here would lay it out once more.
    const watching = new ResizeObserver(measure);
    watching.observe(wide);
    watching.observe(one);
    return () => watching.disconnect();
  }, []);
  return narrow;
}
