import { signal } from '@preact/signals';

/** Whether the screen is really kept on: what the browser granted, not what was asked for. */
export type WakeState = 'on' | 'may-sleep';

/** The state to show. */
export const wakeState = signal<WakeState>('may-sleep');

let held: WakeLockSentinel | undefined;
let wanted = false;
let asking = false;

async function ask(): Promise<void> {
  if (!wanted || asking || held || document.visibilityState !== 'visible' || !navigator.wakeLock) return;
  asking = true;
  try {
    const lock = await navigator.wakeLock.request('screen');
    if (!wanted) {
      await lock.release();
      return;
    }
    held = lock;
    wakeState.value = 'on';
    lock.addEventListener('release', () => {
      if (held === lock) held = undefined;
      wakeState.value = 'may-sleep';
    });
  } catch {
    // Low battery, or a browser that wants a touch first: the next touch or return asks again.
    wakeState.value = 'may-sleep';
  } finally {
    asking = false;
  }
}

const again = (): void => void ask();

/** Keeps the screen on from now until the function it gives back is called; asks again on every touch and return. */
export function keepAwake(): () => void {
  wanted = true;
  again();
  document.addEventListener('visibilitychange', again);
  document.addEventListener('pointerup', again);
  return () => {
    wanted = false;
    document.removeEventListener('visibilitychange', again);
    document.removeEventListener('pointerup', again);
    held?.release().catch(() => {});
    held = undefined;
    wakeState.value = 'may-sleep';
  };
}
