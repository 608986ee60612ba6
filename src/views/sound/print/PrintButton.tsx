import type { Sound } from '../../../report/sound.ts';
import { usePrinted } from '../../parts/usePrinted.ts';
import { SoundSheet } from './SoundSheet.tsx';
import type { SoundTable } from './soundTables.ts';

interface PrintButtonProps {
  readonly sound: Sound;
  readonly what: string;
  /** Made only when it is printed. */
  readonly tables: () => readonly SoundTable[];
}

/** Prints tables of figures, or saves them as a PDF where the browser does so. */
export function PrintButton({ sound, what, tables }: PrintButtonProps) {
  const [printed, print] = usePrinted<readonly SoundTable[]>();
  return (
    <>
      <button type="button" onClick={() => print(tables())}>
        Print {what}
      </button>
      {printed && <SoundSheet tables={printed} sound={sound} />}
    </>
  );
}
