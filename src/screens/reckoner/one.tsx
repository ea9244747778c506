import { useSignal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useMemo, useRef } from 'preact/hooks';
import { writeSource } from '../../cloth/source.ts';
import { bad, type Result } from '../../length/result.ts';
import type { Marking } from '../../length/writing.ts';
import type { Fault, Field, Reckoned, Reckoning } from '../../reckon/reckoning.ts';
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
import { FieldBox, mayStayEmpty } from './field.tsx';
import { MainFigure, OtherFigures } from './figures.tsx';
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
  const book = useSignal<Kept>(recallEntries(id, unit));
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
  useLayoutEffect(() => {
    document.title = `${name} · Slipbaste`;
    noteUse(id);
    scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
    return () => {
      document.title = 'Slipbaste';
    };
  }, []);
  const put = (next: Kept): void => {
    book.value = next;
    keepEntries(id, next);
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
  const all = Object.entries(fields);
  const spare = all.filter(([, field]) => mayStayEmpty(field));
  const asked = all.filter(([, field]) => !mayStayEmpty(field));
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
          {asked.map(box)}
          {spare.length > 0 && (
            <MoreFields
              count={spare.length}
              wanted={spare.some(([key, field]) => faults.has(key) || standing(kept, key, field) !== '')}
            >
              {spare.map(box)}
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

/** Fields that may stay empty, out of the way until they are wanted. Once open they close only by the maker's hand. */
function MoreFields(props: {
  readonly count: number;
  readonly wanted: boolean;
  readonly children: ComponentChildren;
}) {
  const open = useSignal(props.wanted);
  if (props.wanted && !open.peek()) open.value = true;
  return (
    <details
      class="more-fields"
      open={open.value}
      onToggle={(event) => {
        open.value = event.currentTarget.open;
      }}
    >
      <summary>
        {props.count === 1 ? 'One more field' : `${props.count} more fields`}, which may stay empty
      </summary>
      <div class="fields">{props.children}</div>
    </details>
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
