import { Dialog } from '../parts/Dialog.tsx';
import { StartChoices } from './StartChoices.tsx';
import type { Library } from './useLibrary.ts';

interface NewLayoutProps {
  readonly library: Library;
  readonly onClose: () => void;
}

/** Asks what a new layout starts from. */
export function NewLayout({ library, onClose }: NewLayoutProps) {
  return (
    <Dialog title="Start a layout from" onClose={onClose} wide>
      <StartChoices disabled={library.task.busy} onStart={library.start} />
    </Dialog>
  );
}
