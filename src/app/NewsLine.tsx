import { useEffect } from 'react';
import { forgetSaved, useSavedFile } from './savedFile.ts';

/** How long the line stays, ms: long enough to be read on the way back to the stage. */
const SHOWN = 8_000;

/** Says under which name a file was handed out, and goes away by itself. */
export function SavedFileLine() {
  const saved = useSavedFile();
  useEffect(() => {
    if (saved === null) return;
    const timer = setTimeout(forgetSaved, SHOWN);
    return () => clearTimeout(timer);
  }, [saved]);
  return (
    <p role="status" className="saved-file">
      {saved !== null && `Saved as ${saved.name}`}
    </p>
  );
}
