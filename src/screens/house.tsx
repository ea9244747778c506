import { signal } from '@preact/signals';
import type { Updates } from '../pwa/updates.ts';
import { keep, recall } from '../ui/safe-storage.ts';

/** Notices of the house: storage trouble, a newer version, and that the app now works without a network. */

/** What the ledger had to say, in words; empty where all is well. */
export const trouble = signal('');
const updateWaiting = signal(false);
const offlineReady = signal(false);
let updates: Updates | undefined;

/** Begins to watch for newer versions, after the first paint. */
export async function watchHouse(): Promise<void> {
  const { watchForUpdates } = await import('../pwa/updates.ts');
  updates = watchForUpdates({
    onOfflineReady() {
      if (recall('offline-said') === undefined) offlineReady.value = true;
      keep('offline-said', 'yes');
    },
    onUpdateWaiting() {
      updateWaiting.value = true;
    },
  });
}

/** Storage trouble, said at once and above everything. */
export function HouseTrouble() {
  if (trouble.value === '') return null;
  return (
    <p class="notice" role="alert" data-part="trouble">
      <span>{trouble.value}</span>
      <Dismiss of={trouble} to="" />
    </p>
  );
}

/**
 * One quiet line at the foot, where nothing moves when it comes: a newer version, or that the app is on the device.
 * Shown away from the cards, never while a step is in hand.
 */
export function HouseNotice() {
  if (updateWaiting.value) {
    return (
      <p class="notice" role="status" data-part="update">
        <span>A newer version is here.</span>
        <button type="button" class="plain" onClick={() => updates?.accept()}>
          Take it now
        </button>
        <Dismiss of={updateWaiting} to={false} word="Later" />
      </p>
    );
  }
  if (offlineReady.value) {
    return (
      <p class="notice" role="status" data-part="offline-ready">
        <span>Slipbaste is on this device now and works without a network.</span>
        <Dismiss of={offlineReady} to={false} />
      </p>
    );
  }
  return null;
}

function Dismiss<T>(props: { readonly of: { value: T }; readonly to: T; readonly word?: string }) {
  return (
    <button
      type="button"
      class="plain"
      onClick={() => {
        props.of.value = props.to;
      }}
    >
      {props.word ?? 'Good'}
    </button>
  );
}
