import type { ComponentChildren } from 'preact';
import { useEffect, useId, useRef } from 'preact/hooks';
import './sheet.css';

/** A sheet that lies over the card until it is closed. Escape, its button and a touch beside it all close it. */
export function Sheet(props: {
  readonly title: string;
  readonly onClose: () => void;
  readonly children: ComponentChildren;
}) {
  const box = useRef<HTMLDialogElement>(null);
  const id = useId();
  const { title, onClose, children } = props;
  useEffect(() => {
    const dialog = box.current;
    if (!dialog) return undefined;
    const from = document.activeElement;
    if (!dialog.open) dialog.showModal();
    const beside = (event: MouseEvent): void => {
      if (event.target === dialog) dialog.close();
    };
    dialog.addEventListener('click', beside);
    return () => {
      dialog.removeEventListener('click', beside);
      // Taken away with what was touched in it: the maker is back where she came from, unless something else took her.
      queueMicrotask(() => {
        if (document.activeElement !== document.body) return;
        const there = from instanceof HTMLElement && from !== document.body && from.isConnected;
        const back = there ? from : document.querySelector<HTMLElement>('main h1[tabindex]');
        back?.focus({ preventScroll: true });
      });
    };
  }, []);
  return (
    <dialog ref={box} class="sheet" aria-labelledby={id} onClose={onClose}>
      <div class="sheet-inside">
        <div class="sheet-head">
          <h2 id={id}>{title}</h2>
          <button type="button" class="plain" onClick={() => box.current?.close()}>
            Close
          </button>
        </div>
        {children}
      </div>
    </dialog>
  );
}
