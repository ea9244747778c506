/** What the app wants to hear about the copy of itself that the device keeps. */
export interface UpdateListeners {
  /** The whole app is stored and opens without a network from now on. Called at most once a page. */
  readonly onOfflineReady: () => void;
  /** A newer build is stored and waits. May be called again. Ask the maker at a quiet moment, never during a step. */
  readonly onUpdateWaiting: () => void;
}

/** What the app may say to the copy of itself. */
export interface Updates {
  /** Takes the newer build that waits and loads the page anew. Nothing happens when none waits. */
  accept(): void;
  /** Asks the host whether there is a newer build. Silent when the host is out of reach. */
  check(): void;
}

const HOUR_MS = 60 * 60 * 1000;

/** Waits until the first screen has been drawn, so that storing the app never delays it. */
const firstPaint = (): Promise<void> =>
  new Promise((done) => {
    requestAnimationFrame(() => setTimeout(done, 0));
  });

/**
 * Keeps the whole app on the device, and from after the first paint on watches for newer builds: when the page comes
 * back into view, and once an hour. A newer build is never taken without `accept`. Where the browser offers no
 * service worker (plain http from another machine, some private windows, the development server) nothing is stored
 * and neither listener is called.
 */
export function watchForUpdates({ onOfflineReady, onUpdateWaiting }: UpdateListeners): Updates {
  const keeper = 'serviceWorker' in navigator ? navigator.serviceWorker : undefined;
  if (!keeper || import.meta.env.DEV) return { accept() {}, check() {} };

  let registration: ServiceWorkerRegistration | undefined;
  let accepted = false;
  let leftBehind = false;
  let cared = keeper.controller !== null;

  const check = (): void => {
    if (!navigator.onLine) return;
    // Out of reach: the copy on the device goes on, and the next check comes by itself.
    registration?.update().catch(() => {});
  };

  const start = async (): Promise<void> => {
    await firstPaint();
    const { Workbox } = await import('workbox-window');
    // The base of the page, not of this module, which lies in a folder below.
    const workbox = new Workbox(new URL('sw.js', document.baseURI).href);
    workbox.addEventListener('waiting', onUpdateWaiting);
    workbox.addEventListener('controlling', () => {
      if (accepted) location.reload();
      else if (cared) {
        // Another page of ours took the newer build. This one is in the middle of something, so it only says so.
        leftBehind = true;
        onUpdateWaiting();
      }
      cared = true;
    });
    registration = await workbox.register({ immediate: true });
    document.addEventListener('visibilitychange', () => {
      if (document.visibilityState === 'visible') check();
    });
    setInterval(check, HOUR_MS);
    await keeper.ready;
    onOfflineReady();
  };
  // A host without sw.js, or a browser that forbids storing: the app still works while the host is there.
  start().catch(() => {});

  return {
    check,
    accept() {
      if (registration?.waiting) {
        accepted = true;
        registration.waiting.postMessage({ type: 'SKIP_WAITING' });
      } else if (leftBehind) location.reload();
    },
  };
}
