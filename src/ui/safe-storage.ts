/**
 * Small choices kept in the browser's simple storage (ground, sound, a taught key). Private windows and full disks
 * make that storage throw; a lost choice must never stop the work, so every failure here is silent.
 */

const prefix = 'slipbaste.';

/** The choice kept under `name`, or undefined where there is none or the storage cannot be read. */
export function recall(name: string): string | undefined {
  try {
    return globalThis.localStorage?.getItem(prefix + name) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Keeps `value` under `name`; undefined forgets it. Says whether it was kept. */
export function keep(name: string, value: string | undefined): boolean {
  try {
    if (value === undefined) globalThis.localStorage.removeItem(prefix + name);
    else globalThis.localStorage.setItem(prefix + name, value);
    return true;
  } catch {
    return false;
  }
}
