import { useId, useState } from 'react';
import type { LibraryRow } from '../../session/library.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { FormFoot } from '../parts/FormFoot.tsx';

interface TagsDialogProps {
  readonly row: LibraryRow;
  readonly onKeep: (tags: readonly string[]) => void;
  readonly onClose: () => void;
}

/** Asks for a layout's tags, as words between commas. */
export function TagsDialog({ row, onKeep, onClose }: TagsDialogProps) {
  const id = useId();
  const [text, setText] = useState(row.tags.join(', '));
  return (
    <Dialog title={`Tags of “${row.name}”`} onClose={onClose}>
      <form
        onSubmit={(event) => {
          event.preventDefault();
          onKeep(tagsIn(text));
        }}
      >
        <div className="field">
          <label className="field-label" htmlFor={id}>
            Tags, with commas between
          </label>
          <input
            id={id}
            className="text-input"
            value={text}
            maxLength={400}
            placeholder="tour, festival, rehearsal"
            onChange={(event) => setText(event.target.value)}
          />
          <p className="small soft">At most 12, of 40 characters each. The search finds them.</p>
        </div>
        <FormFoot take="Keep them" onClose={onClose} />
      </form>
    </Dialog>
  );
}

const tagsIn = (text: string): readonly string[] => {
  const words = text
    .split(',')
    .map((word) => [...word.trim()].slice(0, 40).join(''))
    .filter((word) => word !== '');
  return [...new Set(words)].slice(0, 12);
};
