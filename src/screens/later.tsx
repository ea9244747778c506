import { signal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import { HouseTrouble, trouble } from './house.tsx';

/** What stands on the screen while a part of the app is fetched. */
export function Opening() {
  return (
    <main class="page">
      <HouseTrouble />
      <h1 class="unseen">Slipbaste</h1>
      <p role="status">Laying it out…</p>
      <p>
        <a href="#/">Outfits</a>
      </p>
    </main>
  );
}

/** A screen that is fetched when it is first wanted; every part is already on the device once the app is. */
export function later<P>(fetchIt: () => Promise<{ readonly default: ComponentType<P> }>): ComponentType<P> {
  const found = signal<ComponentType<P> | undefined>(undefined);
  return function Later(props: P) {
    useEffect(() => {
      if (found.value) return;
      fetchIt().then(
        (part) => {
          found.value = part.default;
        },
        () => {
          trouble.value =
            'A part of the app could not be read. Load the page again when you are at a quiet moment.';
        },
      );
    }, []);
    const Screen = found.value;
    return Screen ? <Screen {...(props as P & object)} /> : <Opening />;
  } as ComponentType<P>;
}
