import type { Readout } from '../../order/card-types.ts';
import type { Act } from '../../store/deed.ts';
import { Sign } from '../../ui/signs.tsx';

/** A pair, or a few short names, stand large side by side; anything longer is a list under a figure. */
const isShort = (items: readonly { readonly name: string }[]): boolean =>
  items.length <= 4 && items.every(({ name }) => name.length <= 16);

/** Left and right, or whatever else makes up a pair or a list. */
export function Ticks(props: {
  readonly step: string;
  readonly readout: Extract<Readout, { kind: 'ticks' }>;
  readonly items: ReadonlySet<string>;
  readonly act: (...acts: readonly Act[]) => void;
}) {
  const { step, readout, items, act } = props;
  const next = readout.items.find(({ item }) => !items.has(item));
  const short = isShort(readout.items);
  const ticked = readout.items.filter(({ item }) => items.has(item)).length;
  return (
    <div class="readout">
      {!short && (
        <div class="mark-now">
          <span class="figure" data-part="figure">
            {ticked}
          </span>
          <p class="mark-words">
            <b>of {readout.items.length} done</b>
          </p>
        </div>
      )}
      <ul class={short ? 'ticks' : 'ticks tick-list'}>
        {readout.items.map(({ item, name }) => (
          <li key={item}>
            <button
              type="button"
              class={item === next?.item ? 'tick tick-next' : 'tick'}
              aria-pressed={items.has(item)}
              disabled={items.has(item)}
              onClick={() => act({ kind: 'item-done', step, item })}
            >
              <span class="tick-box">{items.has(item) && <Sign name="done" />}</span>
              <span>{name}</span>
              {item === next?.item && <span class="unseen">, next</span>}
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}
