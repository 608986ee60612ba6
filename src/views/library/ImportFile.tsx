import { useRef } from 'react';
import { Icon } from '../parts/Icon.tsx';

/** A button that asks for a layout file, or a whole library. */
export function ImportFile({ onFile }: { readonly onFile: (file: File) => void }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <button type="button" onClick={() => input.current?.click()}>
        <Icon name="load" /> Import a file
      </button>
      <input
        ref={input}
        type="file"
        hidden
        accept=".json,application/json,.layouts"
        aria-label="Layout file"
        onChange={(event) => {
          const file = event.target.files?.[0];
          event.target.value = '';
          if (file) onFile(file);
        }}
      />
    </>
  );
}
