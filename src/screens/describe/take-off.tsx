import type { Fallen } from '../../outfit/changing/fallen.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { fallenWords } from './words.ts';

/** Shown before something is taken out: what goes with it. */
export function TakeOffSheet(props: {
  readonly name: string;
  /** Units are taken off a garment, its parts are taken out of it. */
  readonly way?: 'off' | 'out';
  readonly also: readonly Fallen[];
  readonly onTake: () => void;
  readonly onClose: () => void;
}) {
  const { name, way = 'off', also, onTake, onClose } = props;
  return (
    <Sheet title={`Take ${way} ${name}?`} onClose={onClose}>
      <div class="asks" data-part="take-off">
        {also.length === 0 ? (
          <p>Nothing else hangs on it.</p>
        ) : (
          <>
            <p>
              {also.length === 1 ? 'This cannot be without it and goes' : 'These cannot be without it and go'}{' '}
              too:
            </p>
            <ul class="listed">
              {also.map((one) => (
                <li key={one.kind + one.id}>{fallenWords(one)}</li>
              ))}
            </ul>
          </>
        )}
        <p class="quiet">One touch of undo brings all of it back.</p>
        <div class="choice">
          <button
            type="button"
            class="main"
            onClick={() => {
              onClose();
              onTake();
            }}
          >
            Take it {way}
          </button>
          <button type="button" class="plain" onClick={onClose}>
            Leave it {way === 'off' ? 'on' : 'in'}
          </button>
        </div>
      </div>
    </Sheet>
  );
}
