import { createPortal } from 'react-dom';
import type { PatchReport } from '../../report/patch.ts';
import { type PatchTable, patchTable } from '../../report/patchCsv.ts';
import { useOpen } from '../parts/useOpen.ts';
import { cableSumWords } from '../words/runWords.ts';
import { TABLE_NAMES } from './tableNames.ts';

/** Rows of two lines that fit on A4 and Letter, lying, at the usual size. */
const USUAL_ROWS = 18;

interface PrintSheetProps {
  readonly table: PatchTable;
  readonly patch: PatchReport;
}

/** One table on one page; seen only on paper. Columns in which nothing stands are left out. */
export function PrintSheet({ table, patch }: PrintSheetProps) {
  const { layout, report } = useOpen();
  const { header, rows } = patchTable(table, layout, patch);
  const { name, venue } = layout;
  const columns = header.flatMap((title, index) =>
    rows.some((row) => (row[index] ?? '') !== '') ? [{ title, index }] : [],
  );
  const lines = rows.map((row, place) => ({ row, place }));
  return createPortal(
    <article className={rows.length > USUAL_ROWS ? 'print-sheet dense' : 'print-sheet'}>
      <h1>
        {TABLE_NAMES[table]}: {name}
      </h1>
      <p>{[venue.name, venue.date ?? ''].filter((text) => text !== '').join(', ')}</p>
      <table>
        <thead>
          <tr>
            {columns.map(({ title }) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {lines.map(({ row, place }) => (
            <tr key={place}>
              {columns.map(({ title, index }) => (
                <td key={title}>{row[index]}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {table === 'cables' && <p>{cableSumWords(report, layout)}</p>}
    </article>,
    document.body,
  );
}
