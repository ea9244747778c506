/**
 * Where figures come from: every figure of the arithmetic, every rule of the order and all that is seen at a try-on, each
 * with its meaning and its source.
 *
 * What others may hold on to: `main[data-part="sources"]`; `input[type="search"]`; buttons with `data-kind`;
 * `[data-part="found"]`; `li[data-figure]`, `li[data-rule]` and `li[data-seen]`, in each `cite[data-kind]`.
 */
import { useSignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';
import { type Source, writeSource } from '../../cloth/source.ts';
import { CHECKS, ENTRIES } from '../../fitting/entries/all.ts';
import { units } from '../choices.ts';
import { HouseNotice, HouseTrouble } from '../house.tsx';
import type { Figure, Listing, RuleShown, SeenShown, Value } from './figures.ts';
import { byTechnique, countKinds, find, kindName, kinds, type Wanted } from './find.ts';
import figures from './gather.ts?figures';
import { seenShown } from './seen.ts';
import { writeValue } from './write-value.ts';
import './sources.css';

const list: Listing = { ...figures, seen: seenShown(ENTRIES, CHECKS) };
const counts = countKinds(list);

const entriesIn = (lists: readonly (readonly unknown[])[]): number =>
  lists.reduce((sum, one) => sum + one.length, 0);

/** The page; it needs no outfit. */
export default function Sources() {
  const words = useSignal('');
  const kind = useSignal<Wanted['kind']>('all');
  const rule = units.value === 'mm' ? 'mm' : 'in';
  const found = useMemo(
    () => find(list, { words: words.value, kind: kind.value }),
    [words.value, kind.value],
  );
  const shown = countKinds(found).all;
  // A short page to look over; what was asked for lies open.
  const asked = kind.value !== 'all' || words.value.trim() !== '';
  return (
    <main class="page" data-part="sources">
      <nav class="choice" aria-label="Where to go">
        <a class="plain" href="#/">
          Outfits
        </a>
      </nav>
      <h1>Where figures come from</h1>
      <HouseTrouble />
      <p>A sample on your own cloth goes above every figure and rule here.</p>
      <label class="search-for">
        Search
        <input
          type="search"
          class="field"
          value={words.value}
          placeholder="tuck, thread, 1916"
          onInput={(event) => {
            words.value = event.currentTarget.value;
          }}
        />
      </label>
      <fieldset class="one-of" aria-label="Kind of source">
        <div class="choice kinds">
          {(['all', ...kinds] as const).map((one) => (
            <button
              key={one}
              type="button"
              class="plain"
              data-kind={one}
              aria-pressed={kind.value === one}
              onClick={() => {
                kind.value = one;
              }}
            >
              {one === 'all' ? 'All' : kindName[one]}: {counts[one]}
            </button>
          ))}
        </div>
      </fieldset>
      <p role="status" data-part="found">
        {shown === 0
          ? 'Nothing here has all these words. Try fewer of them, or all kinds of source.'
          : `${shown} of ${counts.all} shown.`}
      </p>
      {[...byTechnique(found.figures)].map(([technique, figures]) => (
        <details key={technique} open={asked}>
          <summary>
            <h2>{technique}</h2>
            <span class="quiet">{entriesIn(figures.map(({ values }) => values))}</span>
          </summary>
          <ul class="figures">
            {figures.map((figure) => (
              <FigureLine key={figure.id} figure={figure} rule={rule} />
            ))}
          </ul>
        </details>
      ))}
      {found.rules.length > 0 && (
        <details open={asked}>
          <summary>
            <h2>Rules of the order</h2>
            <span class="quiet">{entriesIn(found.rules.map(({ reasons }) => reasons))}</span>
          </summary>
          <p class="quiet">With a reason that each gave for one of the demonstration outfits.</p>
          <ul class="figures">
            {found.rules.map((one) => (
              <RuleLine key={one.name} rule={one} />
            ))}
          </ul>
        </details>
      )}
      {found.seen.length > 0 && (
        <details open={asked} data-part="seen">
          <summary>
            <h2>What is seen at a try-on</h2>
            <span class="quiet">{entriesIn(found.seen.map(({ lines }) => lines))}</span>
          </summary>
          <p class="quiet">
            With what it comes from, likeliest first, and what cures it. Trust a test on the body above all.
          </p>
          <ul class="figures">
            {found.seen.map((one) => (
              <SeenLine key={one.id} seen={one} />
            ))}
          </ul>
        </details>
      )}
      <section>
        <h2>How far to trust them</h2>
        <p>
          This page is read from the program itself: every figure that the reckoning goes by, every rule of
          the order and all that a try-on asks. A figure from a book or a survey names it; “seen as an
          excerpt” means that the page itself was not at hand. What is common practice or from memory is only
          where to begin.
        </p>
      </section>
      <HouseNotice />
    </main>
  );
}

function Cite({ source }: { readonly source: Source }) {
  return (
    <cite class="from" data-kind={source.kind}>
      {source.kind === 'published' && <b>{kindName.published}: </b>}
      {source.kind === 'published' ? writeSource(source) : <b>{sentence(writeSource(source))}</b>}
    </cite>
  );
}

const sentence = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);

function Amount(props: { readonly value: Value; readonly unit: string; readonly rule: 'in' | 'mm' }) {
  const { figure, other } = writeValue(props.value.is, props.unit, props.rule);
  if (figure === '') return null;
  return (
    <>
      <b class="amount">{figure}</b>
      {other !== '' && <span class="quiet"> ({other})</span>}
    </>
  );
}

function FigureLine({ figure, rule }: { readonly figure: Figure; readonly rule: 'in' | 'mm' }) {
  const { values, unit, meaning } = figure;
  const [first] = values;
  const oneSource = values.every(
    ({ source }) => writeSource(source) === (first && writeSource(first.source)),
  );
  return (
    <li data-figure={figure.id}>
      <p>{meaning}</p>
      {values.map((value) => (
        <div key={value.of ?? ''} class="value">
          {value.is.length > 0 && (
            <p>
              {value.of !== undefined && <span>{sentence(value.of)}: </span>}
              <Amount value={value} unit={unit} rule={rule} />
            </p>
          )}
          {!oneSource && <Cite source={value.source} />}
        </div>
      ))}
      {oneSource && first && <Cite source={first.source} />}
    </li>
  );
}

function RuleLine({ rule }: { readonly rule: RuleShown }) {
  return (
    <li data-rule={rule.name}>
      <h3>{sentence(rule.name)}</h3>
      {rule.meaning !== '' && <p>{rule.meaning}</p>}
      {rule.reasons.map(({ because, source }) => (
        <div key={writeSource(source)} class="value">
          {because !== undefined && <p class="reason">“{because}”</p>}
          <Cite source={source} />
        </div>
      ))}
    </li>
  );
}

function SeenLine({ seen }: { readonly seen: SeenShown }) {
  return (
    <li data-seen={seen.id}>
      <h3>{seen.name}</h3>
      {seen.place !== '' && <p class="quiet">{sentence(seen.place)}</p>}
      {seen.lines.map(({ words, cure, source }) => (
        <div key={words ?? ''} class="value">
          {words !== undefined && <p>{words}</p>}
          {cure !== undefined && <p class="reason">{cure}</p>}
          <Cite source={source} />
        </div>
      ))}
    </li>
  );
}
