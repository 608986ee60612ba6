import type { ImportOutcome } from '../../session/library.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { counted } from '../words/nameOf.ts';

type Problems = Extract<ImportOutcome, { ok: false }>['problems'];

interface ImportProblemsProps {
  readonly file: string;
  readonly problems: Problems;
  readonly onClose: () => void;
}

/** Problems shown at once; a broken file can have thousands. */
const SHOWN = 20;

/** Why a file was not taken over, each fault with its place in the file. */
export function ImportProblems({ file, problems, onClose }: ImportProblemsProps) {
  const rest = problems.length - SHOWN;
  return (
    <Dialog title="This file was not imported" onClose={onClose}>
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
