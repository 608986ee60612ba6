import { useId, useState } from 'react';
import type { HistoryRow } from '../../session/library.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { Icon } from '../parts/Icon.tsx';

interface NamePointProps {
  readonly row: HistoryRow;
  readonly onName: (name: string) => void;
}

/** A button that gives a point a name, so that it stays. */
export function NamePoint({ row, onName }: NamePointProps) {
  const id = useId();
  const [asking, setAsking] = useState(false);
  const [text, setText] = useState('');
  return (
    <>
      <button
        type="button"
        onClick={() => {
          setText(row.name);
          setAsking(true);
        }}
      >
        <Icon name="pen" /> {row.name === '' ? 'Name this point' : 'Rename this point'}
      </button>
      {asking && (
        <Dialog title="Name this point" onClose={() => setAsking(false)}>
          <form
            onSubmit={(event) => {
              event.preventDefault();
              setAsking(false);
              onName(text.trim());
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
                placeholder="Before the show"
                onChange={(event) => setText(event.target.value)}
              />
              <p className="small soft">
                A point with a name is never thinned out. Without one it is automatic again.
              </p>
            </div>
            <div className="dialog-foot">
              <button type="button" onClick={() => setAsking(false)}>
                Cancel
              </button>
              <button type="submit" className="primary">
                Keep the name
              </button>
            </div>
          </form>
        </Dialog>
      )}
    </>
  );
}
