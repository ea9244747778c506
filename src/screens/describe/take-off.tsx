import type { Fallen } from '../../outfit/changing/fallen.ts';
import { Sheet } from '../../ui/sheet.tsx';
import { fallenWords } from './words.ts';

/** Shown before something is taken out: what goes with it. */
export function TakeOffSheet(props: {
  readonly name: string;
  readonly also: readonly Fallen[];
  readonly onTake: () => void;
  readonly onClose: () => void;
}) {
  const { name, also, onTake, onClose } = props;
  return (
    <Sheet title={`Take off ${name}?`} onClose={onClose}>
      <div class="asks" data-part="take-off">
        {also.length === 0 ? (
          <p>Nothing else hangs on it.</p>
        ) : (
          <>
            <p>This cannot be without it and goes too:</p>
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
            Take it off
          </button>
          <button type="button" class="plain" onClick={onClose}>
            Leave it on
          </button>
        </div>
      </div>
    </Sheet>
  );
}
