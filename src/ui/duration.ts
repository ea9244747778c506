/**
 * Whole seconds left, never below zero and never more than the timer has, even where the time shown is a moment older
 * than its start; a part of a second counts as a second, so 0 means over.
 */
export const secondsLeft = (
  timer: { readonly startedAt: number; readonly seconds: number },
  now: number,
): number => {
  const left = Math.ceil((timer.startedAt + timer.seconds * 1000 - now) / 1000);
  return Math.min(timer.seconds, Math.max(0, left));
};

const two = (n: number): string => String(n).padStart(2, '0');

/** A countdown as large figures: `0:12`, `12:04`, `3:05:00`. `seconds` is whole and not below zero. */
export function writeCountdown(seconds: number): string {
  const h = Math.floor(seconds / 3600);
  const m = Math.floor((seconds % 3600) / 60);
  const s = two(seconds % 60);
  return h > 0 ? `${h}:${two(m)}:${s}` : `${m}:${s}`;
}

/** A stretch of time in words: `12 s`, `4 min`, `2 h 5 min`, `3 days`. */
export function writeDuration(seconds: number): string {
  if (seconds < 60) return `${Math.round(seconds)} s`;
  const minutes = Math.round(seconds / 60);
  if (minutes < 60) return `${minutes} min`;
  if (minutes < 48 * 60) {
    const rest = minutes % 60;
    return `${Math.floor(minutes / 60)} h${rest === 0 ? '' : ` ${rest} min`}`;
  }
  return `${Math.round(minutes / (24 * 60))} days`;
}

/** The time of day at which something ends, with the day where it is not today: `14:20`, `Tue 09:00`. */
export function writeClock(at: number, now: number, locale?: string): string {
  const then = new Date(at);
  const sameDay = then.toDateString() === new Date(now).toDateString();
  return then.toLocaleString(locale, {
    hour: '2-digit',
    minute: '2-digit',
    ...(sameDay ? {} : { weekday: 'short' }),
  });
}
