import { useSignal } from '@preact/signals';
import type { ComponentType } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Session } from '../session.ts';

type Part = ComponentType<{ readonly session: Session }>;

/** Keeps the room for the curve of finding out late, and fetches it once the page has been drawn. */
export function LateHere({ session }: { readonly session: Session }) {
  const part = useSignal<Part | undefined>(undefined);
  useEffect(() => {
    const frame = requestAnimationFrame(() => {
      import('./late-part.tsx').then(
        (found) => {
          part.value = found.default;
        },
        // The order itself does not need it; the room stays empty.
        () => {},
      );
    });
    return () => cancelAnimationFrame(frame);
  }, []);
  const Late = part.value;
  return (
    <section class="late asks" data-part="late">
      <h2>Found out late</h2>
      <p>What it would cost, at each point of the order, if something turned out not to fit.</p>
      <div class="late-room">{Late && <Late session={session} />}</div>
    </section>
  );
}
