import { useSignal } from '@preact/signals';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import { askedFirst, type Fault, type Field } from '../../fields/fields.ts';
import { bad, type Result } from '../../length/result.ts';
import type { Marking } from '../../length/writing.ts';
import type { Reckoned, Reckoning } from '../../reckon/reckoning.ts';
import { SheetDrawing } from '../../ui/sheet-drawing.tsx';
import { HouseNotice, HouseTrouble } from '../house.tsx';
import { writeHash } from '../route.ts';
import { Actions } from './actions.tsx';
import {
  cleared,
  type Kept,
  keepEntries,
  noteUse,
  recallEntries,
  standing,
  takenBack,
  turned,
  type Written,
} from './entries.ts';
import { FieldBox } from './field.tsx';
import { MainFigure, OtherFigures } from './figures.tsx';
import { watchSight } from './in-sight.ts';
import { foldedWords, MoreFields } from './more-fields.tsx';
import { ruleInUse, takeRule } from './rule.ts';
import { Strips } from './strip.tsx';
import { writeFigure } from './words.ts';

/** Works it out; a slip of the program is said at the first field, so that the fields never vanish. */
function reckon(reckoning: Reckoning, { entries, unit }: Written): Result<Reckoned, readonly Fault[]> {
  try {
    return reckoning.reckon(entries, unit);
  } catch {
    const field = Object.keys(reckoning.fields)[0] ?? '';
    return bad([{ field, say: 'These figures cannot be reckoned together; try smaller ones.' }]);
  }
}

/** Words for the ear, said when the typing rests. */
function useSaid(words: string): string {
  const said = useSignal('');
  const first = useRef(true);
  useEffect(() => {
    if (first.current) {
      first.current = false;
      return undefined;
    }
    const later = setTimeout(() => {
      said.value = words;
    }, 900);
    return () => clearTimeout(later);
  }, [words]);
  return said.value;
}

/** One reckoning: its fields, and below them what they come to, worked out at every touch of a key. */
export function OneReckoning({ reckoning }: { readonly reckoning: Reckoning }) {
  const { id, name, fields } = reckoning;
  const marking = ruleInUse();
  const { unit } = marking;
  const book = useSignal<Kept>(useMemo(() => recallEntries(id, unit, fields), []));
  const heading = useRef<HTMLHeadingElement>(null);
  const good = useRef<Reckoned | undefined>(undefined);
  const kept = useMemo<Kept>(
    () => ({ ...book.value, ...turned(book.value, fields, unit) }),
    [book.value, unit],
  );
  const result = useMemo(() => reckon(reckoning, kept), [kept.entries, unit]);
  if (result.ok) good.current = result.value;
  const reckoned = good.current;
  const faults = new Map(result.ok ? [] : result.error.map(({ field, say }) => [field, say]));
  const stale = !result.ok;
  const first = reckoned?.figures[0];
  const said = useSaid(
    result.ok
      ? first
        ? `${first.name}: ${writeFigure(first, marking)}`
        : ''
      : result.error.map(({ field, say }) => `${fields[field]?.label ?? ''}: ${say}`).join(' '),
  );
  const all = Object.entries(fields);
  const asked = all.filter(([, field]) => askedFirst(field));
  const folded = all.filter(([, field]) => !askedFirst(field));
  const sharesBody = all.some(([, field]) => field.shared !== undefined);
  useLayoutEffect(() => {
    document.title = `${name} · Slipbaste`;
    noteUse(id);
    // What a card laid out stands from now on in every reckoning that shares it.
    if (sharesBody) keepEntries(id, book.peek(), fields);
    const unwatch = watchSight();
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
    return () => {
      unwatch();
      document.title = 'Slipbaste';
    };
  }, []);
  useLayoutEffect(() => {
    // The words that the result is old take room above the fields; the one in hand is not to slip off below.
    const inHand = document.activeElement;
    if (inHand?.matches('.entry')) inHand.scrollIntoView?.({ block: 'nearest' });
  }, [stale]);
  const put = (next: Kept): void => {
    book.value = next;
    keepEntries(id, next, fields);
  };
  const box = ([key, field]: readonly [string, Field]) => (
    <FieldBox
      key={key}
      name={key}
      field={field}
      text={standing(kept, key, field)}
      fault={faults.get(key)}
      marking={marking}
      onText={(text) => put({ ...kept, entries: { ...kept.entries, [key]: text } })}
    />
  );
  const touched = Object.keys(kept.entries).length > 0;
  return (
    <main class="page reckoning" data-part="reckoning" data-reckoning={id}>
      <nav class="choice" aria-label="Where to go">
        <a class="plain away" href="#/reckoner">
          Reckoner
        </a>
        <RuleSwitch marking={marking} />
      </nav>
      <header>
        <h1 ref={heading} tabIndex={-1}>
          {name}
        </h1>
        <p>{reckoning.tells}</p>
      </header>
      <HouseTrouble />
      <p class="unseen" role="status">
        {said}
      </p>
      <div class="work">
        <MainFigure figure={first} stale={stale} marking={marking} />
        <form class="fields" aria-label="What you know" onSubmit={(event) => event.preventDefault()}>
          {sharesBody && (
            <p class="means field-wide">
              Measures of the body and the stretch of its cloth stand in every leg, once typed in one.
            </p>
          )}
          {asked.map(box)}
          {folded.length > 0 && (
            <MoreFields words={foldedWords(folded, kept)} atFault={folded.some(([key]) => faults.has(key))}>
              {folded.map(box)}
            </MoreFields>
          )}
          {(touched || kept.before) && (
            <div class="choice again">
              {touched && (
                <button
                  type="button"
                  class="plain"
                  data-part="start-again"
                  onClick={() => put(cleared(kept))}
                >
                  Back to the starting values
                </button>
              )}
              {kept.before && (
                <button
                  type="button"
                  class="plain"
                  data-part="take-back"
                  onClick={() => put(takenBack(kept))}
                >
                  Undo: take back what I had written
                </button>
              )}
            </div>
          )}
        </form>
        <OtherFigures figures={reckoned?.figures.slice(1) ?? []} stale={stale} marking={marking} />
      </div>
      {reckoned && (
        <Outcome reckoning={reckoning} reckoned={reckoned} written={kept} stale={stale} marking={marking} />
      )}
      <HouseNotice />
    </main>
  );
}

function RuleSwitch({ marking }: { readonly marking: Marking }) {
  return (
    <fieldset class="one-of rule" aria-label="Rule">
      <div class="choice">
        {(['in', 'mm'] as const).map((unit) => (
          <button
            key={unit}
            type="button"
            class="plain"
            aria-pressed={marking.unit === unit}
            onClick={() => takeRule(unit)}
          >
            {unit === 'in' ? 'Inches' : 'Millimetres'}
          </button>
        ))}
      </div>
    </fieldset>
  );
}

/** Everything below the figures: marks, drawing, what can be done with it, and how far to trust it. */
function Outcome(props: {
  readonly reckoning: Reckoning;
  readonly reckoned: Reckoned;
  readonly written: Written;
  readonly stale: boolean;
  readonly marking: Marking;
}) {
  const { reckoned, stale, marking } = props;
  // The drawing is the heaviest part; it is made anew only for another result.
  const drawing = useMemo(
    () => reckoned.drawing.drawn.length > 0 && <SheetDrawing sheet={reckoned.drawing} marking={marking} />,
    [reckoned, marking.unit],
  );
  const sources = [...new Set(reckoned.sources.map(writeSource))];
  return (
    <div class={stale ? 'outcome stale' : 'outcome'}>
      <Strips strips={reckoned.strips} marking={marking} />
      {drawing && (
        <section>
          <h2>Drawn</h2>
          {drawing}
        </section>
      )}
      {stale ? <p class="quiet">Copying and printing wait for a good result.</p> : <Actions {...props} />}
      {reckoned.advice.length > 0 && (
        <section>
          <h2>Good to know</h2>
          <ul class="told">
            {reckoned.advice.map(({ say, source }) => (
              <li key={say}>
                <p>{say}</p>
                <cite>{writeSource(source)}</cite>
              </li>
            ))}
          </ul>
        </section>
      )}
      {reckoned.assumed.length > 0 && (
        <section>
          <h2>Assumed</h2>
          <ul class="told">
            {reckoned.assumed.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </section>
      )}
      <section>
        <h2>Where this comes from</h2>
        <ul class="told">
          {sources.map((line) => (
            <li key={line}>
              <cite>{line}</cite>
            </li>
          ))}
        </ul>
        <a class="plain" href={writeHash({ screen: 'sources' })}>
          Where all figures come from
        </a>
      </section>
    </div>
  );
}
