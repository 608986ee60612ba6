import { useId, useState } from 'react';
import { Dialog } from '../parts/Dialog.tsx';

interface RenameDialogProps {
  readonly name: string;
  readonly onRename: (name: string) => void;
  readonly onClose: () => void;
}

/** Asks for a new name of a layout. */
export function RenameDialog({ name, onRename, onClose }: RenameDialogProps) {
  const id = useId();
  const [text, setText] = useState(name);
  const [missing, setMissing] = useState(false);
  return (
    <Dialog title="Rename the layout" onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (text.trim() === '') setMissing(true);
          else onRename(text.trim());
        }}
      >
        <div className="field">
          <label className="field-label" htmlFor={id}>
            Name
          </label>
          <input
            id={id}
            className="text-input"
            value={text}
            maxLength={80}
            onFocus={(event) => event.target.select()}
            onChange={(event) => setText(event.target.value)}
            aria-invalid={missing || undefined}
            aria-describedby={missing ? `${id}-problem` : undefined}
          />
          {missing && (
            <p className="field-problem" id={`${id}-problem`} role="alert">
              A name is needed: 1 to 80 characters.
            </p>
          )}
        </div>
        <div className="dialog-foot">
          <button type="button" onClick={onClose}>
            Cancel
          </button>
          <button type="submit" className="primary">
            Rename
          </button>
        </div>
      </form>
    </Dialog>
  );
}
