import { useEffect, useRef } from 'preact/hooks';
import type { BroughtIn } from './bring-in.ts';

/** What the page answers: what came of a file, and every mistake in it with its place. */
export function Answer(props: {
  readonly found: BroughtIn | undefined;
  readonly busy: boolean;
  readonly onTake: (take: () => Promise<BroughtIn>) => void;
}) {
  const { found, busy, onTake } = props;
  const wrong = found && !found.ok ? found.wrong : undefined;
  const take = found?.ok ? found.take : undefined;
  const words = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The file was chosen further down.
    if (wrong ?? take) words.current?.scrollIntoView({ block: 'start' });
  }, [found]);
  return (
    <div ref={words} class="answer">
      <p role="status">{found?.say}</p>
      {take && (
        <button type="button" class="main" disabled={busy} onClick={() => onTake(take)}>
          Take what the file says
        </button>
      )}
      {wrong && wrong.length > 0 && (
        <ol class="wrongs" data-part="wrongs">
          {wrong.map(({ line, column, where, say }) => (
            <li key={`${line}:${column}:${where}:${say}`}>
              <b>
                Line {line}, column {column}
              </b>
              {where !== '' && <span class="quiet">{where}</span>}
              <span>{say}</span>
            </li>
          ))}
        </ol>
      )}
    </div>
  );
}
