import { Dialog } from '../parts/Dialog.tsx';
import { counted } from '../words/nameOf.ts';
import { notImportedWords } from '../words/takenFilesWords.ts';
import type { RefusedFile } from './takeInFiles.ts';

interface ImportProblemsProps {
  readonly refused: readonly RefusedFile[];
  /** How many layouts that came with them were taken in. */
  readonly taken: number;
  readonly onClose: () => void;
}

/** Problems of a file shown at once; a broken file can have thousands. */
const SHOWN = 20;

/** Why files were not taken over, each fault with its place in the file. */
export function ImportProblems({ refused, taken, onClose }: ImportProblemsProps) {
  const [title, alongside] = notImportedWords(refused.length, taken);
  return (
    <Dialog title={title} onClose={onClose}>
      {alongside !== '' && <p>{alongside}</p>}
      {refused.map((each, k) => (
        // Files from several folders can have one name.
        // biome-ignore lint/suspicious/noArrayIndexKey: the list never changes while it is shown
        <FileProblems key={k} {...each} />
      ))}
      <p className="soft">
        What is taken in here is a file that this app exported: one layout, or a whole library. If
        this was one, export it again where it comes from.
      </p>
      <div className="dialog-foot">
        <button type="button" className="primary" onClick={onClose}>
          Close
        </button>
      </div>
    </Dialog>
  );
}

function FileProblems({ file, problems }: RefusedFile) {
  const rest = problems.length - SHOWN;
  return (
    <>
      <p className="file-name">
        <strong>{file}</strong> has {counted(problems.length, 'problem')}. Nothing was changed.
      </p>
      <ul className="problems">
        {problems.slice(0, SHOWN).map((problem) => (
          <li key={`${problem.path} ${problem.message}`}>
            {problem.path !== '' && <code>{problem.path}</code>}
            <span>{problem.message}</span>
          </li>
        ))}
      </ul>
      {rest > 0 && <p className="soft">And {rest} more.</p>}
    </>
  );
}
