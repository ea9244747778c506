import type { ComponentChildren } from 'preact';
import { Group } from './asked-group.tsx';
import type { Asks, RowsAsk } from './asks.ts';
import type { Written } from './drafts.ts';
import { focusOn } from './focus-on.ts';
import type { InHand } from './folded-words.ts';
import { at, readRows } from './stands.ts';
import { begun } from './words.ts';

/** What is asked of one of them; words alone are called after their place. */
const rowOf = (ask: RowsAsk, i: number): Asks =>
  ask.plain && ask.row.words
    ? { words: { ...ask.row.words, label: `${begun(ask.each)} ${i + 1}` } }
    : ask.row;

/** Things of one kind in an order: added, moved, taken out. `fields` draws what is asked of one of them. */
export function Rows(props: {
  readonly name: string;
  readonly ask: RowsAsk;
  readonly text: string;
  readonly fault: string | undefined;
  readonly form: InHand;
  readonly fields: (asks: Asks, form: InHand) => ComponentChildren;
}) {
  const { name, ask, text, fault, form, fields } = props;
  const rows = readRows(text);
  const was = at(form.base, name);
  const put = (now: readonly Written[]): void => form.write(name, JSON.stringify(now));
  const move = (i: number, by: number): void => {
    const [one, other] = [rows[i], rows[i + by]];
    if (one && other) put(rows.with(i, other).with(i + by, one));
  };
  const inner = (row: Written, i: number): InHand => {
    const old: unknown = Array.isArray(was) && row['#'] !== undefined ? was[Number(row['#'])] : undefined;
    const start = `${name}.${i}.`;
    return {
      here: form.here,
      written: row,
      base: ask.plain && old !== undefined ? { words: old } : old,
      faults: new Map(
        [...form.faults].flatMap(([field, say]) =>
          field.startsWith(start) ? [[field.slice(start.length), say] as const] : [],
        ),
      ),
      write: (field, now) => put(rows.with(i, { ...row, [field]: now })),
    };
  };
  return (
    <Group name={name} ask={ask} fault={fault}>
      <ol class="rows">
        {rows.map((row, i) => (
          // A row has no name of its own: its place is what it is known by.
          <li key={i} class="row" data-row={i}>
            {!ask.plain && (
              <p class="row-name">
                {begun(ask.each)} {i + 1}
              </p>
            )}
            <div class="fields">{fields(rowOf(ask, i), inner(row, i))}</div>
            <div class="choice">
              <button type="button" class="plain" aria-disabled={i === 0} onClick={() => move(i, -1)}>
                Earlier
              </button>
              <button
                type="button"
                class="plain"
                aria-disabled={i === rows.length - 1}
                onClick={() => move(i, 1)}
              >
                Later
              </button>
              <button
                type="button"
                class="plain"
                onClick={() => {
                  put(rows.toSpliced(i, 1));
                  focusOn(`[data-part="add-${name}"]`);
                }}
              >
                Take out
              </button>
            </div>
          </li>
        ))}
      </ol>
      <button type="button" class="plain" data-part={`add-${name}`} onClick={() => put([...rows, {}])}>
        Add a {ask.each}
      </button>
    </Group>
  );
}
