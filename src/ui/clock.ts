import { signal } from '@preact/signals';
import { useEffect } from 'preact/hooks';

/**
 * The time shown, in ms since 1970. It is only a prompt to look again: everything timed is computed from when it
 * started, so a tab that slept is right as soon as it is seen.
 */
export const now = signal(Date.now());

/** Reads the device's clock into `now`. */
export const look = (): void => {
  now.value = Date.now();
};

/** Keeps `now` moving while `active`, and looks again whenever the page comes back. */
export function useTicking(active: boolean): void {
  useEffect(() => {
    look();
    if (!active) return undefined;
    const ticking = setInterval(look, 250);
    document.addEventListener('visibilitychange', look);
    return () => {
      clearInterval(ticking);
      document.removeEventListener('visibilitychange', look);
    };
  }, [active]);
}
