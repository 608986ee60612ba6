import type { Id } from '../../layout/fields.ts';
import type { TakenLibrary } from '../../session/library.ts';
import { Dialog } from '../parts/Dialog.tsx';
import { counted } from '../words/nameOf.ts';

interface LibraryReportProps {
  readonly report: TakenLibrary;
  readonly onOpen: (id: Id) => void;
  readonly onClose: () => void;
}

/** Names shown at once. */
const SHOWN = 12;

/** What became of a library file: what came in, what stands in two lines, what could not be read. */
export function LibraryReport({ report, onOpen, onClose }: LibraryReportProps) {
  const { added, wentOn, twoLines, same, failed, isCutOff, promised, read } = report;
  return (
    <Dialog title="A library was taken in" onClose={onClose}>
      <div className="library-report">
        <p className="file-name">
          <strong>{report.file}</strong>: nothing that was here is changed or lost.
        </p>
        {isCutOff && (
          <p role="alert">
            The file is cut off: {read} of {counted(promised, 'layout')} could be read. Hand the
            whole file over again for the rest.
          </p>
        )}
        <Names title={`${counted(added.length, 'layout')} new here`} names={added} />
        <Names
          title={`${counted(wentOn.length, 'layout')} went on from where this tablet was`}
          names={wentOn}
        />
        {same > 0 && <p>{counted(same, 'layout')} the same as here already.</p>}
        {twoLines.length > 0 && (
          <div>
            <h3>{counted(twoLines.length, 'layout')} changed on both tablets</h3>
            <p className="soft">
              What is here holds; the other line stands beside it in the history, where you see what
              differs and choose.
            </p>
            <ul className="lines framed">
              {twoLines.map(({ id, name }) => (
                <li key={id} className="line deleted-line">
                  <span className="line-text line-name">{name}</span>
                  <button type="button" onClick={() => onOpen(id)}>
                    Open<span className="spoken"> {name}</span>
                  </button>
                </li>
              ))}
            </ul>
          </div>
        )}
        {failed.length > 0 && (
          <div role="alert">
            <h3>{counted(failed.length, 'layout')} could not be read</h3>
            <ul className="problems">
              {failed.slice(0, SHOWN).map(({ name, why }) => (
                <li key={`${name} ${why}`}>
                  <strong>{name}</strong>
                  <span>{why}</span>
                </li>
              ))}
            </ul>
            {failed.length > SHOWN && <p>And {failed.length - SHOWN} more.</p>}
          </div>
        )}
        {report.damagedPoints > 0 && (
          <p>{counted(report.damagedPoints, 'earlier point')} of a history could not be read.</p>
        )}
      </div>
      <div className="dialog-foot">
        <button type="button" className="primary" onClick={onClose}>
          Close
        </button>
      </div>
    </Dialog>
  );
}

function Names({ title, names }: { readonly title: string; readonly names: readonly string[] }) {
  if (names.length === 0) return null;
  return (
    <div>
      <h3>{title}</h3>
      <p className="file-name">
        {names.slice(0, SHOWN).join(', ')}
        {names.length > SHOWN && ` and ${names.length - SHOWN} more`}
      </p>
    </div>
  );
}
