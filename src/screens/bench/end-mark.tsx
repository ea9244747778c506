import type { Signal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';

/** The end of a card: while it is out of sight, `below` says that the card goes on. */
export function EndMark({ below }: { readonly below: Signal<boolean> }) {
  const mark = useRef<HTMLSpanElement>(null);
  useEffect(() => {
    const end = mark.current;
    if (!end || typeof IntersectionObserver === 'undefined') return undefined;
    const looking = new IntersectionObserver(
      ([seen]) => {
        below.value = seen?.isIntersecting === false;
      },
      { root: end.parentElement },
    );
    looking.observe(end);
    return () => {
      looking.disconnect();
      below.value = false;
    };
  }, [below]);
  return <span class="end-mark" ref={mark} aria-hidden="true" />;
}
