import { useEffect, useId, useState } from 'react';

interface NotesFieldProps {
  readonly label: string;
  readonly value: string;
  readonly most: number;
  readonly rows?: number;
  readonly onSet: (value: string) => void;
}

/** Some lines of text, taken over when the field is left. */
export function NotesField({ label, value, most, rows = 4, onSet }: NotesFieldProps) {
  const id = useId();
  const [draft, setDraft] = useState(value);
  useEffect(() => setDraft(value), [value]);
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {label}
      </label>
      <textarea
        id={id}
        value={draft}
        maxLength={most}
        rows={rows}
        onChange={(event) => setDraft(event.target.value)}
        onBlur={() => {
          if (draft !== value) onSet(draft);
        }}
      />
      {draft.length >= most && (
        <p className="field-hint">At most {most} characters: no room for more.</p>
      )}
    </div>
  );
}
