import { useId, useState } from 'react';
import { tooLong } from '../fields/TextField.tsx';
import { Dialog } from '../parts/Dialog.tsx';

/** As long as a name in a layout may be. */
const MOST = 80;

interface RenameDialogProps {
  readonly name: string;
  readonly onRename: (name: string) => void;
  readonly onClose: () => void;
}

/** Asks for a new name of a layout. */
export function RenameDialog({ name, onRename, onClose }: RenameDialogProps) {
  const id = useId();
  const [text, setText] = useState(name);
  const [problem, setProblem] = useState('');
  const problemOf = (name: string): string => {
    if (name === '') return `A name is needed: 1 to ${MOST} characters.`;
    return name.length > MOST ? tooLong(name, MOST) : '';
  };
  return (
    <Dialog title="Rename the layout" onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          const found = problemOf(text.trim());
          setProblem(found);
          if (found === '') onRename(text.trim());
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
            onFocus={(event) => event.target.select()}
            onChange={(event) => {
              setText(event.target.value);
              const name = event.target.value.trim();
              setProblem(name.length > MOST ? problemOf(name) : '');
            }}
            aria-invalid={problem !== '' || undefined}
            aria-describedby={problem ? `${id}-problem` : undefined}
          />
          {problem && (
            <p className="field-problem" id={`${id}-problem`} role="alert">
              {problem}
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
