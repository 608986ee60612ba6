import { memo } from 'react';
import { Icon } from '../parts/Icon.tsx';
import { useStable } from '../parts/useStable.ts';

interface ThingActionsProps {
  readonly name: string;
  readonly onDuplicate?: () => void;
  readonly onMirror?: () => void;
  readonly onDelete: () => void;
}

/** What can be done with a thing as a whole. Each is undone like everything else. */
export function ThingActions({ name, onDuplicate, onMirror, onDelete }: ThingActionsProps) {
  const duplicate = useStable(() => onDuplicate?.());
  const mirror = useStable(() => onMirror?.());
  const remove = useStable(onDelete);
  return (
    <Actions
      name={name}
      {...(onDuplicate && { onDuplicate: duplicate })}
      {...(onMirror && { onMirror: mirror })}
      onDelete={remove}
    />
  );
}

/** Left alone in a drag. */
const Actions = memo(function Actions(props: ThingActionsProps) {
  const { name, onDuplicate, onMirror, onDelete } = props;
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
});
