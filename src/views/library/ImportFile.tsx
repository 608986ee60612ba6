import { useRef } from 'react';
import { Icon } from '../parts/Icon.tsx';

interface ImportFileProps {
  readonly onFiles: (files: readonly File[]) => void;
}

/** A button that asks for layout files, or whole libraries. */
export function ImportFile({ onFiles }: ImportFileProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        <Icon name="load" /> Import files
      </button>
      <input
        ref={input}
        type="file"
        hidden
        multiple
        accept=".json,application/json,.layouts"
        aria-label="Layout file"
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = '';
          if (files.length > 0) onFiles(files);
        }}
      />
    </>
  );
}
