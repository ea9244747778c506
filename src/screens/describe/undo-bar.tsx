import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { Sign } from '../../ui/signs.tsx';
import type { Session } from '../session.ts';
import { lastChange, problem, undoLast } from './change.ts';
import { focusOn } from './focus-on.ts';

/** At the foot of each page: why the last change was refused, and one touch that takes back the last one made. */
export function UndoBar(props: {
  readonly session: Session;
  /** What else is wanted often, beside it. */
  readonly children?: ComponentChildren;
}) {
  const { session, children } = props;
  const last = lastChange(session);
  const pressed = useRef(false);
  // Nothing else to take back: the button is gone.
  useEffect(() => {
    if (pressed.current) focusOn();
    pressed.current = false;
  }, [last]);
  return (
    <div class="undo-bar" data-part="undo-bar">
      <p class="fault" role="alert" data-part="problem" hidden={problem.value === ''}>
        <Sign name="caution" />
        <span>{problem.value}</span>
      </p>
      {children}
      {last !== undefined && (
        <button
          type="button"
          class="plain"
          data-part="undo"
          onClick={() => {
            pressed.current = true;
            undoLast(session);
          }}
        >
          <Sign name="undo" />
          <span>
            Undo: <b>{last}</b>
          </span>
        </button>
      )}
    </div>
  );
}
