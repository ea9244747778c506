import { Sign } from '../../ui/signs.tsx';
import type { Session } from '../session.ts';
import { lastChange, problem, undoLast } from './change.ts';

/** At the foot of each page: why the last change was refused, and one touch that takes back the last one made. */
export function UndoBar({ session }: { readonly session: Session }) {
  const last = lastChange(session);
  return (
    <div class="undo-bar" data-part="undo-bar">
      <p class="fault" role="alert" data-part="problem" hidden={problem.value === ''}>
        <Sign name="caution" />
        <span>{problem.value}</span>
      </p>
      {last !== undefined && (
        <button type="button" class="plain" data-part="undo" onClick={() => undoLast(session)}>
          <Sign name="undo" />
          <span>
            Undo: <b>{last}</b>
          </span>
        </button>
      )}
    </div>
  );
}
