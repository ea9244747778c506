import { useLayoutEffect, useRef } from 'preact/hooks';
import { Stuck } from '../bench/finished.tsx';
import { HouseTrouble } from '../house.tsx';
import { writeHash } from '../route.ts';
import type { Session } from '../session.ts';
import { UndoBar } from './undo-bar.tsx';

/** The address of a page of a description: `hashOf(session, 'garment', 'shirt')`. */
export const hashOf = (session: Pick<Session, 'id'>, ...at: readonly string[]): string =>
  writeHash({ screen: 'outfit', outfit: session.id, at });

/** A way up from a page. */
export interface Up {
  readonly say: string;
  readonly href: string;
}

/** The head of a page of the description: the way up, its title, and what went wrong with keeping. */
export function Head(props: {
  readonly session: Session;
  readonly up: readonly Up[];
  readonly title: string;
  /** A link to the bench stands beside the way up, where there is something to sew. */
  readonly bench?: boolean;
}) {
  const { session, up, title, bench = false } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
  }, []);
  useLayoutEffect(() => {
    document.title = `${title} · Slipbaste`;
    return () => {
      document.title = 'Slipbaste';
    };
  }, [title]);
  const steps = session.running.value?.sequence.length ?? 0;
  return (
    <>
      <nav class="choice" aria-label="Where to go">
        {up.map(({ say, href }) => (
          <a key={href} class="plain" href={href}>
            {say}
          </a>
        ))}
        {bench && steps > 0 && (
          <a class="plain" data-part="to-bench" href={writeHash({ screen: 'bench', outfit: session.id })}>
            To the bench
          </a>
        )}
      </nav>
      <h1 ref={heading} tabIndex={-1}>
        {title}
      </h1>
      <HouseTrouble />
      {session.unkept.value !== undefined && (
        <p class="notice" role="alert">
          <span>Not kept yet: {session.unkept.value}</span>
          <button type="button" class="plain" onClick={session.retry}>
            Try again
          </button>
        </p>
      )}
    </>
  );
}

/** In place of a page: the description cannot be read, or what the address names is not in it. */
export function NotThere({ session, what }: { readonly session: Session; readonly what: string }) {
  const known = session.outfit.value !== undefined;
  return (
    <main class="page" data-part="not-there">
      <nav class="choice" aria-label="Where to go">
        <a class="plain" href={known ? hashOf(session) : '#/'}>
          {session.outfit.value?.name ?? 'Outfits'}
        </a>
      </nav>
      {known ? <h1>{what}</h1> : <Stuck session={session} />}
      <UndoBar session={session} />
    </main>
  );
}
