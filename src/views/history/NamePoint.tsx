import { useId, useState } from 'react';
import type { HistoryRow } from '../../session/library.ts';
import { tooLong } from '../fields/TextField.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';

/** As long as a point's name may be. */
const MOST = 80;

interface NamePointProps {
  readonly row: HistoryRow;
  readonly onName: (name: string) => void;
}

/** A button that gives a point a name, so that it stays. */
export function NamePoint({ row, onName }: NamePointProps) {
  const [asking, setAsking] = useState(false);
  return (
    <>
      <button type="button" onClick={() => setAsking(true)}>
        <Icon name="pen" /> {row.name === '' ? 'Name this point' : 'Rename this point'}
      </button>
      {asking && (
        <NameDialog
          name={row.name}
          onClose={() => setAsking(false)}
          onName={(name) => {
            setAsking(false);
            onName(name);
          }}
        />
      )}
    </>
  );
}

interface NameDialogProps {
  readonly name: string;
  readonly onName: (name: string) => void;
  readonly onClose: () => void;
}

function NameDialog({ name, onName, onClose }: NameDialogProps) {
  const id = useId();
  const [text, setText] = useState(name);
  const wanted = text.trim();
  const isTooLong = wanted.length > MOST;
  return (
    <Dialog title="Name this point" onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          if (!isTooLong) onName(wanted);
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
            placeholder="Before the show"
            onChange={(event) => setText(event.target.value)}
            aria-invalid={isTooLong || undefined}
            aria-describedby={isTooLong ? `${id}-problem` : undefined}
          />
          {isTooLong && (
            <p className="field-problem" id={`${id}-problem`} role="alert">
              {tooLong(wanted, MOST)}
            </p>
          )}
          <p className="small soft">
            A point with a name is never thinned out. Without one it is automatic again.
          </p>
        </div>
        <div className="dialog-foot">
          <button type="button" onClick={onClose}>
            Cancel
          </button>
          <button type="submit" className="primary">
            Keep the name
          </button>
        </div>
      </form>
    </Dialog>
  );
}
