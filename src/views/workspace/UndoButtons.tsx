import { redo, undo, useSession } from '../../session/session.ts';
import { Icon } from '../parts/Icon.tsx';

/** Undo and redo; their names say what they would undo. With nothing left they stay where the focus can be: a key that undoes all is not thrown out. */
export function UndoButtons() {
  const last = useSession((state) => state.history.past.at(-1)?.label);
  const next = useSession((state) => state.history.future[0]?.label);
  return (
    <div className="bar-group">
      <button
        type="button"
        className="square"
        aria-disabled={last === undefined}
        onClick={undo}
        aria-label={last === undefined ? 'Undo' : `Undo: ${last}`}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        className="square"
        aria-disabled={next === undefined}
        onClick={redo}
        aria-label={next === undefined ? 'Redo' : `Redo: ${next}`}
      >
        <Icon name="redo" />
      </button>
    </div>
  );
}
