import { redo, undo, useSession } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';

/** Undo and redo; their names say what they would undo. */
export function UndoButtons() {
  const last = useSession((state) => state.history.past.at(-1)?.label);
  const next = useSession((state) => state.history.future[0]?.label);
  return (
    <div className="bar-group">
      <button
        type="button"
        className="square"
        disabled={last === undefined}
        onClick={undo}
        aria-label={last === undefined ? 'Undo' : `Undo: ${last}`}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        className="square"
        disabled={next === undefined}
        onClick={redo}
        aria-label={next === undefined ? 'Redo' : `Redo: ${next}`}
      >
        <Icon name="redo" />
      </button>
    </div>
  );
}
