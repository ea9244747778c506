import type { ComponentChild } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { Wrong } from '../../outfit/reading-file.ts';
import { writeHash } from '../route.ts';
import type { BroughtIn } from './bring-in.ts';

/** What the page answers: what came of a file, and every mistake in it with its place. */
export function Answer(props: {
  readonly found: BroughtIn | undefined;
  /** Name of the file; empty where none was chosen. */
  readonly file: string;
  readonly busy: boolean;
  readonly onTake: (take: () => Promise<BroughtIn>) => void;
  /** Another file is to be chosen, or the same once it is mended. */
  readonly onAgain: () => void;
}) {
  const { found, file, busy, onTake, onAgain } = props;
  const wrong = found && !found.ok ? found.wrong : undefined;
  const { take, ring } = found?.ok ? found : {};
  const words = useRef<HTMLDivElement>(null);
  useEffect(() => {
    // The file was chosen further down.
    if (wrong ?? take ?? ring) words.current?.scrollIntoView({ block: 'start' });
  }, [found]);
  const again = (
    <button type="button" class="plain" disabled={busy} onClick={onAgain}>
      Choose the mended file
    </button>
  );
  return (
    <div ref={words} class="answer">
      {wrong && file !== '' && <h2 class="file-name">{file}</h2>}
      <p role="status">{found?.say}</p>
      {take && (
        <button type="button" class="main" disabled={busy} onClick={() => onTake(take)}>
          Take what the file says
        </button>
      )}
      {found?.ok && ring !== undefined && (
        <>
          <p class="notice" data-part="ring">
            <span>{ring}</span>
          </p>
          <div class="choice">
            <a class="main" href={writeHash({ screen: 'outfit', outfit: found.outfit, at: [] })}>
              Mend it in its description
            </a>
            <a class="plain" href={writeHash({ screen: 'order', outfit: found.outfit })}>
              Why, reason by reason
            </a>
          </div>
        </>
      )}
      {wrong && wrong.length > 0 && (
        <>
          {wrong.length > FEW && again}
          <ol class="wrongs" data-part="wrongs">
            {wrong.map((one) => (
              <OneWrong key={`${one.line}:${one.column}:${one.where}:${one.say}`} wrong={one} />
            ))}
          </ol>
          {again}
        </>
      )}
    </div>
  );
}

/** More than this many are longer than a screen. */
const FEW = 3;

const OneWrong = ({ wrong: { line, column, where, say, cure } }: { readonly wrong: Wrong }) => (
  <li>
    <b>
      Line {line}, column {column}
    </b>
    {where !== '' && <span class="quiet">{where}</span>}
    <span>{written(say)}</span>
    {cure !== '' && <span class="cure">{written(cure)}</span>}
  </li>
);

const begun = (said: string): string => `${said.charAt(0).toUpperCase()}${said.slice(1)}`;

/** A sentence, with what stands in the file set apart. */
const written = (said: string): ComponentChild =>
  begun(/[.?]$/.test(said) ? said : `${said}.`)
    .split('`')
    .map((part, i) => (i % 2 === 0 ? part : <code key={`${i}:${part}`}>{part}</code>));
