import { type RefObject, useLayoutEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { PatchReport } from '../../report/patch.ts';
import { type PatchTable, patchTable } from '../../report/patchCsv.ts';
import { useOpen } from '../parts/useOpen.ts';
import { cableSumWords } from '../words/runWords.ts';
import { onPaper } from './onPaper.ts';
import { TABLE_NAMES } from './tableNames.ts';

/** The largest letters, and the smallest before a page is given up, pt. */
const LARGEST = 9;
const SMALLEST = 4;
const STEP = 0.25;
/** What fits on both A4 and Letter, lying, with margins of 10 mm and a little to spare, px. */
const MOST_HEIGHT = (186 / 25.4) * 96;

/** Finds the largest letters with which a sheet, laid out unseen as wide as the narrower paper, is no higher than the lower one. */
function useOnePage(): RefObject<HTMLElement | null> {
  const sheet = useRef<HTMLElement>(null);
  useLayoutEffect(() => {
    const { current } = sheet;
    if (!current) return;
    let size = LARGEST;
    do {
      current.style.fontSize = `${size}pt`;
      size -= STEP;
    } while (size >= SMALLEST && current.offsetHeight > MOST_HEIGHT);
  });
  return sheet;
}

interface PrintSheetProps {
  readonly table: PatchTable;
  readonly patch: PatchReport;
}

/** One table on one page of A4 or Letter; seen only on paper. Columns in which nothing stands are left out. */
export function PrintSheet({ table, patch }: PrintSheetProps) {
  const { layout, report } = useOpen();
  const { header, rows } = onPaper(table, patchTable(table, layout, patch));
  const { name, venue } = layout;
  const sheet = useOnePage();
  const columns = header.flatMap((title, index) =>
    rows.some((row) => row[index] !== '') ? [{ title, index }] : [],
  );
  const lines = rows.map((row, place) => ({ row, place }));
  return createPortal(
    <article ref={sheet} className="print-sheet table-sheet">
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
