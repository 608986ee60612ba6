import { useState } from 'react';
import type { Id } from '../../layout/fields.ts';
import type { CheckStep } from '../../patch/lineCheck/lineCheck.ts';
import { NameDialog } from '../parts/NameDialog.tsx';
import { NOTE_MOST } from './CheckCard.tsx';
import { CHECK_STATES } from './checkStates.ts';

interface LastSaidProps {
  /** The step that was judged last; undefined when none was, or it is gone. */
  readonly step: CheckStep | undefined;
  readonly onUndo: () => void;
  readonly onNote: (channel: Id, note: string) => void;
}

/**
 * What was said last, why, and a way back: over the buttons, where it is seen without scrolling. It keeps its place while empty: nothing
 * moves under a finger. The note asks in a dialog of its own: a field that stood here would be taken for the one of the next line.
 */
export function LastSaid({ step, onUndo, onNote }: LastSaidProps) {
  const [asking, setAsking] = useState(false);
  const isSaid = step && step.state !== 'open';
  return (
    <div className="check-last">
      <p role="status">{isSaid ? `Channel ${step.row.channel} ${CHECK_STATES[step.state]}` : ''}</p>
      {isSaid && (
        <div className="buttons">
          <button type="button" onClick={() => setAsking(true)}>
            {noteWords(step)}
            <span className="spoken">: channel {step.row.channel}</span>
          </button>
          <button type="button" onClick={onUndo}>
            Undo<span className="spoken">: channel {step.row.channel}</span>
          </button>
        </div>
      )}
      {isSaid && asking && (
        <NameDialog
          title={`Channel ${step.row.channel}: ${step.row.name}`}
          label="Note"
          name={step.note}
          most={NOTE_MOST}
          take="Keep the note"
          mayBeEmpty
          onClose={() => setAsking(false)}
          onName={(note) => {
            setAsking(false);
            onNote(step.row.id, note);
          }}
        />
      )}
    </div>
  );
}

function noteWords({ state, note }: CheckStep): string {
  if (note !== '') return 'Its note';
  return state === 'fail' ? 'Say why' : 'Note';
}
