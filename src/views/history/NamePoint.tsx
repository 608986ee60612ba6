import { useState } from 'react';
import type { HistoryRow } from '../../session/library.ts';
import { Icon } from '../parts/Icon.tsx';
import { NameDialog } from '../parts/NameDialog.tsx';

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
          title="Name this point"
          name={row.name}
          take="Keep the name"
          mayBeEmpty
          placeholder="Before the show"
          onClose={() => setAsking(false)}
          onName={(name) => {
            setAsking(false);
            onName(name);
          }}
        >
          <p className="small soft">
            A point with a name is never thinned out. Without one it is automatic again.
          </p>
        </NameDialog>
      )}
    </>
  );
}
