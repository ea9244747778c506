import type { Readout } from '../../order/card-types.ts';
import type { Act } from '../../store/deed.ts';
import { Sign } from '../../ui/signs.tsx';

/** Left and right, or whatever else makes up a pair or a short list. */
export function Ticks(props: {
  readonly step: string;
  readonly readout: Extract<Readout, { kind: 'ticks' }>;
  readonly items: ReadonlySet<string>;
  readonly act: (...acts: readonly Act[]) => void;
}) {
  const { step, readout, items, act } = props;
  const next = readout.items.find(({ item }) => !items.has(item));
  return (
    <ul class="readout ticks">
      {readout.items.map(({ item, name }) => {
        const ticked = items.has(item);
        return (
          <li key={item}>
            <button
              type="button"
              class={item === next?.item ? 'tick tick-next' : 'tick'}
              aria-pressed={ticked}
              disabled={ticked}
              onClick={() => act({ kind: 'item-done', step, item })}
            >
              <span class="tick-box">{ticked && <Sign name="done" />}</span>
              <span>{name}</span>
              {item === next?.item && <span class="unseen">, next</span>}
            </button>
          </li>
        );
      })}
    </ul>
  );
}
