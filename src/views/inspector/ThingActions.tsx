import { Icon } from '../parts/Icon.tsx';

interface ThingActionsProps {
  readonly name: string;
  readonly onDuplicate?: () => void;
  readonly onMirror?: () => void;
  readonly onDelete: () => void;
}

/** What can be done with a thing as a whole. Each is undone like everything else. */
export function ThingActions({ name, onDuplicate, onMirror, onDelete }: ThingActionsProps) {
  return (
    <div className="actions">
      {onDuplicate && (
        <button type="button" onClick={onDuplicate}>
          <Icon name="copy" /> Duplicate<span className="spoken"> {name}</span>
        </button>
      )}
      {onMirror && (
        <button type="button" onClick={onMirror}>
          <Icon name="mirror" /> Mirror<span className="spoken"> {name} to the other side</span>
        </button>
      )}
      <button type="button" className="danger" onClick={onDelete}>
        <Icon name="bin" /> Delete<span className="spoken"> {name}</span>
      </button>
    </div>
  );
}
