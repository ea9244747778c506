import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { watchForUpdates } from '../../src/pwa/updates.ts';

/** The part of a browser that keeps service workers, driven by hand. */
class Keeper extends EventTarget {
  controller: object | null = null;
  readonly ready = Promise.resolve();
  readonly registration = Object.assign(new EventTarget(), {
    waiting: null as { postMessage: (message: unknown) => void } | null,
    update: vi.fn(() => Promise.resolve()),
  });
  readonly register = vi.fn(async () => this.registration);
  readonly told: unknown[] = [];

  /** A newer build has been stored. */
  holdNewer(): void {
    this.registration.waiting = { postMessage: (message) => this.told.push(message) };
    workbox.dispatchEvent(new Event('waiting'));
  }
  /** A worker takes the page over. */
  takeOver(): void {
    this.controller = {};
    this.registration.waiting = null;
    workbox.dispatchEvent(new Event('controlling'));
  }
}

let workbox: EventTarget;
let keeper: Keeper;
const onOfflineReady = vi.fn();
const onUpdateWaiting = vi.fn();
const reload = vi.fn();

vi.mock('workbox-window', () => ({
  Workbox: class extends EventTarget {
    constructor() {
      super();
      workbox = this;
    }
    register = () => keeper.register();
  },
}));

beforeEach(() => {
  keeper = new Keeper();
  vi.clearAllMocks();
  vi.stubEnv('DEV', false);
  vi.spyOn(window.location, 'reload').mockImplementation(reload);
  Object.defineProperty(navigator, 'serviceWorker', { configurable: true, value: keeper });
});
afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
  Reflect.deleteProperty(navigator, 'serviceWorker');
});

async function watch() {
  const updates = watchForUpdates({ onOfflineReady, onUpdateWaiting });
  await vi.waitFor(() => expect(onOfflineReady).toHaveBeenCalledTimes(1));
  return updates;
}

describe('watchForUpdates', () => {
  it('says once that all is stored, and takes the first worker without a word', async () => {
    await watch();
    keeper.takeOver();
    expect(onOfflineReady).toHaveBeenCalledTimes(1);
    expect(onUpdateWaiting).not.toHaveBeenCalled();
    expect(reload).not.toHaveBeenCalled();
  });

  it('takes a newer build only when told to, then loads the page anew', async () => {
    keeper.controller = {};
    const updates = await watch();
    updates.accept();
    expect(reload).not.toHaveBeenCalled();
    keeper.holdNewer();
    expect(onUpdateWaiting).toHaveBeenCalledTimes(1);
    expect(keeper.told).toEqual([]);
    updates.accept();
    expect(keeper.told).toEqual([{ type: 'SKIP_WAITING' }]);
    expect(reload).not.toHaveBeenCalled();
    keeper.takeOver();
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('only speaks up when another page took the newer build, and reloads when told to', async () => {
    keeper.controller = {};
    const updates = await watch();
    keeper.takeOver();
    expect(onUpdateWaiting).toHaveBeenCalledTimes(1);
    expect(reload).not.toHaveBeenCalled();
    updates.accept();
    expect(reload).toHaveBeenCalledTimes(1);
  });

  it('asks for a newer build when the page comes back into view, and survives a host out of reach', async () => {
    const updates = await watch();
    document.dispatchEvent(new Event('visibilitychange'));
    expect(keeper.registration.update).toHaveBeenCalledTimes(1);
    keeper.registration.update.mockRejectedValueOnce(new Error('offline'));
    updates.check();
    expect(keeper.registration.update).toHaveBeenCalledTimes(2);
  });

  it('does nothing where the browser keeps no service workers', () => {
    Reflect.deleteProperty(navigator, 'serviceWorker');
    const updates = watchForUpdates({ onOfflineReady, onUpdateWaiting });
    updates.check();
    updates.accept();
    expect(reload).not.toHaveBeenCalled();
  });
});
